package org.tidewright.twin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.testkit.Draw;

/**
 * Plans that could stand in somebody's house, drawn at random and written as text, so that the reader and the rules of
 * plans see every one of them. Some are badly planned: mouths above the water, sumps that are too small, drains that do
 * not carry the pump.
 */
public final class RandomPlans {
    private static final int MOST_TRIES = 100;

    private final Draw draw;
    private final StringBuilder text = new StringBuilder();
    private final List<String> devices = new ArrayList<>();

    private double length;
    private double width;
    private double height;
    private double crest;
    private double sumpHeight;
    private double sumpWidth;
    private double flow;
    private List<String> sections = List.of();

    private RandomPlans(Draw draw) {
        this.draw = draw;
    }

    /** A plan with a sump. */
    public static Plan withSump(Draw draw) {
        return sound(draw, true);
    }

    /** A plan with a sump, or, one time in four, without. */
    public static Plan any(Draw draw) {
        return sound(draw, draw.whole(1, 4) > 1);
    }

    private static Plan sound(Draw draw, boolean sump) {
        PlanReading reading = null;
        for (int i = 0; i < MOST_TRIES; i++) {
            reading = PlanText.read(new RandomPlans(draw).write(sump));
            if (reading instanceof PlanReading.Sound sound) {
                return sound.plan();
            }
        }
        throw new AssertionError("none of " + MOST_TRIES + " plans in a row was sound; the last: " + reading);
    }

    private String write(boolean sump) {
        add("tidewright_plan: 1");
        add("name: Drawn");
        add("units: %s", draw.oneOf("metric", "us"));
        add("water: {salinity: %s, temperature: %s °C}", number(30, 37), number(23, 27));
        room();
        display(sump);
        if (sump) {
            overflow();
            sump();
            returnLine();
            if (draw.whole(1, 3) == 1) {
                refugium();
            }
            if (draw.whole(1, 3) > 1) {
                add("top_off: {reservoir: %s L, pump_flow: %s L/h}", number(1, 30), number(2, 120));
            }
        }
        devices(sump);
        inhabitants();
        return text.toString();
    }

    private void room() {
        add(
                "room: {temperature: %s °C, humidity: %s %%, floor_area: %s m², construction: %s%s}",
                number(17, 27),
                number(30, 75),
                number(8, 40),
                draw.oneOf("very_light", "light", "medium", "heavy", "very_heavy"),
                chance(2) ? ", heat_loss: " + number(15, 150) + " W/K" : "");
    }

    private void display(boolean sump) {
        length = draw.between(0.4, 2.0);
        width = draw.between(0.28, 0.8);
        height = draw.between(0.35, 0.75);
        crest = height * draw.between(0.85, 0.93);
        add("display:");
        add("  length: %s m", metres(length));
        add("  width: %s m", metres(width));
        add("  height: %s m", metres(height));
        add("  bottom_height: %s m", metres(draw.between(0.65, 1.1)));
        add("  glass: {panes: %s mm, bottom: 12 mm, top_edge: %s}", number(6, 19), draw.oneOf("free", "held"));
        add("  cover: %s", draw.oneOf("open", "lid"));
        double litres = 1000 * length * width * height;
        if (chance(3)) {
            add("  sand: {dry_mass: %s kg}", number(0.02 * litres, 0.12 * litres));
        }
        if (!chance(4)) {
            add(
                    "  rock: {dry_mass: %s kg%s}",
                    number(0.03 * litres, 0.2 * litres), chance(2) ? ", top: " + metres(0.8 * crest) + " m" : "");
        }
        if (!sump) {
            add("  water_level: %s m", metres(crest));
        }
    }

