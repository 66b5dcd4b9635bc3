package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

/** The solver for a model against the system solved once, which is held to other codes. */
class RepeatedCarbonateTest {
    @Test
    void oneWaterAfterAnotherHasTheStateItHasAlone() {
        RepeatedCarbonate repeated = new RepeatedCarbonate(BoronRatio.UPPSTROM_1974, CarbonicAcid.LUEKER_2000);
        SeededCases.check(2000, draw -> {
            double temperature = draw.between(5, 35);
            double salinity = draw.between(10, 40);
            double calcium = draw.between(0.005, 0.02);
            double phosphate = draw.between(0, 1e-5);
            double ammonia = draw.between(0, 1e-4);
            double alkalinity = draw.between(5e-4, 6e-3);
            double carbon = alkalinity * draw.between(0.3, 1.3);
            CarbonateState alone = CarbonateSystem.at(
                            temperature,
                            salinity,
                            TotalConcentrations.ofSeawater(salinity, BoronRatio.UPPSTROM_1974)
                                    .withCalcium(calcium)
                                    .withNutrients(phosphate, 0, ammonia))
                    .fromAlkalinityAndCarbon(alkalinity, carbon);
            CarbonateState after =
                    repeated.solve(temperature, salinity, calcium, phosphate, ammonia, alkalinity, carbon);
            assertThat(after.ph()).isCloseTo(alone.ph(), within(1e-12));
            assertThat(after.carbonDioxide()).isCloseTo(alone.carbonDioxide(), within(1e-12 * alone.carbonDioxide()));
            assertThat(after.aragoniteSaturation())
                    .isCloseTo(alone.aragoniteSaturation(), within(1e-11 * alone.aragoniteSaturation()));
            assertThat(after.unionisedShare()).isCloseTo(alone.unionisedShare(), within(1e-12));
        });
    }

    @Test
    void refusesWhatTheSystemRefuses() {
        RepeatedCarbonate repeated = new RepeatedCarbonate(BoronRatio.UPPSTROM_1974, CarbonicAcid.LUEKER_2000);
        assertThatThrownBy(() -> repeated.solve(25, 35, 0.01, 0, 0, 2300, 2e-3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("alkalinity");
        assertThatThrownBy(() -> repeated.solve(25, 35, 0.01, 0, 0, 2.3e-3, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("inorganic carbon");
    }
}
