package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class NaturalConvectionTest {
    /** Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 9.2 (glass fire screen); from memory. */
    @Test
    void aHotGlassScreenHasTheNusseltNumberOfTheTextbook() {
        assertThat(NaturalConvection.nusseltOfVerticalWall(1.813e9, 0.690)).isCloseTo(147, within(0.5));
    }

    /** Incropera and DeWitt, table A.4, air at 300 K: 15.89e-6 m^2/s, 26.3e-3 W/(m K), Pr 0.707; the laws state 1 %. */
    @Test
    void airHasThePropertiesOfTheTable() {
        assertThat(RoomAir.kinematicViscosity(26.85)).isCloseTo(15.89e-6, withinPercentage(1));
        assertThat(RoomAir.conductivity(26.85)).isCloseTo(26.3e-3, withinPercentage(1));
        assertThat(RoomAir.PRANDTL).isCloseTo(0.707, withinPercentage(1));
    }

    @Test
    void thePlateCorrelationsMeetWithoutAStep() {
        // 0.54 Ra^(1/4) = 0.14 Ra^(1/3) where Ra = (0.54 / 0.14)^12
        double meeting = Math.pow(0.54 / 0.14, 12);
        assertThat(meeting).isCloseTo(1.08e7, withinPercentage(1));
        double below = NaturalConvection.nusseltOfStirringPlate(meeting * (1 - 1e-9));
        double above = NaturalConvection.nusseltOfStirringPlate(meeting * (1 + 1e-9));
        assertThat(above).isCloseTo(below, within(1e-6));
        assertThat(NaturalConvection.nusseltOfStirringPlate(1e6)).isCloseTo(0.54 * Math.sqrt(1000), within(1e-12));
        assertThat(NaturalConvection.nusseltOfStirringPlate(1e9)).isCloseTo(140, within(1e-9));
    }

    @Test
    void warmAndColdWallsConvectAlike() {
        double warm = NaturalConvection.verticalWall(25, 20, 0.5);
        double cold = NaturalConvection.verticalWall(20, 25, 0.5);
        assertThat(warm).isCloseTo(cold, within(1e-12));
    }

    @Test
    void layeredAirCarriesHalfOfWhatStirredAirDoes() {
        double stirred = NaturalConvection.stirringPlate(24, 21, 0.05); // laminar: Ra 5e4
        assertThat(NaturalConvection.layeringPlate(24, 21, 0.05)).isCloseTo(stirred / 2, within(1e-12));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> NaturalConvection.verticalWall(298, 20, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NaturalConvection.verticalWall(25, 20, 0))
                .hasMessageContaining("length of the surface 0.0 m is outside");
        assertThatThrownBy(() -> NaturalConvection.verticalWall(Double.NaN, 20, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
