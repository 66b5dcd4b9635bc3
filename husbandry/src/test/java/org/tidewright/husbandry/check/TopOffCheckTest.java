package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

class TopOffCheckTest {
    private static final double LITRE = 1e-3;
    private static final String HOLE = ", air_hole: {height: 0.54 m, bore: 5 mm}";

    /** Salt stays while 25 L join 489.8 L: 35 × 489.8 / 514.8 = 33.30; 34 would allow 489.8 / 34 = 14.41 L. */
    @Test
    void aReservoirRunInLowersTheSalinityAsWorkedByHand() {
        Checked check = Checked.of(TestPlans.workedExample(), "top_off_salinity");
        assertThat(check.shown()).isEqualTo("salinity falls to 33.3");
        assertThat(check.margin()).isCloseTo((14.41 - 25) * LITRE, within(0.02 * LITRE));
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence()).startsWith("Fill the reservoir with no more than 14.4 L");
    }

    @Test
    void aReservoirAsLargeAsToldHolds() {
        assertThat(Checked.of(TestPlans.workedExample("reservoir: 25 L", "reservoir: 14.4 L"), "top_off_salinity")
                        .holding())
                .isEqualTo(Holding.HOLDS);
    }

    /**
     * By hand 1.713 L over the sump's rim with the hole blocked (handbook), and here the 8.89 mm over both baffles and the
     * drain's pipe besides.
     */
    @Test
    void aPowerCutAfterItSpillsWhatWasWorkedByHand() {
        Checked check = Checked.of(TestPlans.workedExample(HOLE, ""), "top_off_then_power_cut");
        double spilled = 1.713 * LITRE + 0.00889 * (0.44 + 0.20) * 0.45 + Math.PI / 4 * 0.025 * 0.025 * 1.2;
        assertThat(check.margin()).isCloseTo(-spilled, within(0.02 * LITRE));
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.sentence()).startsWith("Give the top-off a time-out or a second float");
    }

    @Test
    void withoutATopOffThereIsNothingToCheck() {
        assertThat(Checked.ids(TestPlans.workedExample("top_off: {reservoir: 25 L, pump_flow: 60 L/h}\n", "")))
                .noneMatch(id -> id.startsWith("top_off"));
    }
}
