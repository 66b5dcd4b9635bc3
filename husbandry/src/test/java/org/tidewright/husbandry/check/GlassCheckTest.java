package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;

/**
 * A pane of 1.20 × 0.60 m under water to its edge, by a series for the plate apart from this code: least 11.59 mm with
 * the top edge held, 14.02 mm without; 12 mm bow 0.374 and 2.507 mm and hold 2.786 times without.
 */
class GlassCheckTest {
    @ParameterizedTest
    @CsvSource({"held, 11.59, 0.4 mm", "free, 14.02, 2.5 mm"})
    void theLeastThicknessIsThatOfTheWorkedExample(String edge, double least, String bow) {
        Checked check = Checked.of(
                TestPlans.workedExample("bottom: 15 mm, top_edge: held", "bottom: 15 mm, top_edge: " + edge), "glass");
        assertThat(check.margin()).isCloseTo((12 - least) / 1000, within(0.02e-3));
        assertThat(check.sentence()).contains("it bows " + bow);
        assertThat(check.holding()).isEqualTo(Holding.ASK);
    }

    @Test
    void aPaneTooThinAsksForTheMakerFirst() {
        Checked thin = Checked.of(TestPlans.workedExample("top_edge: held", "top_edge: free"), "glass");
        assertThat(thin.shown()).isEqualTo("factor 2.8");
        assertThat(thin.sentence())
                .startsWith("Ask the maker before you fill it")
                .endsWith("the maker’s table decides.");
    }

    @Test
    void aPaneBeyondTheEstimateGetsNoNumber() {
        Checked check = Checked.of(
                TestPlans.workedExample("length: 1.20 m", "length: 3.00 m", "top_edge: held", "top_edge: free"),
                "glass");
        assertThat(check.margin()).isNaN();
        assertThat(check.shown()).isEqualTo("beyond the estimate");
    }
}
