package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** Whatever a file or a form holds, it is read or its faults are told; and what was read is written back the same. */
class WishFuzzTest {
    private static final Catalogue CATALOGUE = Catalogue.ofProgram();
    private static final String[] PIECES = {
        "animal",
        ",",
        "\n",
        "\r\n",
        "\"",
        "\"\"",
        "yellow tang",
        "Trochus sp.",
        "price",
        " price 3",
        " from 2026-01-01",
        " from ",
        "(",
        ")",
        "-1",
        "1e309",
        "NaN",
        ";",
        "#",
        "\u0000",
        "count",
        "length_cm",
        "2026-12-20",
        "budget_per_month",
        "kept_on",
        "4 cm",
        "2 ",
        "é",
        "٣",
        " ",
        "nothing_before",
        "\uFEFF"
    };

    @Test
    void anyTextIsReadOrFaultsAreTold() {
        SeededCases.check(600, draw -> {
            String text = text(draw, (draw.whole(0, 1) == 0) ? String.join(",", WishFile.COLUMNS) + "\n" : "");
            WishFile.Reading file = WishFile.read(text, CATALOGUE);
            assertThat(file.faults().isEmpty() || file.list().equals(WishList.EMPTY))
                    .isTrue();
            assertThat(WishFile.read(WishFile.write(file.list()), CATALOGUE).list())
                    .isEqualTo(file.list());
            WishText.Reading typed = WishText.read(text, CATALOGUE);
            assertThat(typed.faults().isEmpty() || typed.lines().isEmpty()).isTrue();
        });
    }

    @Test
    void aSoundFileWithOnePieceExchangedIsReadOrFaultsAreTold() {
        String sound = WishFile.write(new WishList(
                House.list("2 ocellaris clownfish 4 cm price 60 from 2026-12-20 (a pair)", "6 Trochus sp.")
                        .lines(),
                12_000L,
                House.TODAY));
        SeededCases.check(600, draw -> {
            int at = draw.whole(0, sound.length() - 1);
            int end = Math.min(sound.length(), at + draw.whole(0, 5));
            String text = sound.substring(0, at) + PIECES[draw.whole(0, PIECES.length - 1)] + sound.substring(end);
            WishFile.Reading file = WishFile.read(text, CATALOGUE);
            assertThat(WishFile.read(WishFile.write(file.list()), CATALOGUE).list())
                    .isEqualTo(file.list());
        });
    }

    private static String text(Draw draw, String head) {
        StringBuilder text = new StringBuilder(head);
        for (int i = draw.whole(0, 39); i > 0; i--) {
            text.append(PIECES[draw.whole(0, PIECES.length - 1)]);
        }
        return text.toString();
    }
}