    private void overflow() {
        boolean hung = chance(4);
        boolean teeth = chance(2);
        double boxLength = draw.between(0.12, 0.4 * length);
        double boxWidth = draw.between(0.08, 0.35 * width);
        double around = boxLength + 2 * boxWidth;
        flow = length * width * height * draw.between(3, 9) / 3600;
        add("overflow:");
        add("  kind: %s", hung ? "hang_on" : "internal_box");
        add("  crest: %s m", metres(crest));
        if (teeth) {
            double slot = draw.between(0.004, 0.012);
            int count = Math.max(1, (int) (draw.between(0.4, 0.65) * around / slot));
            add(
                    "  teeth: {count: %d, width: %s m, depth: %s m}",
                    count, metres(slot), metres(draw.between(0.02, 0.05)));
        } else {
            add("  smooth_length: %s m", metres(draw.between(0.5, 1) * around));
        }
        double bottom = hung ? crest * draw.between(0.5, 0.7) : 0;
        boolean siphon = !hung && chance(2);
        double bore = siphon ? boreFor(1.6 * flow, 1.5) : boreFor(flow, 0.6);
        double inlet = bottom + (crest - bottom) * draw.between(0.15, 0.4);
        double running = inlet + (crest - inlet) * draw.between(0.4, 0.9);
        add(
                "  box: {length: %s m, width: %s m, wall: 4 mm%s%s}",
                metres(boxLength),
                metres(boxWidth),
                hung ? ", bottom: " + metres(bottom) + " m" : "",
                siphon ? ", running_level: " + metres(running) + " m" : "");
        if (hung) {
            add("  outer_box: {length: %s m, width: %s m}", metres(boxLength), metres(draw.between(0.06, 0.12)));
        }
        add("  drains:");
        drain("working drain", siphon ? "siphon" : "standpipe", inlet, bore);
        if (chance(2)) {
            double lip = (siphon ? running : inlet) + (crest - (siphon ? running : inlet)) * draw.between(0.3, 0.9);
            drain("spare drain", "emergency", lip, boreFor(flow, 0.6));
        }
    }

    private void drain(String name, String kind, double inlet, double bore) {
        add("    - name: %s", name);
        add("      kind: %s", kind);
        add("      inlet: %s m", metres(inlet));
        add(
                "      pipe: {bore: %s m, length: %s m, fittings: {elbow_90: %d, ball_valve: 1}}",
                metres(bore), metres(draw.between(0.8, 1.6)), draw.whole(0, 3));
    }

    /** Bore that carries a flow at a speed in m/s, as pipes are sold: no thinner than 16 mm. */
    private static double boreFor(double flow, double speed) {
        return Math.max(0.016, Math.sqrt(4 * flow / Math.PI / speed));
    }

    private void sump() {
        sumpWidth = draw.between(0.25, 0.6);
        sumpHeight = draw.between(0.3, 0.5);
        int count = draw.whole(1, 4);
        List<String> names = new ArrayList<>();
        add("sump:");
        add("  width: %s m", metres(sumpWidth));
        add("  height: %s m", metres(sumpHeight));
        add("  bottom_height: %s m", metres(draw.between(0, 0.1)));
        add("  glass: {panes: 8 mm, bottom: 8 mm, top_edge: free}");
        add("  cover: %s", draw.oneOf("open", "lid"));
        add("  baffle_thickness: 6 mm");
        add("  sections:");
        double wall = sumpHeight * draw.between(0.55, 0.8);
        for (int i = 0; i < count; i++) {
            String name = "section " + (i + 1);
            names.add(name);
            String rock = chance(4) ? ", rock: {dry_mass: " + number(0.5, 4) + " kg}" : "";
            if (i == count - 1) {
                add(
                        "    - {name: %s, length: %s m, water_level: %s m%s}",
                        name, metres(draw.between(0.18, 0.5)), metres(sumpHeight * draw.between(0.35, 0.6)), rock);
            } else if (chance(4)) {
                add("    - {name: %s, length: %s m, baffle: {under: 3 cm}%s}", name, sectionLength(), rock);
            } else {
                wall *= draw.between(0.8, 1.05);
                double over = Math.min(wall, 0.85 * sumpHeight);
                add(
                        "    - {name: %s, length: %s m, baffle: {over: %s m}%s}",
                        name, sectionLength(), metres(over), rock);
            }
        }
        sections = List.copyOf(names);
    }

    private String sectionLength() {
        return metres(draw.between(0.15, 0.5));
    }

    private void returnLine() {
        double shutOff = draw.between(2.2, 5);
        double free = flow * draw.between(1.8, 3);
        devices.add("return pump");
        add("return_line:");
        add("  pump:");
        add("    curve:");
        for (int i = 0; i < 4; i++) {
            double share = i / 3.0;
            add(
                    "      - {flow: %s L/h, head: %s m}",
                    exact(3.6e6 * free * share), exact(shutOff * (1 - 0.98 * share * share)));
        }
        add("    power: %s W", number(5, 120));
        add("    intake: %s m", metres(draw.between(0.02, 0.05)));
        add(
                "  pipe: {bore: %s m, length: %s m, fittings: {elbow_90: %d, union: 1}}",
                metres(boreFor(flow, draw.between(0.8, 1.6))), metres(draw.between(1.3, 3)), draw.whole(1, 5));
        add("  check_valve: %s", draw.oneOf("none", "swing", "spring"));
        add("  outlets:");
        int count = draw.whole(1, 3);
        for (int i = 0; i < count; i++) {
            double mouth = crest * draw.between(0.75, 1.03);
            double hole = mouth + (1.02 * crest - mouth) * draw.between(0.1, 1);
            add(
                    "    - {name: nozzle %d, lower_edge: %s m, bore: %s m%s}",
                    i + 1,
                    metres(mouth),
                    metres(draw.between(0.012, 0.03)),
                    hole > mouth && chance(2) ? ", air_hole: {height: " + metres(hole) + " m, bore: 4 mm}" : "");
        }
    }

