package org.tidewright.seawater.density;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class DensityReferenceTest {
    private static ReferenceTable table(String name) {
        return ReferenceTable.read(DensityReferenceTest.class, "/reference/density/" + name);
    }

    /** UNESCO 1983 (Tech. Pap. Mar. Sci. 44) check values; the IAPWS-08 one is another law. */
    @Test
    void meetsThePublishedCheckValues() {
        for (var row : table("published.csv").rows()) {
            // IAPWS-08 states its standard seawater as 35.16504 g/kg, which is practical salinity 35
            double salinity = row.has("practical_salinity") ? row.number("practical_salinity") : 35;
            double got = Density.ofSeawater(row.number("temperature_c"), salinity);
            Validation.of(Density.class, "ofSeawater").absolute(row, "printed_value", got, row.number("tolerance"));
        }
    }

    /** Millero & Poisson 1981 typed a second time, in Python, which agrees with python-seawater 3.3.5. */
    @Test
    void equalsAnotherTypingOfEos80OverTheWholeGrid() {
        for (var row : table("eos80.csv").rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            Validation.of(Density.class, "ofSeawater")
                    .relative(row, "density_kg_m3", Density.ofSeawater(temperature, salinity), 1e-12);
            Validation.of(Density.class, "ofPureWater")
                    .relative(row, "density_pure_water_kg_m3", Density.ofPureWater(temperature), 1e-12);
            Validation.of(Density.class, "ofSeawater")
                    .relative(row, "density_pure_water_kg_m3", Density.ofSeawater(temperature, 0), 1e-12);
        }
    }

    /** TEOS-10 by GSW 3.6.16: another equation of state, 0.0073 kg/m3 being the distance between the two. */
    @Test
    void liesAsNearToTeos10AsEos80Does() {
        for (var row : table("teos10.csv").rows()) {
            double got = Density.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(Density.class, "ofSeawater").absolute(row, "density_gibbs_kg_m3", got, 7.3e-3);
        }
    }
}
