package org.tidewright.seawater.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.testkit.Validation;

class AmmoniaReferenceTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(AmmoniaReferenceTest.class, "/reference/carbonate/ammonia.csv");

    /** Clegg & Whitfield 1995 as PyCO2SYS 1.8.3.4 has it. */
    @Test
    void unionisedShareEqualsAnotherTyping() {
        for (var row : TABLE.rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(Ammonia.class, "unionisedShare")
                    .absolute(row, "fraction_nh3", Ammonia.unionisedShare(t, s, row.number("ph_total")), 1e-10);
            Validation.of(Ammonia.class, "dissociation")
                    .absolute(row, "pka_total_mol_kg_seawater", -Math.log10(Ammonia.dissociation(t, s)), 1e-10);
            Validation.of(Ammonia.class, "pkaBell").absolute(row, "pka_bell_2008", Ammonia.pkaBell(t, s), 1e-10);
        }
    }

    /** Yao & Millero 1995, other measurements on the seawater scale: up to 6.9 % less. */
    @Test
    void anotherLawFindsNearlyAsMuch() {
        for (var row : TABLE.rows()) {
            double got = Ammonia.unionisedShare(
                    row.number("temperature_c"), row.number("practical_salinity"), row.number("ph_total"));
            Validation.of(Ammonia.class, "unionisedShare").relative(row, "fraction_nh3_yao_millero", got, 0.075);
        }
    }

    /** Printed in a table after Clegg & Whitfield with the constant left per kilogram of water, 3.6 % more at S = 35. */
    @Test
    void printedSharesAreMetInTheirOwnUnit() {
        var published = ReferenceTable.read(AmmoniaReferenceTest.class, "/reference/carbonate/published.csv");
        for (String id : new String[] {"p074", "p076", "p078", "p080"}) {
            var row = published.row("id", id);
            double s = row.number("practical_salinity");
            double k = Ammonia.dissociation(row.number("temperature_c"), s) / (1 - 0.001005 * s);
            double h = Math.pow(10, -Double.parseDouble(row.text("other_inputs").substring("ph=".length())));
            Close.absolute(row, "printed_value", k / (k + h), row.number("tolerance"));
        }
    }

    @Test
    void warmerAndLessAcidWaterHasMoreOfThePoison() {
        SeededCases.check(draw -> {
            double s = draw.between(0, 45);
            double t = draw.between(0, 39);
            double ph = draw.between(6, 9);
            double here = Ammonia.unionisedShare(t, s, ph);
            assertThat(here).isBetween(0.0, 1.0);
            assertThat(Ammonia.unionisedShare(t + 1, s, ph)).isGreaterThan(here);
            assertThat(Ammonia.unionisedShare(t, s, ph + 0.1)).isGreaterThan(here);
        });
    }

    @Test
    void aPhThatIsNoneIsRefused() {
        assertThatThrownBy(() -> Ammonia.unionisedShare(25, 35, 81))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pH 81.0");
        assertThatThrownBy(() -> Ammonia.unionisedShare(25, 35, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
