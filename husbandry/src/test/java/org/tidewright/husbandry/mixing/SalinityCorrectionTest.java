package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.mixing.WaterChangeTest.text;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.density.Density;
import org.tidewright.testkit.SeededCases;

class SalinityCorrectionTest {
    private static final double DAY = 86_400;

    /** 400 L at 25.5 °C that evaporate 4 L a day. */
    private static SalinityCorrection tank(double now, double target) {
        return new SalinityCorrection(0.4, 25.5, now, target, 4e-3 / DAY, Keeping.SOFT_CORALS);
    }

    private static double poured(double volume, double now, double x, double other) {
        return new WaterChange(new Portion(volume, KnownWater.of(now, 25.5)), x, KnownWater.of(other, 25.5))
                .after()
                .water()
                .value(WaterQuantity.SALINITY)
                .orElseThrow();
    }

    @Test
    void whatIsSwappedComesToTheTarget() {
        SeededCases.check(draw -> {
            double now = draw.between(28, 40);
            double other = draw.oneOf(0.0, draw.between(41, 80));
            double target = other == 0 ? draw.between(20, now - 0.1) : draw.between(now + 0.1, 40.5);
            SalinityCorrection correction =
                    new SalinityCorrection(draw.between(0.05, 2), 25.5, now, target, 0, Keeping.FISH);
            double x = correction.swap(other).orElseThrow();
            assertThat(poured(correction.volume(), now, x, other)).isCloseTo(target, within(1e-9));
        });
    }

    /** By litres alone, V (S − S_t)/(S − S_x): 36.5 to 35 with pure water is 400 × 1.5/36.5 = 16.4 L; by mass 2.6 % more. */
    @Test
    void pureWaterIsLighterThanTheRuleOfLitresTakesIt() {
        double x = 1000 * tank(36.5, 35).swap(0).orElseThrow();
        assertThat(x).isCloseTo(16.44, within(0.5)).isGreaterThan(16.44);
        assertThat(x).isCloseTo(16.44 * 1.0247, within(0.03));
    }

    @Test
    void theWrongWaterSwapsNothing() {
        assertThat(tank(36, 35).swap(38)).isEmpty();
        assertThat(tank(34, 35).swap(35)).isEmpty();
        assertThat(tank(34, 35).swap(0)).isEmpty();
        assertThat(tank(36, 35).topOff(35)).isEmpty();
    }

    @Test
    void dailySwapsEndAtTheTargetEachWithinThePace() {
        SalinityCorrection correction = tank(37.5, 35);
        List<Double> swaps = correction.dailySwaps(0);
        assertThat(swaps).hasSize(3);
        double salinity = 37.5;
        for (double swap : swaps) {
            double next = poured(0.4, salinity, swap, 0);
            assertThat(salinity - next).isLessThanOrEqualTo(1 + 1e-9);
            salinity = next;
        }
        assertThat(salinity).isCloseTo(35, within(1e-9));
        assertThat(swaps.stream().mapToDouble(each -> each).sum())
                .isGreaterThan(correction.swap(0).orElseThrow());
    }

    /** 33 to 35 in 400 L lacks 400 × (1023.2 × 35 − 1021.7 × 33)/1000 = 838 g; a litre of 35 brings 35.8 g: 23.4 L. */
    @Test
    void toppingUpWithSaltWaterRaisesByTheSaltItBrings() {
        double litres = 1000 * tank(33, 35).topOff(35).orElseThrow();
        assertThat(litres).isCloseTo(23.4, within(0.1));
        SeededCases.check(300, draw -> {
            SalinityCorrection correction = tank(draw.between(28, 34), draw.between(34.1, 38));
            double saltWater = draw.between(30, 60);
            double added = correction.topOff(saltWater).orElseThrow();
            double salt = 0.4 * Density.ofSeawater(25.5, correction.now()) * correction.now()
                    + added * Density.ofSeawater(25.5, saltWater) * saltWater;
            double then = 0.4 * Density.ofSeawater(25.5, correction.target()) * correction.target();
            assertThat(salt).isCloseTo(then, within(1e-9));
        });
    }

    /** 4 L a day of 35 raise 400 L by 0.34 a day: under 0.5, so nothing is thinned; 12 L a day of 35 would be too fast. */
    @Test
    void theTopOffIsThinnedWhereEvaporationIsFast() {
        SalinityCorrection slow = tank(33, 35);
        assertThat(slow.topOffTime(35).orElseThrow() / DAY).isCloseTo(23.4 / 4, within(0.05));
        assertThat(slow.saltyShare(35)).isCloseTo(1, within(1e-12));
        SalinityCorrection fast = new SalinityCorrection(0.4, 25.5, 33, 35, 12e-3 / DAY, Keeping.SOFT_CORALS);
        assertThat(fast.topOffTime(35).orElseThrow() / DAY).isCloseTo(4, within(1e-12));
        assertThat(fast.saltyShare(35)).isCloseTo(23.4 / 48, within(0.003));
    }

