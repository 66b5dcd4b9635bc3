package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;

class WishTextTest {
    private static final Catalogue CATALOGUE = Catalogue.ofProgram();

    @Test
    void aLineSaysAnimalPriceDayAndNoteInAnyOrder() {
        WishLine line = WishText.read(
                        "2 ocellaris clownfish 4 cm, from 2026-12-20, price 60,50 (a pair)\n\n", CATALOGUE)
                .lines()
                .get(0);
        assertThat(line.animals().count()).isEqualTo(2);
        assertThat(line.animals().length()).isEqualTo(0.04);
        assertThat(line.price()).isEqualTo(6050);
        assertThat(line.notBefore()).isEqualTo(LocalDate.parse("2026-12-20"));
        assertThat(line.note()).isEqualTo("a pair");
    }

    @ParameterizedTest
    @CsvSource({
        "yelow tang, Line 2: found “yelow tang”",
        "yellow tang price cheap, Line 2: found price “cheap”",
        "yellow tang from may, Line 2: found from “may”"
    })
    void aFaultNamesItsLine(String typed, String told) {
        WishText.Reading reading = WishText.read("royal gramma\n" + typed, CATALOGUE);
        assertThat(reading.lines()).isEmpty();
        assertThat(reading.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault).startsWith(told));
    }

    @Test
    void aListIsWrittenAsItWouldBeTyped() {
        WishList list = House.list("2 Amphiprion ocellaris 4 cm price 60 from 2026-12-20 (a pair)", "6 Trochus sp.");
        String text = WishText.write(list, CATALOGUE, UnitSystem.METRIC);
        assertThat(text).isEqualTo("2 ocellaris clownfish 4 cm price 60 from 2026-12-20 (a pair)\n6 trochus snail\n");
        assertThat(WishText.write(list, CATALOGUE, UnitSystem.US)).startsWith("2 ocellaris clownfish 1.6 in price 60");
        assertThat(WishText.read(text, CATALOGUE).lines()).isEqualTo(list.lines());
    }

    @Test
    void aListTypedBackInInchesKeepsItsLengths() {
        WishList list = House.list("yellow assessor", "2 Amphiprion ocellaris 4.5 cm");
        String inches = WishText.write(list, CATALOGUE, UnitSystem.US);
        WishList typed = new WishList(WishText.read(inches, CATALOGUE).lines(), null, null);
        assertThat(typed.keepingDaysOf(list)).isEqualTo(list);
        WishList longer = House.list("yellow assessor 3 cm", "2 Amphiprion ocellaris 4.5 cm");
        assertThat(longer.keepingDaysOf(list)).isEqualTo(longer);
    }
}
