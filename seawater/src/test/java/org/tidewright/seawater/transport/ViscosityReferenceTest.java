package org.tidewright.seawater.transport;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class ViscosityReferenceTest {
    private static ReferenceTable table(String name) {
        return ReferenceTable.read(ViscosityReferenceTest.class, "/reference/transport/" + name);
    }

    /** Sharqawy et al. 2010 with its printed coefficients typed a second time, in Python. */
    @Test
    void equalsAnotherTypingOverTheWholeGrid() {
        for (var row : table("viscosity.csv").rows()) {
            double got = Viscosity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(Viscosity.class, "ofSeawater")
                    .relative(row, "viscosity_seawater_sharqawy_printed_pa_s", got, 1e-12);
        }
    }

    /** Millero 1974, another law: 1.4 % is the distance between the two. */
    @Test
    void liesNearMillero1974() {
        for (var row : table("viscosity.csv").rows()) {
            double got = Viscosity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(Viscosity.class, "ofSeawater")
                    .relative(row, "viscosity_seawater_millero_1974_pa_s", got, 0.014);
        }
        // printed check value of Millero 1974
        for (var row : table("published.csv").rows()) {
            double got = Viscosity.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(Viscosity.class, "ofSeawater").absolute(row, "printed_value", got, row.number("tolerance"));
        }
    }

    /** IAPWS R12-08 by iapws 1.5.3; the source states 0.05 % for its fit to it. */
    @Test
    void ofPureWaterLiesNearIapws() {
        for (var row : table("viscosity.csv").rows()) {
            double got = Viscosity.ofPureWater(row.number("temperature_c"));
            Validation.of(Viscosity.class, "ofPureWater").relative(row, "viscosity_water_iapws_pa_s", got, 5e-4);
        }
    }
}
