package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;

class WetBulbTest {
    private static final double PRESSURE = 101_325;

    /**
     * Stull 2011 states -1.0 to +0.65 K between his fit and the thermodynamic wet bulb, and prints 13.7 at 20 degC and
     * 50 %. Rooms of 10 to 35 degC: above, the constant psychrometer coefficient itself is 0.1 K off.
     */
    @Test
    void thePsychrometerAndStullsFitAgreeWithinHisError() {
        for (double air = 10; air <= 35; air += 5) {
            for (double humidity = 0.2; humidity < 0.95; humidity += 0.1) {
                double iterated = WetBulb.of(air, MoistAir.vapourPressure(air, humidity), PRESSURE, 0);
                assertThat(WetBulb.stull2011(air, humidity) - iterated).isBetween(-1.0, 0.65);
            }
        }
        assertThat(WetBulb.stull2011(20, 0.5)).isCloseTo(13.7, within(0.05));
        assertThat(WetBulb.of(20, MoistAir.vapourPressure(20, 0.5), PRESSURE, 0))
                .isCloseTo(13.7, within(0.2));
    }

    @Test
    void saturatedAirCoolsNothing() {
        double saturated = VapourPressure.ofPureWater(30);
        assertThat(WetBulb.of(30, saturated, PRESSURE, 0)).isCloseTo(30, within(1e-9));
        assertThat(WetBulb.of(30, saturated, PRESSURE, 35)).isBetween(30.0, 30.4);
    }

    @Test
    void theFoundTemperatureSatisfiesThePsychrometerEquation() {
        double vapour = MoistAir.vapourPressure(32, 0.4);
        double bulb = WetBulb.of(32, vapour, 95_000, 35);
        assertThat(VapourPressure.ofSeawater(bulb, 35) - 6.62e-4 * 95_000 * (32 - bulb))
                .isCloseTo(vapour, within(1e-6));
    }

    @Test
    void refusesAirBeyondSaturation() {
        assertThatThrownBy(() -> WetBulb.of(20, 3000, PRESSURE, 0)).hasMessageContaining("up to saturation");
        assertThatThrownBy(() -> WetBulb.stull2011(20, 50)).isInstanceOf(IllegalArgumentException.class);
    }
}
