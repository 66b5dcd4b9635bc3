package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class HydrometerTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(HydrometerTest.class, "/reference/salinity/specific_gravity.csv");

    /** At its own temperature the glass has the volume it was marked with: EOS-80 typed a second time, in Python. */
    @Test
    void atItsOwnTemperatureItShowsTheSpecificGravity() {
        Hydrometer hydrometer = Hydrometer.ofGlass(25, 25);
        for (var row : TABLE.rows()) {
            Validation.of(Hydrometer.class, "reading")
                    .relative(row, "sg_25c_25c", hydrometer.reading(row.number("practical_salinity"), 25), 1e-12);
        }
    }

    /** Without expansion it is a ratio of densities, wherever it floats: the same table. */
    @Test
    void oneThatDoesNotGrowShowsTheRatioOfDensities() {
        Hydrometer rigid = new Hydrometer(20, 20, 0);
        for (var row : TABLE.rows()) {
            Validation.of(Hydrometer.class, "reading")
                    .relative(
                            row,
                            "sg_t_over_20c",
                            rigid.reading(row.number("practical_salinity"), row.number("temperature_c")),
                            1e-12);
        }
    }

    /**
     * By hand for S 35: from 25 to 26 °C water loses 0.3084 kg/m³ (TEOS-10 by GSW 3.6.16), 0.0003093 of the 997.05 kg/m³ of
     * pure water at 25 °C; the glass gives 25e-6 × 1.0264 back.
     */
    @Test
    void aDegreeTooWarmItShowsTooLittleByHand() {
        Hydrometer hydrometer = Hydrometer.ofGlass(25, 25);
        assertThat(hydrometer.reading(35, 25) - hydrometer.reading(35, 26))
                .isCloseTo(0.0003093 - 0.0000257, within(1e-6));
    }

    @Test
    void everySalinityComesBackFromItsReading() {
        SeededCases.check(draw -> {
            Hydrometer hydrometer = new Hydrometer(draw.between(4, 30), draw.between(4, 30), draw.between(0, 300e-6));
            double salinity = draw.between(0.1, 60);
            double water = draw.between(0, 40);
            assertThat(hydrometer.practicalSalinity(hydrometer.reading(salinity, water), water))
                    .isCloseTo(salinity, within(1e-9));
        });
    }

    @Test
    void anExpansionInPerCentIsRefused() {
        assertThatThrownBy(() -> new Hydrometer(25, 25, 0.0025))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expansion of a hydrometer");
    }
}
