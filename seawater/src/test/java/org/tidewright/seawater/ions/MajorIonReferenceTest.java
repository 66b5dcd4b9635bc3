package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class MajorIonReferenceTest {
    private static final double HALF_THE_LAST_DIGIT = 5e-8;
    private static final double SALT_AT_35 = 0.03516504; // kg/kg, Millero et al. 2008

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(MajorIonReferenceTest.class, "/reference/ions/" + name);
    }

    @Test
    void theTableHoldsAllFifteenConstituentsAsTypedASecondTime() {
        var rows = table("reference_composition.csv").rows();
        assertThat(rows.stream().map(row -> row.text("formula")))
                .containsExactlyElementsOf(
                        Arrays.stream(MajorIon.values()).map(MajorIon::formula).toList());
        for (var row : rows) {
            Close.absolute(
                    row, "mole_fraction_e7", 1e7 * ion(row.text("formula")).moleFraction(), 1e-6);
            Close.absolute(row, "charge", ion(row.text("formula")).charge(), 0);
        }
    }

    /** Millero et al. 2008, table 4, as TEOS-10 table D.3 repeats it. */
    @Test
    void massFractionsAreThePrintedOnes() {
        for (var row : table("reference_composition.csv").rows()) {
            Validation.of(MajorIon.class, "massFraction")
                    .absolute(row, "mass_fraction", ion(row.text("formula")).massFraction(), HALF_THE_LAST_DIGIT);
        }
    }

    /** The same table, mol per kilogram of water in seawater of S = 35. */
    @Test
    void molalitiesAreThePrintedOnes() {
        for (var row : table("reference_composition.csv").rows()) {
            double perWater = ion(row.text("formula")).amount(35) / (1 - SALT_AT_35);
            Validation.of(MajorIon.class, "amount")
                    .absolute(row, "molality_mol_kg_water", perWater, HALF_THE_LAST_DIGIT);
        }
    }

    @Test
    void amountsAtThirtyFiveAreThoseOfTheHandbook() {
        for (var row : table("published.csv").rows()) {
            double amount = ion(row.text("formula")).amount(row.number("practical_salinity"));
            Validation.of(MajorIon.class, "amount")
                    .absolute(row, "printed_value_mol_kg", amount, row.number("tolerance_mol_kg"));
        }
    }

    /** The definition of the Reference Composition: the fractions add up and no charge is left, both exactly. */
    @Test
    void fractionsAddUpToOneAndChargesToNothing() {
        long parts = 0;
        long charges = 0;
        for (MajorIon ion : MajorIon.values()) {
            long inTenMillion = Math.round(1e7 * ion.moleFraction());
            parts += inTenMillion;
            charges += ion.charge() * inTenMillion;
        }
        assertThat(parts).isEqualTo(10_000_000);
        assertThat(charges).isZero();
    }

    /** Millero et al. 2008 print 31.4038218 g/mol. */
    @Test
    void meanMolarMassOfTheTableIsThePrintedOne() {
        double mean = 0;
        for (MajorIon ion : MajorIon.values()) {
            mean += ion.moleFraction() * ion.molarMass();
        }
        assertThat(1000 * mean).isCloseTo(31.4038218, within(HALF_THE_LAST_DIGIT));
        assertThat(MajorIon.SEA_SALT_MOLAR_MASS).isEqualTo(31.4038218e-3);
    }

    private static MajorIon ion(String formula) {
        return Arrays.stream(MajorIon.values())
                .filter(each -> each.formula().equals(formula))
                .findFirst()
                .orElseThrow();
    }
}
