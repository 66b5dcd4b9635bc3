package org.tidewright.seawater.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MoistAirTest {
    @Test
    void relativeHumidityAndVapourPressureAreInverse() {
        for (double temperature : new double[] {-5, 0, 12.5, 23, 40}) {
            for (double humidity : new double[] {0, 0.01, 0.5, 1}) {
                double pressure = MoistAir.vapourPressure(temperature, humidity);
                assertThat(MoistAir.relativeHumidity(temperature, pressure)).isCloseTo(humidity, within(1e-15));
            }
        }
    }

    /** IAPWS R6-95, table 8 (275 K): 698.451 Pa; half of it at half saturation. Wagner & Pruss lie within 2.3e-4. */
    @Test
    void halfSaturatedAirHoldsHalfTheSaturationPressure() {
        assertThat(MoistAir.vapourPressure(1.85, 0.5)).isCloseTo(698.451167 / 2, within(0.08));
    }

    /** Saturated air at 20 degC and one atmosphere holds 14.7 g/kg and 17.3 g/m3: psychrometric tables, from memory. */
    @Test
    void saturatedRoomAirHoldsWhatTheTablesSay() {
        double pressure = MoistAir.vapourPressure(20, 1);
        assertThat(MoistAir.humidityRatio(pressure, 101325)).isCloseTo(0.0147, within(5e-5));
        assertThat(MoistAir.vapourDensity(20, pressure)).isCloseTo(0.0173, within(5e-5));
    }

    /** Dry air at 0 degC and one atmosphere weighs 1.2929 kg/m3 (CRC Handbook, from memory; ideal gas is 0.05 % below it). */
    @Test
    void dryAirWeighsWhatTheHandbookSays() {
        assertThat(MoistAir.dryAirDensity(0, 0, 101325)).isCloseTo(1.2929, within(7e-4));
    }

    @Test
    void vapourAndDryAirDensityRelateAsTheHumidityRatio() {
        double ratio = MoistAir.vapourDensity(25, 1600) / MoistAir.dryAirDensity(25, 1600, 101325);
        assertThat(ratio).isCloseTo(MoistAir.humidityRatio(1600, 101325), within(1e-15));
    }

    @Test
    void refusesPercentAndPressureBeyondTheTotal() {
        assertThatThrownBy(() -> MoistAir.vapourPressure(23, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("relative humidity 50.0 is outside 0.0 to 1.0");
        assertThatThrownBy(() -> MoistAir.humidityRatio(101325, 101325)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MoistAir.humidityRatio(Double.NaN, 101325))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
