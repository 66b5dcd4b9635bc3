package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

class RunningLevelCheckTest {
    private static final String LEVEL = "water_level: 0.20 m";

    /**
     * By hand: 8.15 L to spare with the hole blocked. 0.1116 m² of last section take 5.58 L up to its baffle's crest at
     * 0.25 m and 0.99 L up to the second section's level, 0.2589 m; the last 1.58 L stand on both, 0.2016 m².
     */
    @Test
    void theLineIsTheOneWorkedByHand() {
        Checked check = Checked.of(TestPlans.workedExample(), "running_level");
        double line = 0.2589 + (8.15 - 5.58 - 0.99) / 1000 / 0.2016;
        assertThat(check.margin()).isCloseTo(line - 0.20, within(0.2e-3));
        assertThat(check.shown()).isEqualTo("at most 267 mm");
        assertThat(check.sentence()).contains("the air hole counted as blocked");
    }

    @Test
    void aLevelOverTheLineHoldsOnlyWithTheHoleClear() {
        Checked check = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.28 m"), "running_level");
        assertThat(check.holding()).isNotEqualTo(Holding.FAILS);
        assertThat(check.sentence()).contains("even with the air hole clear");
    }

    @Test
    void aLevelOverBothLinesFails() {
        Checked check = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.36 m"), "running_level");
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
    }

    @Test
    void theKeepersOwnDoubtOfTheLevelCounts() {
        Checked check = Checked.of(TestPlans.workedExample(LEVEL, "water_level: 0.20 m ± 8 mm"), "running_level");
        assertThat(check.doubt()).isCloseTo(0.008, within(1e-12));
    }

    @Test
    void aSumpTooSmallAtAnyLevelSaysSo() {
        Checked check = Checked.of(
                TestPlans.workedExample(
                        "  width: 0.45 m", "  width: 0.16 m",
                        "length: 0.44 m", "length: 0.20 m"),
                "running_level");
        assertThat(check.holding()).isEqualTo(Holding.FAILS);
        assertThat(check.margin()).isNaN();
        assertThat(check.sentence()).startsWith("Plan a bigger sump");
    }
}
