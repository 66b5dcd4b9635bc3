package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;

class EvaporationTest {
    private static final double PRESSURE = 101_325;

    /**
     * ASHRAE Handbook, inch-pound form: 95 + 0.425 v Btu/(h ft^2 inHg), v in ft/min. 1 Btu/(h ft^2) = 3.154591 W/m^2, 1
     * inHg = 3386.389 Pa, 1 ft/min = 0.00508 m/s: 0.0885 + 0.0779 v. The printed SI coefficients are those to 0.6 %.
     */
    @Test
    void carriersCoefficientsAreTheInchPoundOnes() {
        double perPascal = 3.154591 / 3386.389;
        assertThat(CarrierEvaporation.heatPerPascal(1, 0)).isCloseTo(95 * perPascal, withinPercentage(0.6));
        double perSpeed = CarrierEvaporation.heatPerPascal(1, 1) - CarrierEvaporation.heatPerPascal(1, 0);
        assertThat(perSpeed).isCloseTo(0.425 / 0.00508 * perPascal, withinPercentage(0.6));
    }

    /** ASHRAE's short form for pools, 4e-5 kg/(s m^2 kPa) at 0.1 m/s, printed to one digit. */
    @Test
    void carriersEquationGivesTheShortFormForPools() {
        double flux = CarrierEvaporation.massFlux(1, 0.1, 3000, 2000, 2.33e6);
        assertThat(flux).isCloseTo(4e-5, withinPercentage(5));
    }

    /** Cold water in a hot damp room: dew falls on it and the heat flows in. */
    @Test
    void vapourCondensesOnWaterColderThanTheDewPoint() {
        double sea = VapourPressure.ofSeawater(15, 35); // 1674 Pa (TEOS-10)
        double air = MoistAir.vapourPressure(30, 0.8); // 3398 Pa
        double latent = LatentHeat.ofEvaporation(15);
        assertThat(CarrierEvaporation.massFlux(0.5, 0, sea, air, latent)).isNegative();
        assertThat(ShahEvaporation.massFlux(15, sea, 30, air, PRESSURE))
                .isCloseTo(5e-5 * (1673.8 - 3397.5) / 3600, withinPercentage(0.1));
        assertThat(MassTransferEvaporation.massFlux(15, sea, 30, air, PRESSURE, 0.2))
                .isNegative();
        // 2 W/(m^2 K) times -15 K, whatever the condensation carries
        assertThat(SurfaceConvection.heatFlux(-70, 15, 30, sea, air)).isCloseTo(-30, within(1e-12));
    }

    @Test
    void nothingEvaporatesIntoAirAsMoistAsTheWater() {
        assertThat(CarrierEvaporation.massFlux(1, 1, 3110, 3110, 2.44e6)).isZero();
        assertThat(SurfaceConvection.heatFlux(0, 25, 23, 3110, 3110)).isCloseTo(4, within(1e-12));
    }

    /** Air over cold water is the heavier: nothing rises, E2 alone remains. */
    @Test
    void shahLeavesOnlyTheRoomsOwnAirMovementOverHeavyAir() {
        double sea = VapourPressure.ofSeawater(20, 35);
        double air = MoistAir.vapourPressure(35, 0.2);
        double flux = ShahEvaporation.massFlux(20, sea, 35, air, PRESSURE);
        assertThat(flux)
                .isCloseTo(5e-5 * (sea - air) / 3600, withinPercentage(1e-9))
                .isPositive();
    }

    /**
     * Shah's constants in inch-pound units, 290 lb/(h ft^2) per (lb/ft^3)^(4/3) and 0.0346 lb/(h ft^2 inHg), converted:
     * 1 lb/ft^2 = 4.882428 kg/m^2, 1 lb/ft^3 = 16.01846 kg/m^3. Both from memory of the 2014 paper.
     */
    @Test
    void shahsConstantsAreTheInchPoundOnes() {
        double overWater = MoistAir.dryAirDensity(28, 3700, PRESSURE);
        double lift = MoistAir.dryAirDensity(22, 1300, PRESSURE) - overWater; // 0.052 kg/m^3
        double wetter = MoistAir.humidityRatio(3700, PRESSURE) - MoistAir.humidityRatio(1300, PRESSURE);
        double natural = 3600 * ShahEvaporation.massFlux(28, 3700, 22, 1300, PRESSURE);
        assertThat(natural / (overWater * Math.cbrt(lift) * wetter))
                .isCloseTo(290 * 4.882428 / Math.pow(16.01846, 4.0 / 3), withinPercentage(0.5));
        double forced = 3600 * ShahEvaporation.massFlux(20, 2000, 35, 1000, PRESSURE) / 1000;
        assertThat(forced).isCloseTo(0.0346 * 4.882428 / 3386.389, withinPercentage(0.5));
    }

    /** Bowen 1926: ratio of sensible to latent heat 0.61 to 0.66 hPa/K; the psychrometric constant is 66.8 Pa/K. */
    @Test
    void convectionStandsToEvaporationAsBowensRatio() {
        double flux = SurfaceConvection.heatFlux(100, 26, 22, 3300, 1300);
        double perKelvin = flux / 100 * 2000 / 4;
        assertThat(perKelvin).isBetween(61.0, 66.8);
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> CarrierEvaporation.massFlux(50, 0, 3000, 1000, 2.4e6))
                .hasMessageContaining("activity factor 50.0");
        assertThatThrownBy(() -> CarrierEvaporation.massFlux(1, 0, 3000, 1000, 2440))
                .hasMessageContaining("latent heat of evaporation 2440.0 J/kg");
        assertThatThrownBy(() -> CarrierEvaporation.massFlux(1, 0, Double.NaN, 1000, 2.4e6))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SurfaceConvection.heatFlux(100, 25, 20, Double.NaN, 1000))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
