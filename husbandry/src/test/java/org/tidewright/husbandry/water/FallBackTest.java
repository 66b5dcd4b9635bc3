package org.tidewright.husbandry.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class FallBackTest {
    private static final double LITRE = 1e-3;

    @Test
    void itsPartsAreThoseWorkedByHand() {
        FallBack bound = FallBack.of(plan("harbour-room"), false);
        // 1.50 × 0.60 m less the box of 0.24 × 0.16 m: 0.8616 m²; the nozzle stands 55 mm under the crest.
        assertThat(bound.display().siphon()).isCloseTo(0.8616 * 0.055, within(0.01 * LITRE));
        // Inside the box 0.228 × 0.154 m, from 36 cm down to the inlet at 25 cm.
        assertThat(bound.display().box()).isCloseTo(0.228 * 0.154 * 0.11, within(0.01 * LITRE));
        assertThat(bound.display().gear()).isCloseTo(6 * LITRE, within(1e-9));
        // 28 mm × 2.6 m and 38 mm × 1.4 m of pipe.
        double pipes = Math.PI / 4 * (0.028 * 0.028 * 2.6 + 0.038 * 0.038 * 1.4);
        assertThat(bound.display().pipes()).isCloseTo(pipes, within(1e-9));
        // The refugium, 0.32 × 0.30 m, down from 11 mm over its crest to its feed's mouth 20 mm under it.
        assertThat(bound.refugium()).isBetween(0.096 * 0.020, 0.096 * 0.040);
    }

    /** In ten minutes only a film is left to come, and what the weir's tail still holds. */
    @ParameterizedTest
    @CsvSource({"harbour-room, true", "harbour-room, false", "fifty-five-gallon, true", "fifty-five-gallon, false"})
    void theRunStaysWithinTheBoundAndComesNearIt(String example, boolean holesClear) {
        Plan plan = plan(example);
        double fell = DrainDownStudy.of(plan, holesClear, false).fellBack();
        double bound = FallBack.of(plan, holesClear).total();
        assertThat(fell).isLessThanOrEqualTo(bound + 0.02 * LITRE);
        assertThat(fell).isCloseTo(bound, within(1.0 * LITRE));
    }

    @Test
    void theSentenceNamesOnlyWhatIsThere() {
        String told = FallBack.of(plan("fifty-five-gallon"), true).told("a").text(UnitSystem.US);
        assertThat(told)
                .startsWith("At most ")
                .contains("over the crest")
                .doesNotContain("refugium")
                .endsWith(".");
    }

    private static Plan plan(String example) {
        return ((PlanReading.Sound) PlanText.read(Examples.text(example))).plan();
    }
}
