package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.mixing.WaterChangeTest.text;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.mixing.ChangeSeries.Reach;
import org.tidewright.husbandry.mixing.ChangeSeries.Step;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.testkit.SeededCases;

class ChangeSeriesTest {
    private static final double DAY = 86_400;
    private static final double MG = 1e-3;

    /** Nitrate in mg/L and mg/L a day. */
    private static ChangeSeries nitrate(
            double now, double target, double newWater, double share, double perDay, double days) {
        return new ChangeSeries(
                WaterQuantity.NITRATE, now * MG, target * MG, newWater * MG, share, perDay * MG / DAY, days * DAY);
    }

    /** 50 mg/L by fifths of clean water: 50 × 0.8^n is at 10 or less when n reaches ln 5 / ln 1.25 = 7.2. */
    @Test
    void cleanWaterCarriesOffAShareEachTime() {
        ChangeSeries series = nitrate(50, 10, 0, 0.2, 0, 7);
        assertThat(series.changes()).hasValue(8);
        assertThat(series.after(8)).isCloseTo(50 * MG * Math.pow(0.8, 8), within(1e-15));
        assertThat(series.reach()).isEqualTo(Reach.REACHED);
        assertThat(series.holds()).isTrue();
    }

    /** 0.1167 g/L of residue a week and tenths: worked plateau of 1.167 g/L before each change. */
    @Test
    void whatIsMadeInBetweenComesToTheWorkedPlateau() {
        ChangeSeries series = nitrate(0, 10, 0, 0.1, 116.7 / 7, 7);
        assertThat(series.settledBefore()).isCloseTo(1167 * MG, within(0.5 * MG));
        assertThat(series.before(200)).isCloseTo(series.settledBefore(), within(1e-9));
    }

    /**
     * Worked for a quarantine tank that makes 0.2166 mg/L a day: 65.6 % a day keep the peak before the change at 0.33, and
     * 39.6 % bring it back to 0.33 after it.
     */
    @Test
    void theShareThatHoldsATargetIsTheWorkedOne() {
        ChangeSeries series = nitrate(1, 0.33, 0, 0.396, 0.2166, 1);
        assertThat(series.shareToHold()).hasValueCloseTo(0.396, within(0.001));
        assertThat(series.withShare(0.656).settledBefore()).isCloseTo(0.33 * MG, within(0.001 * MG));
    }

    @Test
    void theClosedFormIsTheStepsOneByOne() {
        SeededCases.check(draw -> {
            ChangeSeries series = nitrate(
                    draw.between(0, 80),
                    draw.between(0, 80),
                    draw.between(0, 20),
                    draw.between(0.01, 1),
                    draw.between(-1, 2),
                    draw.between(1, 14));
            double value = series.now();
            for (Step step : series.steps(20)) {
                assertThat(step.before()).isCloseTo(value, within(1e-12));
                value = (1 - series.share()) * value + series.share() * series.newWater();
                assertThat(step.after()).isCloseTo(value, within(1e-12));
                value += series.rate() * series.interval();
            }
        });
    }

    @Test
    void theCountIsTheFirstThatReaches() {
        SeededCases.check(draw -> {
            ChangeSeries series = nitrate(
                    draw.between(10, 80),
                    draw.between(2, 60),
                    draw.between(0, 5),
                    draw.between(0.05, 0.6),
                    draw.between(0, 0.5),
                    7);
            boolean falls = series.target() < series.now();
            int limit = series.changes().orElse(300);
            for (int k = 1; k <= limit; k++) {
                boolean there = falls ? series.after(k) <= series.target() : series.after(k) >= series.target();
                assertThat(there)
                        .as("after change %s", k)
                        .isEqualTo(k == limit && series.changes().isPresent());
            }
        });
    }

    @Test
    void theSizeForACountIsTheOneThatEndsAtTheTarget() {
        SeededCases.check(300, draw -> {
            ChangeSeries series = nitrate(
                    draw.between(30, 80), draw.between(10, 25), draw.between(0, 5), 0.1, draw.between(0, 0.3), 7);
            int count = draw.whole(1, 12);
            double share = series.shareFor(count).orElseThrow();
            assertThat(series.withShare(share).after(count)).isCloseTo(series.target(), within(1e-9));
        });
    }

