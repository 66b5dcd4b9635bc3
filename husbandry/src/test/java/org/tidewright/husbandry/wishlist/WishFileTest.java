package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.species.Catalogue;

class WishFileTest {
    private static final Catalogue CATALOGUE = Catalogue.ofProgram();

    private static WishFile.Reading read(String text) {
        return WishFile.read(text, CATALOGUE);
    }

    @Test
    void aRowIsAWishWithWhatTheListHoldsFor() {
        String text = """
                animal,count,length_cm,price,not_before,note,budget_per_month,nothing_before
                ocellaris clownfish,2,4.5,60.5,2026-12-20,a pair,120,2026-12-01
                # not yet
                Trochus sp.,6,,,,,,
                """;
        WishList list = read(text).list();
        WishLine clowns = list.lines().get(0);
        assertThat(clowns.animals().species().name().scientific()).isEqualTo("Amphiprion ocellaris");
        assertThat(clowns.animals().count()).isEqualTo(2);
        assertThat(clowns.animals().length()).isEqualTo(0.045);
        assertThat(clowns.price()).isEqualTo(6050);
        assertThat(clowns.notBefore()).isEqualTo(LocalDate.parse("2026-12-20"));
        assertThat(clowns.note()).isEqualTo("a pair");
        assertThat(list.budget()).isEqualTo(12000);
        assertThat(list.nothingBefore()).isEqualTo(LocalDate.parse("2026-12-01"));
        assertThat(list.ids()).containsExactly("amphiprion-ocellaris", "trochus-sp");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "animal|yelow tang|2:1: animal: found “yelow tang”|Did you mean “yellow tang”?",
                "animal,count|yellow tang,none|2:2: yellow tang, count: found “none”|from 1 to 999",
                "animal,length_cm|yellow tang,90|2:2: yellow tang, length_cm: found “90”|greatest length known",
                "animal,length_cm|Trochus sp.,3|2:2: Trochus sp., length_cm: found “3”|only fish are measured",
                "animal,price|yellow tang,much|2:2: yellow tang, price: found “much”|45.50",
                "animal,not_before|yellow tang,2026-02-30|2:2: yellow tang, not_before: found “2026-02-30”|2026-12-20",
                "animal,comes|yellow tang,2026-12-20|2:1: yellow tang, kept_on: found some|all three or none",
                "animal,prise|yellow tang,3|1:2: the header: found “prise”|Did you mean “price”?",
                "count|3|1:1: the header: found no animal|who is wished for"
            })
    void aFaultIsToldByLineAndColumn(String header, String row, String told, String expected) {
        WishFile.Reading reading = read(header + "\n" + row + "\n");
        assertThat(reading.list()).isEqualTo(WishList.EMPTY);
        assertThat(reading.faults().stream()
                        .map(fault -> fault.line() + ":" + fault.column() + ": " + fault.sentence())
                        .toList())
                .anySatisfy(fault -> assertThat(fault).startsWith(told).contains(expected));
    }

    @Test
    void twoBudgetsAreAFault() {
        assertThat(read("animal,budget_per_month\nyellow tang,100\nTrochus sp.,90\n")
                        .faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.line()).isEqualTo(3));
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        WishList list = House.list(
                "2 ocellaris clownfish 4.5 cm price 60.50 from 2026-12-20 (a \"pair\", of two)", "6 Trochus sp.");
        WishLine.Kept days = new WishLine.Kept(House.TODAY, House.TODAY.plusDays(3), House.TODAY.plusDays(33));
        WishList kept = new WishList(
                List.of(list.lines().get(0).keeping(days), list.lines().get(1)), 12_000L, House.TODAY);
        assertThat(read(WishFile.write(kept))).isEqualTo(new WishFile.Reading(kept, List.of()));
        WishList nobody = new WishList(List.of(), 500L, null);
        assertThat(read(WishFile.write(nobody)).list()).isEqualTo(nobody);
    }
}
