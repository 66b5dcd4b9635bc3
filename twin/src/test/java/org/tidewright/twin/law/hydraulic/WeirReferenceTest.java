package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/** Against fluids 1.0.22 (and, for Francis, the printed formula), see the head of the table. */
class WeirReferenceTest {
    private static final double SAME_LAW = 1e-12;

    private static final List<Row> TABLE = ReferenceTable.read(
                    WeirReferenceTest.class, "/reference/hydraulic/fluids_weir_flow.csv")
            .rows();

    @Test
    void francisAgreesToTheLastDigits() {
        List<Row> rows = rows("francis");
        assertThat(rows).hasSize(12).allSatisfy(row -> {
            double expected = row.number("flow_m3_s");
            FrancisWeir weir = new FrancisWeir(row.number("crest_width_m"), row.number("end_contractions"));
            assertThat(weir.flow(row.number("head_m"))).isCloseTo(expected, within(SAME_LAW * expected));
            assertThat(weir.head(expected)).isCloseTo(row.number("head_m"), within(1e-11 * row.number("head_m")));
        });
    }

    @Test
    void rehbockWithTheConstantsOfBlevinsAgreesToTheLastDigits() {
        assertThat(rows("rehbock")).hasSize(6).allSatisfy(row -> {
            double expected = row.number("flow_m3_s");
            RehbockWeir weir = RehbockWeir.asInBlevins(row.number("crest_width_m"), row.number("crest_height_m"));
            assertThat(weir.flow(row.number("head_m"))).isCloseTo(expected, within(SAME_LAW * expected));
        });
    }

    @Test
    void rehbockWithTheConstantsOfIsoAgreesWithTwoOtherFormulasWithinTheirLimits() {
        // "1-2 % between the full-width formulas inside their limits".
        List<Row> within = TABLE.stream()
                .filter(row -> row.text("formula").equals("kindsvater_carter")
                        || row.text("formula").equals("ackers"))
                .filter(row -> row.text("within_stated_limits").equals("1"))
                .toList();
        assertThat(within).hasSizeGreaterThanOrEqualTo(4).allSatisfy(row -> {
            double expected = row.number("flow_m3_s");
            RehbockWeir weir = new RehbockWeir(row.number("crest_width_m"), row.number("crest_height_m"));
            assertThat(weir.withinStatedRange(row.number("head_m"))).isTrue();
            assertThat(weir.flow(row.number("head_m"))).isCloseTo(expected, within(0.02 * expected));
        });
    }

    private static List<Row> rows(String formula) {
        return TABLE.stream().filter(row -> row.text("formula").equals(formula)).toList();
    }
}
