package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.plan.model.Plan;

/**
 * The worked system by hand, from the handbook's balance of a drain-down: 52.31 L fall back into 63.61 L free up to 30 mm
 * under the rim, 11.30 L to spare. There the sections stand level with their baffles and the siphon's pipe counts as
 * empty; here water stands 8.89 mm over both baffles, and the drain's pipe, 25 mm × 1.2 m, is full.
 */
class PowerCutCheckTest {
    private static final double LITRE = 1e-3;
    private static final double OVER_THE_BAFFLES = 0.00889 * (0.44 + 0.20) * 0.45;
    private static final double DRAIN_PIPE = Math.PI / 4 * 0.025 * 0.025 * 1.2;
    private static final double MARGIN = 11.30 * LITRE - OVER_THE_BAFFLES - DRAIN_PIPE;

    private static final String HOLE = ", air_hole: {height: 0.54 m, bore: 5 mm}";
    private static final String LEVEL = "water_level: 0.20 m";

    @Test
    void withTheAirHoleBlockedTheMarginIsTheOneWorkedByHand() {
        Checked check = Checked.of(TestPlans.workedExample(), "power_cut_air_hole_blocked");
        assertThat(check.margin()).isCloseTo(MARGIN, within(0.02 * LITRE));
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
    }

    /** By hand 13.5 L less come back through a hole 10 mm under the crest; the line draws on while the hole stops it. */
    @Test
    void aClearAirHoleLeavesMoreRoom() {
        double clear = Checked.of(TestPlans.workedExample(), "power_cut").margin();
        assertThat(clear).isBetween(MARGIN + 9 * LITRE, MARGIN + 13.5 * LITRE);
    }

    @Test
    void aLineWithoutAHoleCountsAsBlocked() {
        Plan plan = TestPlans.workedExample(HOLE, "");
        assertThat(Checked.of(plan, "power_cut").margin()).isCloseTo(MARGIN, within(0.02 * LITRE));
        assertThat(Checked.ids(plan)).doesNotContain("power_cut_air_hole_blocked");
    }

    /** The last section holds 11.16 L per centimetre up to the baffle: what it holds more, it finds less room for. */
    @Test
    void aHigherRunningLevelTakesTheRoomWorkedByHand() {
        double higher = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.22 m"), "power_cut_air_hole_blocked")
                .margin();
        assertThat(higher).isCloseTo(MARGIN - 2.23 * LITRE, within(0.02 * LITRE));
    }

    @Test
    void aMarginWithinItsDoubtIsCloseAndNoneFails() {
        Checked close =
                Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.245 m"), "power_cut_air_hole_blocked");
        assertThat(close.holding()).isEqualTo(Holding.CLOSE);
        assertThat(close.margin()).isBetween(0.0, 1.645 * close.doubt());
        Checked fails = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.29 m"), "power_cut_air_hole_blocked");
        assertThat(fails.holding()).isEqualTo(Holding.FAILS);
        assertThat(fails.sentence()).startsWith("Brush the air hole clear every month, and raise the nozzle to ");
    }

    @Test
    void loweringTheLastSectionAsToldMakesItHold() {
        Plan failing = TestPlans.workedExample(LEVEL, "water_level: 0.29 m", HOLE, "");
        Checked before = Checked.of(failing, "power_cut");
        assertThat(before.holding()).isEqualTo(Holding.FAILS);
        assertThat(before.sentence()).startsWith("Run the last section of the sump no higher than 26.7 cm: ");
        Plan lowered = TestPlans.workedExample(LEVEL, "water_level: 26.6 cm", HOLE, "");
        assertThat(Checked.of(lowered, "power_cut").holding()).isNotEqualTo(Holding.FAILS);
    }

    /** 0.675 m² of display stand over the nozzle: each missing litre asks for 1.5 mm. */
    @Test
    void raisingTheNozzleByTheMissingLitresMakesItHold() {
        double missing = -Checked.of(
                        TestPlans.workedExample(LEVEL, "water_level: 0.29 m"), "power_cut_air_hole_blocked")
                .margin();
        String raised = String.format(Locale.ROOT, "%.4f m", 0.52 + missing / 0.675 + 0.0005);
        Plan mended = TestPlans.workedExample(
                LEVEL, "water_level: 0.29 m", HOLE, "", "lower_edge: 0.52 m", "lower_edge: " + raised);
        assertThat(Checked.of(mended, "power_cut").holding()).isNotEqualTo(Holding.FAILS);
    }

    @Test
    void aWetFloorIsSaidWithItsLitres() {
        Checked wet = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.36 m", HOLE, ""), "power_cut");
        assertThat(wet.holding()).isEqualTo(Holding.FAILS);
        assertThat(wet.shown()).startsWith("on the floor ");
        assertThat(wet.sentence()).contains("water reaches the floor");
    }

    @Test
    void aCheckValveIsToldButNotCounted() {
        Checked none = Checked.of(TestPlans.workedExample(), "power_cut");
        Checked swing = Checked.of(TestPlans.workedExample("check_valve: none", "check_valve: swing"), "power_cut");
        assertThat(swing.sentence())
                .contains("With the check valve holding it would be ")
                .contains("not counted");
        assertThat(none.sentence()).doesNotContain("check valve");
        // The flap's own loss makes the pump give a little less, so a little less stands over the crest.
        assertThat(swing.margin()).isCloseTo(none.margin(), within(0.1 * LITRE));
    }

    @Test
    void theKeepersOwnRoomToSpareTakesThePlaceOfTheThirtyMillimetres() {
        Checked usual = Checked.of(TestPlans.workedExample(), "power_cut");
        Checked own =
                Checked.of(TestPlans.workedExample("gear:\n", "limits: {room_to_spare: 5 L}\ngear:\n"), "power_cut");
        // 30 mm of 0.3996 m² of sump are 11.99 L.
        assertThat(own.margin() - usual.margin()).isCloseTo((11.988 - 5) * LITRE, within(0.001 * LITRE));
        assertThat(own.sentence()).contains("You ask for 5 L.");
    }

    @Test
    void withoutASumpNothingFallsBack() {
        Checked check = Checked.of(TestPlans.example("window-nano"), "power_cut");
        assertThat(check.holding()).isEqualTo(Holding.HOLDS);
        assertThat(check.margin()).isNaN();
        assertThat(check.sentence()).startsWith("Nothing falls back in a power cut");
    }
}
