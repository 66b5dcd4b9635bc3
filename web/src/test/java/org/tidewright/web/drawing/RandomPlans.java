package org.tidewright.web.drawing;

import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** Plausible plans drawn from a seed, wide in size and kind: many more than anybody would build. */
final class RandomPlans {
    private final Random random;

    private RandomPlans(long seed) {
        random = new Random(seed);
    }

    /** A plan, or null where the numbers drawn do not fit together. */
    static @Nullable Plan of(long seed) {
        return PlanText.read(new RandomPlans(seed).text()) instanceof PlanReading.Sound sound ? sound.plan() : null;
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private boolean perhaps(double share) {
        return random.nextDouble() < share;
    }

    private String text() {
        int length = between(30, 300);
        int width = between(25, 90);
        int height = between(30, 90);
        boolean sump = perhaps(0.85);
        StringBuilder plan = new StringBuilder();
        line(plan, "tidewright_plan: 1");
        line(plan, "name: Drawn from a seed");
        line(plan, perhaps(0.5) ? "units: metric" : "units: us");
        line(plan, "water: {salinity: 35, temperature: 25 °C}");
        line(plan, "room: {temperature: 21 °C, humidity: 50 %%, floor_area: 20 m², construction: medium}");
        line(plan, "display:");
        line(plan, "  length: %d cm", length);
        line(plan, "  width: %d cm", width);
        line(plan, "  height: %d cm", height);
        line(plan, "  bottom_height: %d cm", between(0, 140));
        line(plan, "  glass: {panes: %d mm, bottom: %d mm, top_edge: held}", between(4, 19), between(4, 19));
        line(plan, "  cover: open");
        if (perhaps(0.7)) {
            line(plan, "  rock: {dry_mass: %d kg}", between(1, 60));
        }
        if (perhaps(0.7)) {
            line(plan, "  sand: {dry_mass: %d kg}", between(1, 60));
        }
        if (!sump) {
            line(plan, "  water_level: %d cm", height - between(1, 6));
        } else {
            withSump(plan, length, width, height);
        }
        devices(plan, sump);
        return plan.toString();
    }

    private void withSump(StringBuilder plan, int length, int width, int height) {
        int crest = height - between(3, 9);
        boolean hung = perhaps(0.4);
        int boxLength = between(8, Math.max(9, length - 4));
        int boxWidth = between(5, Math.max(6, Math.min(25, width - 4)));
        int inlet = crest - between(6, 18);
        line(plan, "overflow:");
        line(plan, "  kind: %s", hung ? "hang_on" : "internal_box");
        line(plan, "  crest: %d cm", crest);
        line(plan, "  smooth_length: %d cm", Math.max(4, boxLength / 2));
        line(
                plan,
                "  box: {length: %d cm, width: %d cm, wall: 6 mm%s}",
                boxLength,
                boxWidth,
                hung || perhaps(0.3) ? ", bottom: " + Math.max(1, inlet - 6) + " cm" : "");
        if (hung) {
            line(plan, "  outer_box: {length: %d cm, width: %d cm}", between(10, 40), between(6, 15));
        }
        line(plan, "  drains:");
        int drains = between(1, 3);
        for (int i = 0; i < drains; i++) {
            line(plan, "    - name: drain %d", i);
            line(plan, "      kind: %s", i == 0 ? "standpipe" : "emergency");
            line(plan, "      inlet: %d cm", inlet + i);
            line(plan, "      pipe: {bore: %d mm, length: 1.4 m, fittings: {elbow_90: 2}}", between(20, 60));
        }
        int sumpHeight = between(25, 60);
        int sections = between(1, 5);
        line(plan, "sump:");
        line(plan, "  width: %d cm", between(25, 60));
        line(plan, "  height: %d cm", sumpHeight);
        line(plan, "  bottom_height: %d cm", perhaps(0.15) ? -between(5, 290) : between(0, 30));
        line(plan, "  glass: {panes: 8 mm, bottom: 8 mm, top_edge: free}");
        line(plan, "  cover: open");
        line(plan, "  baffle_thickness: 6 mm");
        line(plan, "  sections:");
        for (int i = 0; i < sections; i++) {
            line(plan, "    - name: section %d", i);
            line(plan, "      length: %d cm", between(6, 90));
            if (i < sections - 1) {
                line(
                        plan,
                        "      baffle: {%s: %d cm}",
                        perhaps(0.7) ? "over" : "under",
                        perhaps(0.7) ? between(15, sumpHeight - 6) : between(2, 6));
            } else {
                line(plan, "      water_level: %d cm", between(12, sumpHeight - 6));
            }
        }
        line(plan, "return_line:");
        line(plan, "  pump:");
        line(plan, "    curve: [{flow: 0 L/h, head: 4 m}, {flow: 4000 L/h, head: 0.3 m}]");
        line(plan, "    power: 40 W");
        line(plan, "    intake: 5 cm");
        line(plan, "  pipe: {bore: %d mm, length: 3 m, fittings: {elbow_90: 4}}", between(12, 50));
        line(plan, "  check_valve: none");
        line(plan, "  outlets:");
        int outlets = between(1, 4);
        for (int i = 0; i < outlets; i++) {
            int edge = between(4, crest);
            line(plan, "    - name: nozzle %d", i);
            line(plan, "      lower_edge: %d cm", edge);
            line(plan, "      bore: 20 mm");
            if (perhaps(0.5)) {
                line(plan, "      air_hole: {height: %d cm, bore: 5 mm}", Math.min(height, edge + between(0, 4)));
            }
        }
        if (perhaps(0.5)) {
            refugium(plan);
        }
        if (perhaps(0.6)) {
            line(plan, "top_off: {reservoir: %d L, pump_flow: 60 L/h}", between(2, 120));
        }
        line(plan, "gear:");
        line(plan, "  - {name: skimmer, stands_in: section 0, holds_back: 3 L}");
        line(plan, "  - {name: reactor, stands_in: display, holds_back: 1 L}");
    }

    private void refugium(StringBuilder plan) {
        int tall = between(15, 50);
        int crest = tall - between(2, 8);
        line(plan, "refugium:");
        line(plan, "  name: refugium");
        line(plan, "  length: %d cm", between(15, 120));
        line(plan, "  width: %d cm", between(15, 50));
        line(plan, "  height: %d cm", tall);
        line(plan, "  bottom_height: %d cm", between(0, 180));
        line(plan, "  glass: {panes: 6 mm, bottom: 6 mm, top_edge: free}");
        line(plan, "  cover: open");
        line(plan, "  crest: %d cm", crest);
        line(plan, "  crest_length: 12 cm");
        line(plan, "  into: section 0");
        line(plan, "  feed: {bore: 12 mm, length: 1.2 m, fittings: {elbow_90: 2}}");
        line(plan, "  outlet: {name: feed nozzle, lower_edge: %d cm, bore: 12 mm}", between(2, crest));
    }

    private void devices(StringBuilder plan, boolean sump) {
        line(plan, "heaters:");
        line(plan, "  - {name: heater, stands_in: %s, power: 100 W, setpoint: 25 °C}", sump ? "section 0" : "display");
        line(plan, "circulation_pumps:");
        for (int i = 0; i < between(1, 5); i++) {
            line(plan, "  - {name: stream %d, stands_in: display, power: 5 W}", i);
        }
        line(plan, "air_pumps:");
        line(plan, "  - {name: air, stands_in: display, power: 3 W, air_flow: 1 L/min, depth: 20 cm}");
    }

    private static void line(StringBuilder plan, String format, Object... values) {
        plan.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
