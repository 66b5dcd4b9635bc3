package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.density.ConservativeTemperature;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class PortionTest {
    private static KnownWater any(Draw draw) {
        return KnownWater.of(draw.between(0, 40), draw.between(10, 32))
                .with(WaterQuantity.ALKALINITY, draw.between(0, 6))
                .with(WaterQuantity.CALCIUM, draw.between(0, 0.6))
                .with(WaterQuantity.NITRATE, draw.between(0, 0.1))
                .with(WaterQuantity.PHOSPHATE, draw.between(0, 1e-3));
    }

    private static double value(Portion portion, WaterQuantity quantity) {
        return portion.water().value(quantity).orElseThrow();
    }

    /**
     * By hand with the check values of EOS-80, 1023.343 and 997.048 kg/m³: 90 L of 35 weigh 92.101 kg, 10 L of pure water
     * 9.970 kg; 35 × 92.101 / 102.071 = 31.581, not the 31.5 of the litres.
     */
    @Test
    void freshWaterDilutesByItsMassAndNotByItsVolume() {
        Portion mixed = new Portion(0.090, KnownWater.of(35, 25)).mixedWith(new Portion(0.010, KnownWater.pure(25)));
        assertThat(value(mixed, WaterQuantity.SALINITY)).isCloseTo(31.581, within(0.001));
        assertThat(mixed.volume()).isCloseTo(0.1, within(0.0001));
    }

    /** TEOS-10: other densities than ours, and heat as potential enthalpy, which is conservative temperature times mass. */
    @Test
    void saltAndHeatAreThoseOfTeos10() {
        SeededCases.check(300, draw -> {
            double sa = draw.between(2, 40);
            double ta = draw.between(10, 32);
            double sb = draw.between(2, 40);
            double tb = draw.between(10, 32);
            double va = draw.between(0.01, 1);
            double vb = draw.between(0.01, 1);
            double ma = va * Teos10.density(ta, sa);
            double mb = vb * Teos10.density(tb, sb);
            double salinity = (ma * sa + mb * sb) / (ma + mb);
            double heat =
                    (ma * ConservativeTemperature.fromInSitu(ta, sa) + mb * ConservativeTemperature.fromInSitu(tb, sb))
                            / (ma + mb);
            Portion mixed = new Portion(va, KnownWater.of(sa, ta)).mixedWith(new Portion(vb, KnownWater.of(sb, tb)));
            assertThat(value(mixed, WaterQuantity.SALINITY)).isCloseTo(salinity, within(2e-4));
            // The heat of mixing itself is neglected: at most 0.014 K.
            assertThat(value(mixed, WaterQuantity.TEMPERATURE))
                    .isCloseTo(ConservativeTemperature.toInSitu(heat, salinity), within(0.015));
        });
    }

    @Test
    void massAndEveryAmountIsKept() {
        SeededCases.check(draw -> {
            Portion a = new Portion(draw.between(0.001, 1), any(draw));
            Portion b = new Portion(draw.between(0.001, 1), any(draw));
            Portion mixed = a.mixedWith(b);
            assertThat(mixed.mass()).isCloseTo(a.mass() + b.mass(), within(1e-9));
            for (WaterQuantity quantity : List.of(WaterQuantity.ALKALINITY, WaterQuantity.NITRATE)) {
                double amount = a.volume() * value(a, quantity) + b.volume() * value(b, quantity);
                assertThat(mixed.volume() * value(mixed, quantity)).isCloseTo(amount, within(1e-12));
            }
        });
    }

    @Test
    void equalWatersChangeNothing() {
        SeededCases.check(draw -> {
            KnownWater water = any(draw);
            Portion mixed = new Portion(draw.between(0.001, 1), water).mixedWith(new Portion(0.3, water));
            water.values()
                    .forEach((quantity, before) -> assertThat(value(mixed, quantity))
                            .as(quantity.words())
                            .isCloseTo(before, within(1e-10 * (1 + before))));
        });
    }

    @Test
    void aMixtureLiesBetweenItsWaters() {
        SeededCases.check(draw -> {
            Portion a = new Portion(draw.between(0.001, 1), any(draw));
            Portion b = new Portion(draw.between(0.001, 1), any(draw));
            Portion mixed = a.mixedWith(b);
            for (WaterQuantity quantity : a.water().values().keySet()) {
                double low = Math.min(value(a, quantity), value(b, quantity));
                double high = Math.max(value(a, quantity), value(b, quantity));
                // The volume of a mixture is up to two thousandths off the sum of the volumes, and what is per litre
                // too;
                // warm and cold water cross the middle by the specific heat's own bend.
                double slack = quantity == WaterQuantity.SALINITY ? 1e-12 : 2e-3 * high + 1e-9;
                assertThat(value(mixed, quantity)).as(quantity.words()).isBetween(low - slack, high + slack);
            }
        });
    }

    @Test
    void theOrderDoesNotMatter() {
        SeededCases.check(200, draw -> {
            List<Portion> portions =
                    new ArrayList<>(draw.list(2, 5, each -> new Portion(each.between(0.01, 1), any(each))));
            Portion one = Portion.mix(portions);
            Collections.reverse(portions);
            Portion other = Portion.mix(portions);
            one.water()
                    .values()
                    .forEach((quantity, value) ->
                            assertThat(value(other, quantity)).isCloseTo(value, within(1e-10 * (1 + value))));
            assertThat(one.volume()).isCloseTo(other.volume(), within(1e-12));
        });
    }

    @Test
    void whatIsNotKnownOfOneWaterIsNotKnownOfTheMixture() {
        KnownWater measured = KnownWater.of(35, 25).with(WaterQuantity.NITRATE, 0.01);
        KnownWater unmeasured = KnownWater.of(35, 25);
        Portion mixed = new Portion(0.09, measured).mixedWith(new Portion(0.01, unmeasured));
        assertThat(mixed.water().value(WaterQuantity.NITRATE)).isEmpty();
        assertThat(mixed.water().value(WaterQuantity.SALINITY)).isPresent();
        assertThat(mixed.mixedWith(new Portion(0, KnownWater.pure(25))).water())
                .as("nothing of a water adds nothing")
                .isEqualTo(mixed.water());
    }

    @Test
    void phIsNotMixed() {
        assertThatThrownBy(() -> KnownWater.of(35, 25).with(WaterQuantity.PH, 8.1))
                .hasMessageContaining("pH is not kept when waters mix");
        assertThatThrownBy(() -> KnownWater.of(35, 25).with(WaterQuantity.CALCIUM, 420))
                .hasMessageContaining("calcium");
    }

    /** By hand: 0.3 of nine tenths and 0.4 of one tenth by volume are √(0.27² + 0.04²) = 0.273; 0 where none was stated. */
    @Test
    void errorsOfTheWatersCountByTheirShares() {
        Portion old = new Portion(0.9, KnownWater.of(35, 25).with(WaterQuantity.ALKALINITY, 3, 0.3));
        Portion fresh = new Portion(0.1, KnownWater.of(35, 25).with(WaterQuantity.ALKALINITY, 4, 0.4));
        KnownWater mixed = old.mixedWith(fresh).water();
        assertThat(mixed.error(WaterQuantity.ALKALINITY)).isCloseTo(0.27295, within(1e-5));
        assertThat(mixed.error(WaterQuantity.SALINITY)).isZero();
        assertThat(mixed.with(WaterQuantity.ALKALINITY, 3).error(WaterQuantity.ALKALINITY))
                .as("typed anew, nothing is said of its error")
                .isZero();
        assertThatThrownBy(() -> new KnownWater(Map.of(), Map.of(WaterQuantity.CALCIUM, 0.01)))
                .hasMessageContaining("calcium has an error and no value");
    }
}
