package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/** Against fluids 1.0.22, see the head of the table. */
class PipeFrictionReferenceTest {
    private static final double SAME_LAW = 1e-10;

    private static final List<Row> TABLE = ReferenceTable.read(
                    PipeFrictionReferenceTest.class, "/reference/hydraulic/fluids_darcy_friction.csv")
            .rows();

    @Test
    void churchillAgreesFromCreepingToFullyTurbulentFlow() {
        assertThat(agreement("churchill", PipeFriction::churchill, SAME_LAW)).isEqualTo(63);
    }

    @Test
    void colebrookAgrees() {
        assertThat(agreement("colebrook", PipeFriction::colebrook, SAME_LAW)).isGreaterThan(40);
    }

    @Test
    void haalandAgrees() {
        assertThat(agreement("haaland", PipeFriction::haaland, SAME_LAW)).isGreaterThan(40);
    }

    @Test
    void swameeJainAgrees() {
        // The table's code writes 6.97^0.9 = 5.739968 where the paper rounds to 5.74, 5.5e-6 more: that moves f by
        // 2 x 5.5e-6 / (ln 10 x 2.30) = 2.1e-6 of itself at the table's least Re, 2524, and by less above.
        assertThat(agreement("swamee_jain", PipeFriction::swameeJain, 2.1e-6)).isGreaterThan(40);
    }

    @Test
    void laminarFlowAgrees() {
        assertThat(agreement("laminar", (reynolds, roughness) -> PipeFriction.laminar(reynolds), SAME_LAW))
                .isGreaterThan(10);
    }

    @Test
    void turbulentFormulasKeepTheDistanceToColebrookThatIsKnownOfThem() {
        assertThat(TABLE.stream().filter(row -> row.text("regime").equals("turbulent")))
                .hasSizeGreaterThan(30)
                .allSatisfy(row -> {
                    double reynolds = row.number("reynolds");
                    double roughness = row.number("relative_roughness");
                    double colebrook = row.number("friction_factor_colebrook");
                    assertThat(PipeFriction.churchill(reynolds, roughness))
                            .isCloseTo(colebrook, within(0.025 * colebrook));
                    assertThat(PipeFriction.swameeJain(reynolds, roughness))
                            .isCloseTo(colebrook, within(0.025 * colebrook));
                    assertThat(PipeFriction.haaland(reynolds, roughness))
                            .isCloseTo(colebrook, within(0.015 * colebrook));
                });
    }

    /** How many rows were compared. */
    private static int agreement(String law, DoubleBinaryOperator friction, double tolerance) {
        String column = "friction_factor_" + law;
        List<Row> rows = TABLE.stream().filter(row -> row.has(column)).toList();
        assertThat(rows).allSatisfy(row -> {
            double expected = row.number(column);
            double computed = friction.applyAsDouble(row.number("reynolds"), row.number("relative_roughness"));
            assertThat(computed).isCloseTo(expected, within(tolerance * expected));
        });
        return rows.size();
    }
}
