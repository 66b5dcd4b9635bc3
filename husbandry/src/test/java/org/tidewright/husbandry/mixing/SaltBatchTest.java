package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.mixing.WaterChangeTest.text;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.mixing.SaltMix.Filled;
import org.tidewright.husbandry.mixing.SaltMix.Made;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.SeededCases;

class SaltBatchTest {
    private static final SaltMix TENTH_WATER = new SaltMix(0.9, 0.03, Basis.FROM_MEMORY, "worked example");

    private static SaltBatch of(double litres, Filled filled, SaltMix mix) {
        return new SaltBatch(35, 25, litres * 1e-3, filled, mix);
    }

    /** One litre at S 35, 25 °C with a tenth of bound water, worked by another script; 0.1 % as it says of itself. */
    @Test
    void aLitreTakesTheSaltOfTheWorkedExample() {
        SaltBatch litre = of(1, Filled.SALT_WATER, TENTH_WATER);
        assertThat(1000 * litre.saltMass()).isCloseTo(35.99, within(0.036));
        assertThat(1000 * litre.mixMass()).isCloseTo(39.98, within(0.040));
        assertThat(1000 * litre.pureWater()).isCloseTo(0.9863, within(0.001));
        SaltBatch ofPure = of(1, Filled.PURE_WATER, TENTH_WATER);
        assertThat(1000 * ofPure.mixMass()).isCloseTo(40.54, within(0.041));
        assertThat(1000 * ofPure.saltWater()).isCloseTo(1.014, within(0.001));
        // A change of a quarter of 400 L: 3.998 kg of mix.
        assertThat(of(100, Filled.SALT_WATER, TENTH_WATER).mixMass()).isCloseTo(3.998, within(0.004));
    }

    /** By hand: 1000 g in 25 L of pure water at 25 °C that came to 35: 25.926 kg × 35.165 g/kg = 911.7 g of salt. */
    @Test
    void aBatchTeachesTheYield() {
        Made made = new Made(1.0, 0.005, 0.025, 0.00025, Filled.PURE_WATER, 25, 35, 0.4);
        SaltMix learned = SaltMix.learned(made);
        assertThat(learned.yield()).isCloseTo(0.9117, within(0.0001));
        // √((0.4/35)² + 0.01² + 0.005²) = 1.6 %.
        assertThat(learned.standardError() / learned.yield()).isCloseTo(0.0160, within(0.0001));
        assertThat(learned.basis()).isEqualTo(Basis.YOUR_LOG);
    }

    @Test
    void theNextBatchOfALearnedMixComesToItsSalinity() {
        SeededCases.check(draw -> {
            SaltMix mix = new SaltMix(draw.between(0.8, 1), 0.02, Basis.YOUR_LOG, "drawn");
            Filled filled = draw.oneOf(Filled.values());
            SaltBatch batch =
                    new SaltBatch(draw.between(20, 40), draw.between(15, 28), draw.between(0.001, 0.5), filled, mix);
            Made made =
                    new Made(batch.mixMass(), 0, batch.volume(), 0, filled, batch.temperature(), batch.salinity(), 0.1);
            assertThat(SaltMix.learned(made).yield()).isCloseTo(mix.yield(), within(1e-12));
        });
    }

    @Test
    void pureAndSaltWaterAreTwoSidesOfOneBatch() {
        SeededCases.check(draw -> {
            SaltBatch batch = of(draw.between(1, 500), Filled.SALT_WATER, TENTH_WATER);
            SaltBatch other = of(1000 * batch.pureWater(), Filled.PURE_WATER, TENTH_WATER);
            assertThat(other.mixMass()).isCloseTo(batch.mixMass(), within(1e-9 * batch.mixMass()));
            assertThat(other.saltWater()).isCloseTo(batch.volume(), within(1e-12));
        });
    }

    @Test
    void theErrorOfTheMassIsThatOfTheYield() {
        SaltBatch batch = of(100, Filled.PURE_WATER, TENTH_WATER);
        double less = of(100, Filled.PURE_WATER, new SaltMix(0.9005, 0, Basis.FROM_MEMORY, ""))
                .mixMass();
        assertThat(batch.mixMassError()).isCloseTo((batch.mixMass() - less) / 0.0005 * 0.03, within(1e-3));
    }

    @Test
    void itIsToldWithItsDoubt() {
        Advice advice = of(100, Filled.SALT_WATER, SaltMix.USUAL).advice();
        assertThat(text(advice.lead()))
                .startsWith("Weigh 3998 ± 133 g of dry mix for 98.6 L of pure water, stir in nine tenths")
                .endsWith("together they make 100 L of salinity 35.");
        assertThat(text(advice.remarks().get(0))).contains("35 ± 1").endsWith("the next is surer.");
        assertThat(advice.cautions()).anySatisfy(caution -> assertThat(caution).contains("never water onto salt"));
        assertThatThrownBy(() -> SaltMix.learned(new Made(100, 0, 0.025, 0, Filled.PURE_WATER, 25, 35, 0.4)))
                .hasMessageContaining("grams");
    }
}
