package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ReferenceRows.number;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against fluids 1.0.22 (and, for Francis, the printed formula), see the head of the table. */
class WeirReferenceTest {
    private static final double SAME_LAW = 1e-12;

    private static final List<NamedCsvRecord> TABLE = ReferenceRows.of("fluids_weir_flow.csv");

    @Test
    void francisAgreesToTheLastDigits() {
        List<NamedCsvRecord> rows = rows("francis");
        assertThat(rows).hasSize(12).allSatisfy(row -> {
            double expected = number(row, "flow_m3_s");
            FrancisWeir weir = new FrancisWeir(number(row, "crest_width_m"), number(row, "end_contractions"));
            assertThat(weir.flow(number(row, "head_m"))).isCloseTo(expected, within(SAME_LAW * expected));
            assertThat(weir.head(expected)).isCloseTo(number(row, "head_m"), within(1e-11 * number(row, "head_m")));
        });
    }

    @Test
    void rehbockWithTheConstantsOfBlevinsAgreesToTheLastDigits() {
        assertThat(rows("rehbock")).hasSize(6).allSatisfy(row -> {
            double expected = number(row, "flow_m3_s");
            RehbockWeir weir = RehbockWeir.asInBlevins(number(row, "crest_width_m"), number(row, "crest_height_m"));
            assertThat(weir.flow(number(row, "head_m"))).isCloseTo(expected, within(SAME_LAW * expected));
        });
    }

    @Test
    void rehbockWithTheConstantsOfIsoAgreesWithTwoOtherFormulasWithinTheirLimits() {
        // "1-2 % between the full-width formulas inside their limits".
        List<NamedCsvRecord> within = TABLE.stream()
                .filter(row -> row.getField("formula").equals("kindsvater_carter")
                        || row.getField("formula").equals("ackers"))
                .filter(row -> row.getField("within_stated_limits").equals("1"))
                .toList();
        assertThat(within).hasSizeGreaterThanOrEqualTo(4).allSatisfy(row -> {
            double expected = number(row, "flow_m3_s");
            RehbockWeir weir = new RehbockWeir(number(row, "crest_width_m"), number(row, "crest_height_m"));
            assertThat(weir.withinStatedRange(number(row, "head_m"))).isTrue();
            assertThat(weir.flow(number(row, "head_m"))).isCloseTo(expected, within(0.02 * expected));
        });
    }

    private static List<NamedCsvRecord> rows(String formula) {
        return TABLE.stream()
                .filter(row -> row.getField("formula").equals(formula))
                .toList();
    }
}
