package org.tidewright.husbandry.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.plan.model.UnitSystem;

class MeasureTest {
    /** Factors from NIST SP 811, appendix B.8: foot, US gallon, pound, pound-force per square foot, degree Fahrenheit. */
    @ParameterizedTest
    @CsvSource({
        "VOLUME, 3.785411784e-3, 1",
        "LEVEL, 0.0254, 1",
        "THICKNESS, 0.0254, 1",
        "LENGTH, 0.0254, 1",
        "TEMPERATURE, 100, 212",
        "TEMPERATURE_DIFFERENCE, 5, 9",
        "MASS, 0.45359237, 1",
        "LOAD, 47.88026, 1",
        "FORCE, 4.448222, 1",
        "FLOW, 1.05150327e-6, 1",
        "SHARE_PER_LENGTH, 0.0328083990, 1"
    })
    void inUsUnitsAQuantityIsWhatTheHandbookSays(Measure measure, double coherent, double shown) {
        assertThat(measure.unit(UnitSystem.US).shown(coherent)).isCloseTo(shown, within(1e-6 * shown));
    }

    /** One litre, one bar of a hundred kilopascals, one gram per cubic metre, by the SI brochure's prefixes. */
    @Test
    void inMetricUnitsAQuantityIsItsDecimalMultiple() {
        assertThat(Measure.VOLUME.unit(UnitSystem.METRIC).shown(1e-3)).isEqualTo(1);
        assertThat(Measure.LOAD.unit(UnitSystem.METRIC).shown(1e5)).isEqualTo(100);
        assertThat(Measure.CONCENTRATION.unit(UnitSystem.METRIC).shown(1e-3)).isEqualTo(1);
        assertThat(Measure.ALKALINITY.unit(UnitSystem.METRIC).shown(1))
                .as("1 meq/L in dKH: 28.0387 mg of CaO over 10")
                .isCloseTo(2.80387, within(1e-5));
        assertThat(Measure.PARTIAL_PRESSURE.unit(UnitSystem.METRIC).shown(420e-6))
                .isCloseTo(420, within(1e-9));
        assertThat(Measure.SHARE_OF_AIR.unit(UnitSystem.METRIC).shown(1e-3)).isCloseTo(1000, within(1e-9));
        assertThat(Measure.ENERGY.unit(UnitSystem.METRIC).shown(3.6e6)).isCloseTo(1000, within(1e-9));
        assertThat(Measure.TRANSFER_VELOCITY.unit(UnitSystem.METRIC).shown(1 / 3600.0))
                .isCloseTo(100, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void everySuffixIsOneThatCanEndAName(Measure measure) {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(measure.unit(system).suffix()).matches("([a-z][a-z0-9_]*)?");
        }
    }
}
