package org.tidewright.plan.species;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Whatever a keeper's file holds, it is read or its faults are told; it never fails otherwise. */
class SpeciesFuzzTest {
    private static final String[] PIECES = {
        "scientific_name",
        "usual_length_cm",
        ",",
        "\n",
        "\"",
        "Zebrasoma flavescens",
        "-1",
        "1e309",
        "NaN",
        ";",
        "#",
        "\u0000",
        "yes",
        "jump_0to3",
        "own",
        "length_source",
        "social",
        "harem; ; single",
        "\r\n",
        "é"
    };

    @RepeatedTest(200)
    void anyTextIsReadOrFaultsAreTold(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        StringBuilder text = new StringBuilder(random.nextBoolean() ? "scientific_name,usual_length_cm,social\n" : "");
        for (int i = random.nextInt(40); i > 0; i--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        Catalogue.Extended fish = Catalogue.ofProgram().withFish(text.toString());
        Catalogue.Extended others = Catalogue.ofProgram().withInvertebrates(text.toString());
        assertThat(fish.faults().isEmpty() || fish.catalogue() == Catalogue.ofProgram())
                .isTrue();
        assertThat(others.faults().isEmpty() || others.catalogue() == Catalogue.ofProgram())
                .isTrue();
    }
}