    @Test
    void theVolumeOfAShareMakesThatShare() {
        SeededCases.check(200, draw -> {
            Portion system = new Portion(draw.between(0.05, 1), KnownWater.of(draw.between(20, 40), 25));
            KnownWater fresh = KnownWater.of(draw.between(0, 40), draw.between(5, 30));
            double share = draw.between(0.01, 0.95);
            double volume = ChangeSeries.volume(system, fresh, share);
            assertThat(new WaterChange(system, volume, fresh).share()).isCloseTo(share, within(1e-12));
        });
    }

    /** Without making anything: w = 1 − (target/now)^(1/n). */
    @Test
    void withNothingMadeTheSizeIsTheRootOfTheShareLeft() {
        assertThat(nitrate(50, 10, 0, 0.1, 0, 7).shareFor(3)).hasValueCloseTo(1 - Math.cbrt(0.2), within(1e-12));
    }

    @Test
    void itSaysPlainlyWhatCannotBeReached() {
        ChangeSeries dirty = nitrate(50, 10, 15, 0.2, 0, 7);
        assertThat(dirty.reach()).isEqualTo(Reach.NEW_WATER);
        assertThat(dirty.changes()).isEmpty();
        assertThat(dirty.shareFor(5)).isEmpty();
        ChangeSeries outrun = nitrate(50, 10, 0, 0.1, 1, 7);
        assertThat(outrun.reach()).isEqualTo(Reach.OUTRUN);
        assertThat(outrun.changes()).isEmpty();
        assertThat(nitrate(10, 10, 0, 0.1, 1, 7).reach()).isEqualTo(Reach.THERE);
    }

    @Test
    void aTargetThatIsReachedAndNotHeldIsToldSo() {
        // 7 mg/L a week and fifths: 28 after and 35 before each change.
        ChangeSeries series = nitrate(80, 33, 0, 0.2, 1, 7);
        assertThat(series.settledAfter()).isCloseTo(28 * MG, within(1e-12));
        assertThat(series.settledBefore()).isCloseTo(35 * MG, within(1e-12));
        assertThat(series.holds()).isFalse();
        assertThat(text(series.advice(tank(), Keeping.FISH).lead())).contains("It does not stay there");
    }

    private static WaterChange tank() {
        return new WaterChange(
                new Portion(0.2, KnownWater.of(35, 25).with(WaterQuantity.NITRATE, 50 * MG)),
                0.04,
                KnownWater.of(35, 25).with(WaterQuantity.NITRATE, 0));
    }

    /** Waters 0.26 % apart in density, which the series takes to stay: so much, and 0.04 % more of the share each time. */
    @Test
    void theSeriesOfAChangeIsThatOfItsWatersPouredOneByOne() {
        KnownWater saltier = KnownWater.of(36, 22).with(WaterQuantity.NITRATE, 2 * MG);
        WaterChange change = new WaterChange(
                new Portion(0.2, KnownWater.of(34, 26).with(WaterQuantity.NITRATE, 50 * MG)), 0.03, saltier);
        ChangeSeries series = ChangeSeries.of(change, WaterQuantity.NITRATE, 10 * MG, 0, 7 * DAY);
        Portion system = change.system();
        for (int k = 1; k <= 10; k++) {
            system = new WaterChange(system, 0.03, saltier).after();
            double poured = system.water().value(WaterQuantity.NITRATE).orElseThrow();
            assertThat(series.after(k)).isCloseTo(poured, within(4e-3 * poured));
        }
    }

    @Test
    void theAnswersAreTold() {
        ChangeSeries series = ChangeSeries.of(tank(), WaterQuantity.NITRATE, 10 * MG, 0, 7 * DAY);
        Advice advice = series.advice(tank(), Keeping.SOFT_CORALS);
        assertThat(text(advice.lead()))
                .isEqualTo(
                        "Make 8 changes of 40 L, 7 days apart: after the last, nitrate stands at 8.39 mg/L; the target"
                                + " is 10 mg/L.");
        assertThat(text(advice.remarks().get(0)))
                .startsWith("Smaller ones are gentler: the first moves nitrate by 10 mg/L");
        assertThat(advice.working()).hasSize(9);
        ChangeSeries outrun = ChangeSeries.of(tank(), WaterQuantity.NITRATE, 10 * MG, 0.5 * MG / DAY, 7 * DAY);
        // Half a milligram a day, 3.5 a week and 14 in the long run; 3.5 / (10 + 3.5) of 200 L hold it.
        assertThat(text(outrun.advice(tank(), Keeping.SOFT_CORALS).lead()))
                .startsWith("Feed less or carry more out another way, or change 51.9 L each time");
        ChangeSeries dirty = nitrate(50, 10, 15, 0.2, 0, 7);
        assertThat(text(dirty.advice(tank(), Keeping.SOFT_CORALS).lead())).startsWith("Mend the new water first");
    }

