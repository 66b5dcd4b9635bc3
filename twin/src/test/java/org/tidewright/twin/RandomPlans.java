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
        add(
                "water: {salinity: %s, temperature: %s °C%s}",
                number(30, 37),
                number(23, 27),
                chance(2)
                        ? ", alkalinity: " + number(5, 12) + " dKH, calcium: " + number(350, 480)
                                + " mg/L, magnesium: " + number(1100, 1500) + " mg/L, nitrate: " + number(0, 50)
                                + " mg/L, phosphate: " + number(0, 0.5) + " mg/L"
                        : "");
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
        if (chance(2)) {
            regime();
        }
        return text.toString();
    }

    private void room() {
        add(
                "room: {temperature: %s °C, humidity: %s %%, floor_area: %s m², construction: %s%s}",
                number(17, 27),
                number(30, 75),
                number(8, 40),
                draw.oneOf("very_light", "light", "medium", "heavy", "very_heavy"),
                (chance(2) ? ", heat_loss: " + number(15, 150) + " W/K" : "")
                        + (chance(2)
                                ? ", air_volume: " + number(20, 120) + " m³, air_changes: " + number(0.1, 3)
                                        + " /h, carbon_dioxide_outdoors: " + number(400, 450)
                                        + " ppm, people: [{count: " + draw.whole(1, 5) + ", from: \"18:00\", daily: "
                                        + number(1, 14) + " h}]"
                                : ""));
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
                    number(0.03 * litres, 0.2 * litres),
                    (chance(2) ? ", top: " + metres(0.8 * crest) + " m" : "")
                            + (chance(2) ? ", state: " + draw.oneOf("dry", "seeded", "live") : ""));
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
        if (chance(2)) {
            add(
                    "  algae: {wet_mass: %s g, lit_area: %s cm², harvested_every: %d d, left_standing: %s g}",
                    number(50, 1000), number(100, 1500), draw.whole(3, 30), number(20, 500));
        }
    }

    private void devices(boolean sump) {
        List<String> wet = new ArrayList<>(sections);
        wet.add("display");
        if (sump) {
            add("gear:");
            for (int i = 1; i <= draw.whole(1, 2); i++) {
                add(
                        "  - {name: device %d, stands_in: section %d, holds_back: %s L, displaces: %s L, power: 9 W%s}",
                        i, draw.whole(1, sections.size()), number(0, 6), number(0, 1.5), work());
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

    /** What a piece of gear does, where the plan says so. */
    private String work() {
        return switch (draw.whole(1, 6)) {
            case 1 ->
                ", skims: {water_flow: " + number(100, 3000) + " L/h, air_flow: " + number(60, 1500)
                        + " L/h, skimmate: " + number(20, 1000) + " mL/d, air: "
                        + draw.oneOf("room", "outdoors", "scrubbed") + "}";
            case 2 ->
                ", media: {kind: " + draw.oneOf("iron_oxide", "activated_carbon") + ", mass: " + number(20, 1000)
                        + " g, water_flow: " + number(20, 400) + " L/h, changed_every: " + draw.whole(7, 120) + " d}";
            case 3 ->
                ", reactor: {effluent: " + number(5, 100) + " mL/min, chamber_ph: " + number(6.2, 7) + ", media_mass: "
                        + number(1, 8) + " kg}";
            case 4 ->
                ", strains: {water_flow: " + number(20, 3000) + " L/h"
                        + (chance(2) ? ", share: " + number(10, 95) + " %" : "") + ", changed_every: "
                        + draw.whole(1, 30) + " d}";
            default -> "";
        };
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
        add(
                "    - {name: damsel, mass: %s g, count: %d%s}",
                number(3, 60), draw.whole(1, 12), chance(2) ? ", length: 7 cm, stage: growing" : "");
        add("  coral_tissue: %s m²", number(0, 2));
        if (chance(2)) {
            add("  corals:");
            for (String form : List.of("branching_acropora", "plating_montipora", "euphyllia", "soft")) {
                add("    - {name: %s, plan_area: %s cm², form: %s}", form, number(2, 3000), form);
            }
            add("  coralline_area: %s m²", number(0, 2));
        }
    }

    /** What is fed, dosed and changed; whatever is drawn fits the plan. */
    private void regime() {
        add(
                "new_water: {salinity: %s, temperature: %s °C, alkalinity: %s dKH, calcium: %s mg/L}",
                number(32, 36), number(20, 27), number(6, 11), number(380, 460));
        add("feeding:");
        add(
                "  - {name: food, food: %s, mass: %s g, times: [%s]%s}",
                draw.oneOf("dry_pellet", "flake", "frozen_mysis", "chopped_seafood", "seaweed_sheet"),
                number(0.05, 5),
                times(),
                chance(3) ? ", every: " + draw.whole(1, 4) + " d" : "");
        if (chance(2)) {
            add("dosing:");
            dose("bicarbonate", 500, "sodium_bicarbonate, strength: " + number(20, 90) + " g/L");
            dose("calcium", 500, "calcium_chloride, strength: " + number(20, 90) + " g/L");
            dose("limewater", 500, "calcium_hydroxide, saturation: " + number(40, 100) + " %");
            dose("vinegar", 50, "acetic_acid, strength: " + number(5, 60) + " g/L");
        }
        add("water_changes:");
        add(
                "  - {name: change, volume: %s L, every: %d d, at: %s%s}",
                number(0.5, 10),
                draw.whole(1, 30),
                time(draw.whole(0, 23)),
                chance(2) ? ", siphoned: " + number(0, 100) + " %" : "");
        if (chance(3)) {
            add(
                    "chillers: [{name: chiller, stands_in: display, power: 150 W, cooling: %s W, setpoint: %s °C}]",
                    number(100, 800), number(26, 28));
        }
        if (chance(3)) {
            add(
                    "fans: [{name: fan, over: display, air_speed: %s m/s, setpoint: %s °C, power: %s W}]",
                    number(0.5, 4), number(26, 28), number(2, 20));
        }
        add(
                "lights: [{name: light, over: display, power: %s W, daily: 9 h, starts: %s, ramp: %s h, par: %s µmol/m²/s}]",
                number(10, 300), time(draw.whole(0, 23)), number(0, 4), number(30, 500));
    }

    private void dose(String name, double most, String salt) {
        List<String> places = new ArrayList<>(sections);
        places.add("display");
        String when = switch (draw.whole(1, 3)) {
            case 1 -> ", times: [" + times() + "]";
            case 2 -> ", from: " + time(draw.whole(0, 23)) + ", daily: " + number(0.5, 24) + " h";
            default -> "";
        };
        add("  - {name: %s, salt: %s, per_day: %s mL/d, into: %s%s}", name, salt, number(1, most), oneOf(places), when);
    }

    /** One to four times in the order of the day. */
    private String times() {
        List<String> times = new ArrayList<>();
        for (int hour = draw.whole(0, 11); hour < 24 && times.size() < 4; hour += draw.whole(1, 12)) {
            times.add(time(hour));
        }
        return String.join(", ", times);
    }

    private String time(int hour) {
        return String.format(Locale.ROOT, "\"%02d:%02d\"", hour, draw.whole(0, 59));
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
