package org.tidewright.seawater.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class OxygenSaturationTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(OxygenSaturationTest.class, "/reference/gas/oxygen_solubility.csv");

    /** Garcia & Gordon 1992 by GSW 3.6.16: what it says water holds under one atmosphere is saturation. */
    @Test
    void whatTheReferenceSaysWaterHoldsIsSaturation() {
        for (var row : TABLE.rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            double byVolume = row.number("o2_garcia_gordon_bk_eos80_mg_l");
            double byMass = row.number("o2_garcia_gordon_bk_umol_kg");
            assertThat(OxygenSaturation.ofMassPerVolume(byVolume, temperature, salinity, 101325))
                    .as(row.toString())
                    .isCloseTo(1, within(1e-12));
            assertThat(OxygenSaturation.ofPerMass(byMass, temperature, salinity, 101325))
                    .as(row.toString())
                    .isCloseTo(1, within(1e-12));
        }
    }

    /**
     * By hand for 25 degC, S 35: 6.771 mg/L at sea level; at 84.5 kPa, near 1500 m in the standard atmosphere, the
     * factor is (84500 - 3110.6) / (101325 - 3110.6) = 0.82869, so that 5.611 mg/L is saturation there.
     */
    @Test
    void highUpWaterIsSaturatedWithLess() {
        assertThat(OxygenSaturation.ofMassPerVolume(5.611, 25, 35, 84_500)).isCloseTo(1, within(2e-4));
        assertThat(OxygenSaturation.ofMassPerVolume(5.611, 25, 35, 101_325)).isCloseTo(0.82869, within(2e-4));
        assertThat(OxygenSaturation.toMassPerVolume(0.5, 25, 35, 84_500)).isCloseTo(5.611 / 2, within(1e-3));
    }

    @Test
    void everyShareComesBack() {
        SeededCases.check(draw -> {
            double share = draw.between(0, 3);
            double temperature = draw.between(0, 40);
            double salinity = draw.between(0, 45);
            double pressure = draw.between(50_000, 110_000);
            double byVolume = OxygenSaturation.toMassPerVolume(share, temperature, salinity, pressure);
            double byMass = OxygenSaturation.toPerMass(share, temperature, salinity, pressure);
            assertThat(OxygenSaturation.ofMassPerVolume(byVolume, temperature, salinity, pressure))
                    .isCloseTo(share, within(1e-14));
            assertThat(OxygenSaturation.ofPerMass(byMass, temperature, salinity, pressure))
                    .isCloseTo(share, within(1e-14));
        });
    }

    @Test
    void perCentAndTheOtherUnitAreRefused() {
        assertThatThrownBy(() -> OxygenSaturation.toMassPerVolume(95, 25, 35, 101325))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("per cent");
        assertThatThrownBy(() -> OxygenSaturation.ofMassPerVolume(207, 25, 35, 101325))
                .hasMessageContaining("umol/kg");
        assertThatThrownBy(() -> OxygenSaturation.ofPerMass(Double.NaN, 25, 35, 101325))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OxygenSaturation.toPerMass(1, 25, 35, 1013.25)).hasMessageContaining("air pressure");
    }
}
