package org.tidewright.seawater.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class ThermalConductivityReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read(
            ThermalConductivityReferenceTest.class, "/reference/transport/thermal_conductivity.csv");

    /** Jamieson & Tudhope 1970 typed a second time, in Python; 2e-8 is another factor between the salinities. */
    @Test
    void equalsAnotherTypingOverTheWholeGrid() {
        for (var row : TABLE.rows()) {
            double got = ThermalConductivity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(ThermalConductivity.class, "ofSeawater")
                    .relative(row, "thermal_conductivity_jamieson_tudhope_w_m_k", got, 2e-8);
        }
    }

    /** IAPWS R15-11 and G14-15 by iapws 1.5.3: another law, 3.3 % off in the cold. */
    @Test
    void liesAsNearToIapwsAsTheTwoLawsLie() {
        for (var row : TABLE.rows()) {
            double got = ThermalConductivity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(ThermalConductivity.class, "ofSeawater")
                    .relative(row, "thermal_conductivity_iapws_w_m_k", got, 3.3e-2);
        }
    }

    /** IAPWS R15-11, from memory: 0.6077 W/(m K) for water of 298.15 K and 998 kg/m3; 1 % lies between the laws. */
    @Test
    void withoutSaltItIsThatOfPureWater() {
        assertThat(ThermalConductivity.ofSeawater(25, 0)).isCloseTo(0.6077, within(0.006));
    }

    @Test
    void kelvinAndMilligramsAreRefused() {
        assertThatThrownBy(() -> ThermalConductivity.ofSeawater(298.15, 35)).hasMessageContaining("kelvin");
        assertThatThrownBy(() -> ThermalConductivity.ofSeawater(25, 35_000)).hasMessageContaining("mg/kg");
    }
}
