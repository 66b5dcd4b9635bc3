package org.tidewright.seawater.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.transport.Viscosity;

class BoundsTest {
    @Test
    void saysTheValueItsUnitTheRangeAndTheLikelySlip() {
        assertThatThrownBy(() -> Bounds.waterTemperature(298.15))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("water temperature 298.15 degC is outside -10.0 to 60.0 degC;"
                        + " is it in kelvin or fahrenheit?");
        assertThatThrownBy(() -> Bounds.within(3, "m", 0, 2, "depth"))
                .hasMessage("depth 3.0 m is outside 0.0 to 2.0 m");
        assertThatThrownBy(() -> Bounds.positive(0, "m", "bore"))
                .hasMessage("bore is 0.0 m; it must be greater than 0 and finite");
        assertThatThrownBy(() -> Bounds.notNegative(-1, "m^3/s", "flow"))
                .hasMessage("flow is -1.0 m^3/s; it must be 0 or more and finite");
    }

    @Test
    void aNumberWithoutUnitIsWrittenWithoutOne() {
        assertThatThrownBy(() -> Bounds.within(50, "1", 0, 1, "relative humidity"))
                .hasMessage("relative humidity 50.0 is outside 0.0 to 1.0");
        assertThat(Bounds.refusal(2, "1", "share", "less than 1")).hasMessage("share is 2.0; it must be less than 1");
    }

    @Test
    void everyRefusalRefusesNotANumber() {
        assertRefused(() -> Bounds.within(Double.NaN, "m", 0, 1, "depth"));
        assertRefused(() -> Bounds.positive(Double.NaN, "m", "depth"));
        assertRefused(() -> Bounds.notNegative(Double.NaN, "m", "depth"));
        assertRefused(() -> Bounds.finite(Double.NaN, "m", "depth"));
        assertRefused(() -> Bounds.number(Double.NaN, "m", "depth"));
    }

    @Test
    void infinityIsANumberButNotFinite() {
        assertThat(Bounds.number(Double.POSITIVE_INFINITY, "m", "depth")).isInfinite();
        assertRefused(() -> Bounds.finite(Double.POSITIVE_INFINITY, "m", "depth"));
        assertRefused(() -> Bounds.positive(Double.POSITIVE_INFINITY, "m", "depth"));
        assertRefused(() -> Bounds.notNegative(Double.POSITIVE_INFINITY, "m", "depth"));
    }

    @Test
    void aValueThatPassesIsHandedBack() {
        assertThat(Bounds.within(2, "m", 0, 2, "depth")).isEqualTo(2);
        assertThat(Bounds.positive(Double.MIN_VALUE, "m", "depth")).isEqualTo(Double.MIN_VALUE);
        assertThat(Bounds.notNegative(0, "m", "depth")).isZero();
        assertThat(Bounds.finite(-3, "m", "depth")).isEqualTo(-3);
    }

    @Test
    void theLimitsThemselvesAreAllowed() {
        assertThatNoException().isThrownBy(() -> Bounds.practicalSalinity(0));
        assertThatNoException().isThrownBy(() -> Bounds.practicalSalinity(Bounds.SALTIEST_WATER));
    }

    @Test
    void everySeawaterFunctionRefusesKelvinMilligramsAndNotANumber() {
        assertRefused(() -> Density.ofSeawater(298.15, 35));
        assertRefused(() -> Density.ofSeawater(25, 35_000));
        assertRefused(() -> Density.ofPureWater(Double.NaN));
        assertRefused(() -> SpecificHeat.ofSeawater(298.15, 35));
        assertRefused(() -> SpecificHeat.ofSeawater(25, Double.NaN));
        assertRefused(() -> LatentHeat.ofEvaporation(298.15));
        assertRefused(() -> VapourPressure.ofPureWater(298.15));
        assertRefused(() -> VapourPressure.ofSeawater(25, -0.1));
        assertRefused(() -> Viscosity.ofSeawater(25, 35_000));
        assertRefused(() -> Viscosity.ofPureWater(Double.NEGATIVE_INFINITY));
        assertRefused(() -> AbsoluteSalinity.fromPractical(-1));
        assertRefused(() -> AbsoluteSalinity.toPractical(Double.NaN));
    }

    private static void assertRefused(Runnable call) {
        assertThatThrownBy(call::run).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aFittedRangeCoversItsEdgesAndNoMore() {
        assertThat(Density.FIT.covers(-2, 0)).isTrue();
        assertThat(Density.FIT.covers(40, 42)).isTrue();
        assertThat(Density.FIT.covers(40.1, 35)).isFalse();
        assertThat(Density.FIT.covers(-2.1, 35)).isFalse();
        assertThat(Density.FIT.covers(25, 42.1)).isFalse();
        assertThat(Density.FIT.covers(Double.NaN, 35)).isFalse();
    }
}