    private void refugium() {
        double refugiumHeight = draw.between(0.2, 0.35);
        double refugiumCrest = refugiumHeight * draw.between(0.7, 0.85);
        double mouth = refugiumCrest * draw.between(0.7, 1.05);
        add("refugium:");
        add("  name: refugium");
        add("  length: %s m", metres(draw.between(0.2, 0.5)));
        add("  width: %s m", metres(draw.between(0.2, 0.4)));
        add("  height: %s m", metres(refugiumHeight));
        add("  bottom_height: %s m", metres(draw.between(0.5, 0.6)));
        add("  glass: {panes: 6 mm, bottom: 6 mm, top_edge: free}");
        add("  cover: open");
        add("  crest: %s m", metres(refugiumCrest));
        add("  crest_length: %s m", metres(draw.between(0.08, 0.2)));
        add("  into: section %d", draw.whole(1, sections.size()));
        add("  feed: {bore: 12 mm, length: 1.2 m, fittings: {tee_branch: 1, elbow_90: 4, ball_valve: 1}}");
        add(
                "  outlet: {name: feed nozzle, lower_edge: %s m, bore: 12 mm%s}",
                metres(mouth), chance(3) ? ", air_hole: {height: " + metres(mouth + 0.01) + " m, bore: 3 mm}" : "");
    }

    private void devices(boolean sump) {
        List<String> wet = new ArrayList<>(sections);
        wet.add("display");
        if (sump) {
            add("gear:");
            for (int i = 1; i <= draw.whole(1, 2); i++) {
                add(
                        "  - {name: device %d, stands_in: section %d, holds_back: %s L, displaces: %s L, power: 9 W}",
                        i, draw.whole(1, sections.size()), number(0, 6), number(0, 1.5));
                devices.add("device " + i);
            }
        }
        add("heaters:");
        for (int i = 1; i <= draw.whole(1, 2); i++) {
            String name = "heater " + i;
            add(
                    "  - {name: %s, stands_in: %s, power: %s W, setpoint: %s °C}",
                    name, oneOf(wet), number(25, 400), number(23, 26.5));
            devices.add(name);
        }
        add("circulation_pumps:");
        add("  - {name: stream, stands_in: display, power: %s W}", number(2, 30));
        devices.add("stream");
        add("air_pumps:");
        add("  - {name: air pump, stands_in: display, power: 2 W, air_flow: %s L/min, depth: 20 cm}", number(0.2, 3));
        devices.add("air pump");
        if (chance(2)) {
            add("backup:");
            add(
                    "  battery: {capacity: %s Wh, chemistry: %s, feeds: [%s]}",
                    number(20, 1500), draw.oneOf("lead_acid", "lithium_iron_phosphate"), fed());
            if (chance(3)) {
                add(
                        "  generator: {power: 1200 W, fuel: %s L, started_after: %s h, feeds: [%s]}",
                        number(0.5, 8), number(0, 10), fed());
            }
        }
    }

    private String fed() {
        List<String> fed = new ArrayList<>();
        for (String device : devices) {
            if (chance(2)) {
                fed.add(device);
            }
        }
        return fed.isEmpty() ? "stream" : String.join(", ", fed);
    }

    private void inhabitants() {
        if (chance(3)) {
            return;
        }
        add("inhabitants:");
        add("  fish:");
        add("    - {name: damsel, mass: %s g, count: %d}", number(3, 60), draw.whole(1, 12));
        add("  coral_tissue: %s m²", number(0, 2));
    }

    // ── words and numbers ──

    private void add(String line, Object... arguments) {
        text.append(String.format(Locale.ROOT, line, arguments)).append('\n');
    }

    private boolean chance(int oneIn) {
        return draw.whole(1, oneIn) == 1;
    }

    private String oneOf(List<String> names) {
        return names.get(draw.whole(0, names.size() - 1));
    }

    private String number(double least, double most) {
        return String.format(Locale.ROOT, "%.3f", draw.between(least, most));
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    private static String exact(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }
}
