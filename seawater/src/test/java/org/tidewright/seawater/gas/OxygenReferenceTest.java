package org.tidewright.seawater.gas;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class OxygenReferenceTest {
    private static ReferenceTable table(String name) {
        return ReferenceTable.read(OxygenReferenceTest.class, "/reference/gas/" + name);
    }

    /** Garcia & Gordon 1992's check value; their combined fit and Benson & Krause's table are other laws. */
    @Test
    void meetsThePublishedCheckValues() {
        for (var row : table("published.csv").rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            double got = row.text("unit").equals("mg/L")
                    ? OxygenSolubility.massPerVolume(temperature, salinity)
                    : OxygenSolubility.perMass(temperature, salinity);
            Validation.of(OxygenSolubility.class, "perMass")
                    .absolute(row, "printed_value", got, row.number("tolerance"));
        }
    }

    /** Garcia & Gordon 1992 by GSW 3.6.16, and the same by volume with EOS-80 density. */
    @Test
    void solubilityEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : table("oxygen_solubility.csv").rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            double massPerVolume = OxygenSolubility.massPerVolume(temperature, salinity);
            Validation.of(OxygenSolubility.class, "perMass")
                    .relative(
                            row, "o2_garcia_gordon_bk_umol_kg", OxygenSolubility.perMass(temperature, salinity), 1e-12);
            Validation.of(OxygenSolubility.class, "massPerVolume")
                    .relative(row, "o2_garcia_gordon_bk_eos80_mg_l", massPerVolume, 1e-12);
            Validation.of(OxygenSolubility.class, "perVolume")
                    .relative(
                            row,
                            "o2_garcia_gordon_bk_eos80_mg_l",
                            OxygenSolubility.perVolume(temperature, salinity) * 31.9988,
                            1e-12);
        }
    }

    /** Benson & Krause 1984, the measurements behind the fit: 2.0e-4 and, by volume, 3.4e-4 lie between the two. */
    @Test
    void solubilityLiesNearBensonAndKrause() {
        for (var row : table("oxygen_solubility.csv").rows()) {
            // these two columns read temperature_c as IPTS-68, the scale of the paper
            double temperature = row.number("temperature_c") / 1.00024;
            double salinity = row.number("practical_salinity");
            Validation.of(OxygenSolubility.class, "perMass")
                    .relative(
                            row,
                            "o2_benson_krause_eq31_umol_kg",
                            OxygenSolubility.perMass(temperature, salinity),
                            2.0e-4);
            Validation.of(OxygenSolubility.class, "massPerVolume")
                    .relative(
                            row,
                            "o2_benson_krause_eq32_mg_l",
                            OxygenSolubility.massPerVolume(temperature, salinity),
                            3.4e-4);
        }
    }
}
