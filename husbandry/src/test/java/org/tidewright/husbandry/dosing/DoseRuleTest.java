package org.tidewright.husbandry.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.estimate.Known;

/** In dKH and days: a range of 7.4 to 8.6 with 8.0 as its aim, and 0.3 dKH a day as the safe rate. */
class DoseRuleTest {
    private static final Aim AIM = new Aim(8.0, 7.4, 8.6, 0.3);
    private static final double STEP = 0.005;
    private static final double WEEK = 7;
    private static final double MOST = 0.8;

    /** A week to the next test; the doubt of the level then is that of level and use, and 0.03 dKH more by the root of a day. */
    private static DoseCase situation(
            double level, double levelError, double use, double useError, double dosed, @Nullable Settling settling) {
        double then = Math.sqrt(levelError * levelError + WEEK * WEEK * useError * useError + WEEK * 0.03 * 0.03);
        return new DoseCase(
                new Known(level, levelError),
                new Known(level + WEEK * (dosed - use), then),
                new Known(use - dosed, useError),
                dosed - 0.1,
                MOST,
                STEP,
                settling);
    }

    private static Settling settling() {
        Instant moved = Instant.parse("2026-03-01T08:00:00Z");
        return new Settling(
                "bicarbonate dose", moved, 0.1, moved.plusSeconds(864_000), true, moved.plusSeconds(500_000));
    }

    @Test
    void aDoseThatMeetsTheUseIsLeftEvenWhereTheLevelStandsBesideTheAim() {
        assertThat(DoseRule.advise(situation(7.8, 0.1, 0.60, 0.02, 0.60, null), AIM))
                .isInstanceOf(DoseAdvice.Leave.class);
    }

    @Test
    void aDoseThatLetsTheLevelFallOutIsRaisedToTheUseAndALittleMore() {
        assertThat(DoseRule.advise(situation(7.7, 0.1, 0.60, 0.02, 0.52, null), AIM))
                .isInstanceOfSatisfying(DoseAdvice.Move.class, move -> {
                    // 0.60 to hold, and 0.3 dKH back over a week: 0.6429 dKH a day, of which 0.1 comes from elsewhere;
                    // to the step of 0.005.
                    assertThat(move.dose()).isCloseTo(0.545, within(1e-9));
                    assertThat(move.chance()).isGreaterThan(0.1);
                });
    }

    @Test
    void whatIsLikelyOutsideIsBroughtBackOverAsManyDaysAsAreSafe() {
        assertThat(DoseRule.advise(situation(7.0, 0.1, 0.60, 0.02, 0.60, null), AIM))
                .isInstanceOfSatisfying(DoseAdvice.Correct.class, correct -> {
                    assertThat(correct.lift()).isCloseTo(1.0, within(1e-9));
                    assertThat(correct.days()).isEqualTo(4);
                    assertThat(correct.dose()).isCloseTo(0.50, within(1e-9));
                });
    }

    @Test
    void aDoseThatWasMovedIsLeftUntilItsEffectCanBeTold() {
        assertThat(DoseRule.advise(situation(7.7, 0.1, 0.60, 0.02, 0.52, settling()), AIM))
                .isInstanceOf(DoseAdvice.Settle.class);
    }

    @Test
    void harmComesBeforeSettling() {
        assertThat(DoseRule.advise(situation(6.8, 0.1, 0.65, 0.03, 0.60, settling()), AIM))
                .isInstanceOf(DoseAdvice.Correct.class);
    }

    @Test
    void aMoveNeverAsksForLessThanNothing() {
        assertThat(DoseRule.advise(situation(8.55, 0.1, 0.02, 0.02, 0.15, null), AIM))
                .isInstanceOfSatisfying(
                        DoseAdvice.Move.class, move -> assertThat(move.dose()).isZero());
    }

    /** P(level < 7.4) with a mean of 7.3 and an error of 0.2173 is Φ(0.460) = 0.677 (normal table); above 8.6 next to none. */
    @Test
    void theChanceOfBeingOutsideIsThatOfTheNormalTable() {
        assertThat(DoseRule.chanceOutside(new Known(7.3, 0.2173), AIM)).isCloseTo(0.677, within(1e-3));
    }

    @Test
    void aDoseThatIsRightWithinTheDoubtOfTheUseIsNotMoved() {
        // 0.02 dKH a day would bring it back; the use is known to 0.06 only.
        assertThat(DoseRule.advise(situation(7.86, 0.1, 0.60, 0.06, 0.60, null), AIM))
                .isInstanceOf(DoseAdvice.Leave.class);
    }

    @Test
    void aHighLevelIsLetDownByDosingLessAndNotByHand() {
        assertThat(DoseRule.advise(situation(9.4, 0.1, 0.60, 0.02, 0.60, null), AIM))
                .isInstanceOfSatisfying(DoseAdvice.Correct.class, correct -> {
                    assertThat(correct.lift()).isNegative();
                    // 0.60 less 1.4 / 5 = 0.28 dKH a day, of which 0.1 comes from elsewhere: 0.22.
                    assertThat(correct.dose()).isCloseTo(0.22, within(1e-9));
                });
    }

    @Test
    void aLevelThatMayLieAnywhereAsksForNoDose() {
        assertThat(DoseRule.advise(situation(7.2, 0.7, 0.60, 0.02, 0.60, null), AIM))
                .isInstanceOf(DoseAdvice.Leave.class);
        assertThat(DoseRule.advise(situation(7.2, 0.7, 0.60, 0.02, 0.60, settling()), AIM))
                .isInstanceOf(DoseAdvice.Settle.class);
    }

    @Test
    void whatComesOfTheDoubtOfTheLevelIsNoReasonForAMove() {
        // 0.15 / 7 = 0.021 dKH a day would bring it back; for the level that is known to 0.55 / 7 = 0.079 only.
        assertThat(DoseRule.advise(situation(7.85, 0.55, 0.60, 0.02, 0.60, null), AIM))
                .isInstanceOf(DoseAdvice.Leave.class);
    }

    @Test
    void noMoreIsDosedThanMayBe() {
        // 0.75 + 0.75 used and 0.3 dKH back over a week would take more than the 0.8 of which 0.1 come from elsewhere.
        assertThat(DoseRule.advise(situation(7.7, 0.1, 1.5, 0.02, 0.75, null), AIM))
                .isInstanceOfSatisfying(
                        DoseAdvice.Move.class, move -> assertThat(move.dose()).isCloseTo(MOST, within(1e-9)));
        // And what is dosed to the full is left, whatever the level does.
        assertThat(DoseRule.advise(situation(7.7, 0.1, 1.0, 0.02, MOST + 0.1, null), AIM))
                .isInstanceOf(DoseAdvice.Leave.class);
    }

    @Test
    void whatComesBackByTheNextTestIsLeft() {
        // 7.3 now, and 7.3 + 7 · 0.09 = 7.93 ± 0.22 a week on.
        assertThat(DoseRule.advise(situation(7.3, 0.1, 0.60, 0.02, 0.69, null), AIM))
                .isInstanceOfSatisfying(
                        DoseAdvice.Leave.class,
                        leave -> assertThat(leave.chance()).isLessThan(0.1));
    }
}