    /**
     * 400 L that lose 4 L a day. A worked example counts volumes and comes to 35.71 after two days and to 37 after 5.405; pure
     * water is 2.6 % lighter than seawater, so that by mass it takes 5.55 days: 400 × 1023.19 × (1 − 35/37)/(4 × 996.92).
     */
    @Test
    void withoutTopOffItRisesByTheMassThatLeaves() {
        SalinityCorrection tank = tank(35, 35);
        assertThat(tank.untopped(2 * DAY)).isCloseTo(35.71, within(0.001 * 35.71));
        assertThat(tank.untoppedUntil(37) / DAY).isCloseTo(5.548, within(0.001));
        assertThat(tank.untopped(tank.untoppedUntil(37))).isCloseTo(37, within(1e-9));
        assertThat(tank.untopped(0)).isCloseTo(35, within(1e-12));
    }

    @Test
    void raisingIsToldByTheTopOffFirst() {
        Advice advice = tank(33, 35).advice(36);
        assertThat(text(advice.lead()))
                .startsWith("Top up with salt water of 36 in place of pure water until 22.7 L are in, about 5.7 days");
        assertThat(text(advice.remarks().get(0))).startsWith("Sooner, by swapping: take ");
        assertThat(advice.remarks())
                .anySatisfy(remark -> assertThat(text(remark)).startsWith("Without top-off it rises by 0.3"));
    }

    @Test
    void topOffRaisesEvenWithWaterOfTheTargetAndASwapDoesNot() {
        Advice advice = tank(33, 35).advice(35);
        assertThat(text(advice.lead())).startsWith("Top up with salt water of 35 in place of pure water until 23.4 L");
        assertThat(advice.remarks())
                .noneSatisfy(remark -> assertThat(text(remark)).startsWith("Sooner"));
        SalinityCorrection closed = new SalinityCorrection(0.4, 25.5, 33, 35, 0, Keeping.SOFT_CORALS);
        assertThat(text(closed.advice(35).lead())).startsWith("Mix a stronger water first");
        assertThat(text(closed.advice(38).lead())).startsWith("Take 39.9 L out and put the stronger water in");
    }

    @Test
    void loweringIsToldDayByDay() {
        Advice advice = tank(37.5, 35).advice(36);
        assertThat(text(advice.lead()))
                .startsWith("Take 9.1 L out and put pure water in, and so each day for 3 days")
                .contains("comfortable for soft corals; 2 is the ceiling");
        assertThat(advice.working()).hasSize(3);
        assertThat(text(advice.working().get(2))).contains("35");
        assertThat(text(tank(35, 35).advice(36).lead())).startsWith("Leave the salinity alone");
    }

    @Test
    void theErrorOfASwapIsItsSlopeTimesTheErrorOfTheReading() {
        SeededCases.check(200, draw -> {
            double now = draw.between(35.5, 39);
            double slope = (tank(now + 1e-4, 35).swap(0).orElseThrow()
                            - tank(now - 1e-4, 35).swap(0).orElseThrow())
                    / 2e-4;
            // The density's own slope, 0.07 % for each of salinity, is left out of it.
            assertThat(tank(now, 35).swapError(0, 0.4)).isCloseTo(0.4 * slope, within(0.005 * 0.4 * slope));
        });
    }

    @Test
    void aTargetWithinTheDoubtIsMeasuredForFirst() {
        Advice advice = tank(34.8, 35).advice(36, 0.4, 0, Origin.TYPED);
        assertThat(text(advice.lead()))
                .isEqualTo("Measure again before you move it: the salinity is known as 34.8 ± 0.4 and may stand at its"
                        + " target of 35 already.");
        assertThat(text(advice.remarks().get(0))).startsWith("If it does stand where it reads: top up with salt water");
        assertThat(text(tank(34.8, 35).advice(36).lead())).startsWith("Top up");
    }

    /** 400 × 1021.7 × (1 − 33/35)/(4 × 996.9) = 5.86 days, and so 23.4 L. */
    @Test
    void raisingWithoutSaltIsToldWithTheWaterThatGoesMissing() {
        Advice advice = tank(33, 35).advice(35, 0, 1.2e-3 / DAY, new Origin(Basis.COMPUTED, "open surfaces"));
        assertThat(advice.remarks())
                .anySatisfy(remark -> assertThat(text(remark))
                        .startsWith("With no salt at all: stop the top-off for 6 ± 2 days, until 23.4 L are missing."))
                .anySatisfy(remark -> assertThat(text(remark))
                        .isEqualTo("To swap some of the water instead, mix it saltier than 35."));
        assertThat(advice.sources())
                .anySatisfy(source -> assertThat(source.detail()).isEqualTo("open surfaces"));
        assertThat(tank(37, 35).advice(36).remarks())
                .noneSatisfy(remark -> assertThat(text(remark)).startsWith("With no salt"));
    }
}