    @Test
    void temperatureHasNoSeries() {
        assertThatThrownBy(() -> new ChangeSeries(WaterQuantity.TEMPERATURE, 25, 20, 15, 0.1, 0, DAY))
                .hasMessageContaining("not carried off");
        assertThatThrownBy(() -> ChangeSeries.of(tank(), WaterQuantity.CALCIUM, 0.4, 0, DAY))
                .hasMessageContaining("calcium of the system is not known");
    }

    /** The closed form is even in both, so that a difference is the slope. */
    @Test
    void theErrorAfterIsTheSlopeTimesTheErrors() {
        SeededCases.check(200, draw -> {
            double share = draw.between(0.05, 0.6);
            int count = draw.whole(0, 10);
            ChangeSeries series = nitrate(50, 10, 2, share, 0.5, 7);
            double byNow = nitrate(51, 10, 2, share, 0.5, 7).after(count) - series.after(count);
            double byRate = count == 0 ? 0 : nitrate(50, 10, 2, share, 0.7, 7).after(count) - series.after(count);
            assertThat(series.errorAfter(count, MG, 0.2 * MG / DAY))
                    .isCloseTo(Math.hypot(byNow, byRate), within(1e-12));
        });
    }

    private static WaterChange nitrates(double now, double error, double fresh) {
        return new WaterChange(
                new Portion(0.2, KnownWater.of(35, 25).with(WaterQuantity.NITRATE, now * MG, error * MG)),
                0.04,
                KnownWater.of(35, 25).with(WaterQuantity.NITRATE, fresh * MG));
    }

    private static String lead(WaterChange change, double target, double perDay) {
        return text(ChangeSeries.of(change, WaterQuantity.NITRATE, target * MG, perDay * MG / DAY, 7 * DAY)
                .advice(change, Keeping.FISH, 0.05 * MG / DAY)
                .lead());
    }

    @Test
    void aTargetWithinTheDoubtIsTestedForFirst() {
        assertThat(lead(nitrates(9, 2, 0), 8, 0))
                .isEqualTo(
                        "Test again before you change water for it: nitrate is known as 9 ± 2 mg/L and may stand at its"
                                + " target of 8 mg/L already.");
        assertThat(lead(nitrates(9, 0, 0), 8, 0)).startsWith("Make 1 change of 40 L");
    }

    @Test
    void newWaterAtTheTargetIsToldToComeNearAndNeverThere() {
        // Half of the way by fifths: ln 0.5 / ln 0.8 = 3.1.
        assertThat(lead(nitrates(50, 0, 10), 10, 0))
                .startsWith("Aim a little short of it, or mix new water beyond it")
                .endsWith("Half of the way is done after 4 changes of 40 L.");
    }

    @Test
    void nitrateIsNotRaisedByChanges() {
        assertThat(lead(nitrates(2, 0, 0), 8, 0)).startsWith("No change raises nitrate here");
    }

    /** 7 mg/L a week and fifths: 28 after each change; ± 0.05 a day are ± 1.4 there. */
    @Test
    void thePlateauIsToldWithTheDoubtOfTheRate() {
        assertThat(lead(nitrates(80, 0, 0), 20, 1))
                .startsWith("Feed less or carry more out another way")
                .contains("leave it at 28 ± 1 mg/L in the long run, short of 20 mg/L");
    }

    @Test
    void whatWasSupposedOfTheWeightsIsSaid() {
        KnownWater bare = new KnownWater(Map.of(WaterQuantity.NITRATE, 50 * MG));
        WaterChange change =
                new WaterChange(new Portion(0.2, bare), 0.04, new KnownWater(Map.of(WaterQuantity.NITRATE, 0.0)));
        assertThat(ChangeSeries.of(change, WaterQuantity.NITRATE, 10 * MG, 0, 7 * DAY)
                        .advice(change, Keeping.FISH)
                        .remarks())
                .anySatisfy(remark -> assertThat(text(remark)).startsWith("Weighed as if of salinity 35 and 25 °C"));
    }
}
