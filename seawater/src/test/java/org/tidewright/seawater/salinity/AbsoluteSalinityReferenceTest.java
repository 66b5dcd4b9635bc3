package org.tidewright.seawater.salinity;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class AbsoluteSalinityReferenceTest {
    private static ReferenceTable table(String name) {
        return ReferenceTable.read(AbsoluteSalinityReferenceTest.class, "/reference/salinity/" + name);
    }

    /** TEOS-10 toolbox check value of the reference salinity. */
    @Test
    void meetsThePublishedCheckValue() {
        // printed beside the check value: practical salinity 34.5487
        var row = table("published.csv").row("id", "p042");
        Validation.of(AbsoluteSalinity.class, "fromPractical")
                .absolute(row, "printed_value", AbsoluteSalinity.fromPractical(34.5487), row.number("tolerance"));
    }

    /** Reference composition (Millero et al. 2008) as GSW 3.6.16 has it. */
    @Test
    void equalsTheReferenceCompositionBothWays() {
        for (var row : table("teos10.csv").rows()) {
            double practical = row.number("practical_salinity");
            double absolute = row.number("absolute_salinity_g_kg");
            Validation.of(AbsoluteSalinity.class, "fromPractical")
                    .relative(row, "absolute_salinity_g_kg", AbsoluteSalinity.fromPractical(practical), 1e-12);
            Validation.of(AbsoluteSalinity.class, "toPractical")
                    .relative(row, "practical_salinity", AbsoluteSalinity.toPractical(absolute), 1e-12);
        }
    }

    /** Salt per volume from TEOS-10's own density and absolute salinity: 0.0073 kg/m3 of density is 7.3e-6 relative. */
    @Test
    void saltPerVolumeIsDensityTimesAbsoluteSalinity() {
        for (var row : table("teos10.csv").rows()) {
            double salt = AbsoluteSalinity.saltPerVolume(row.number("temperature_c"), row.number("practical_salinity"));
            double density = 1000 * salt / row.number("absolute_salinity_g_kg");
            Validation.of(AbsoluteSalinity.class, "saltPerVolume")
                    .absolute(row, "density_gibbs_kg_m3", density, 7.3e-3);
        }
    }
}
