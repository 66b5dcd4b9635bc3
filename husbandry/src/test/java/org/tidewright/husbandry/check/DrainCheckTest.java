package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.plan.model.Plan;

class DrainCheckTest {
    private static final double LITRE_PER_HOUR = 1e-3 / 3600;
    private static final String BORE = "inlet: 0.10 m\n      pipe: {bore: 25 mm";

    /** The worked system with a spare drain, its lip at 0.50 m. */
    static Plan withSpare(String bore) {
        String drain = "fittings: {elbow_90: 3}}\n";
        return TestPlans.workedExample(
                drain,
                drain
                        + "    - name: spare\n      kind: emergency\n      inlet: 0.50 m\n      pipe: {bore: " + bore
                        + ", length: 1.2 m}\n");
    }

    /** Quiet limits at 7/24 full by the form of EN 12056-3: 777 and 2722 L/h. */
    @ParameterizedTest
    @CsvSource({"25 mm, 777, CLOSE", "40 mm, 2722, HOLDS"})
    void aStandpipeIsQuietUpToItsAnnularLimit(String bore, double limit, Holding expected) {
        Checked check = Checked.of(
                TestPlans.workedExample(
                        "kind: siphon", "kind: standpipe", BORE, "inlet: 0.40 m\n      pipe: {bore: " + bore),
                "working_drain");
        assertThat(check.margin()).isCloseTo((limit - 2500) * LITRE_PER_HOUR, within(0.001 * limit * LITRE_PER_HOUR));
        assertThat(check.holding()).isEqualTo(expected);
    }

    @Test
    void aFullSiphonTooNarrowForThePumpFails() {
        Checked wide = Checked.of(TestPlans.workedExample(), "working_drain");
        assertThat(wide.holding()).isEqualTo(Holding.HOLDS);
        Checked narrow = Checked.of(
                TestPlans.workedExample("bore: 25 mm, length: 1.2 m", "bore: 20 mm, length: 1.2 m"), "working_drain");
        assertThat(narrow.holding()).isEqualTo(Holding.FAILS);
        assertThat(narrow.sentence()).startsWith("Take a wider drain or a smaller flow");
    }

    /** Heads over an open mouth by hand: 43.3 mm at 40 mm of bore, 283 mm at 25 mm; 15 mm stay free under the rim. */
    @ParameterizedTest
    @CsvSource({"40 mm, 0.0433, HOLDS", "25 mm, 0.283, FAILS"})
    void aSpareDrainNeedsTheHeadWorkedByHand(String bore, double head, Holding expected) {
        Checked check = Checked.of(withSpare(bore), "spare_drain");
        assertThat(check.margin()).isCloseTo(0.60 - 0.015 - 0.50 - head, within(0.002 * head));
        assertThat(check.holding()).isEqualTo(expected);
    }
}
