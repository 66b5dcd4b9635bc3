package org.tidewright.husbandry.journal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Parasites of fish that starve in a display without fish. */
public enum Parasite {
    /** Cryptocaryon irritans. */
    WHITE_SPOT("white spot"),
    /** Amyloodinium ocellatum. */
    VELVET("velvet"),
    /** Brooklynella hostilis. */
    BROOKLYNELLA("brooklynella"),
    /** Monogeneans of skin and gills, such as Neobenedenia. */
    FLUKES("flukes"),
    /** Something that was not told apart. */
    UNKNOWN("unknown parasite");

    private final String words;

    Parasite(String words) {
        this.words = words;
    }

    /** Name in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As a keeper says it. */
    public String words() {
        return words;
    }

    /** By the words a keeper says it with. */
    public static Optional<Parasite> ofWords(String words) {
        return Arrays.stream(values())
                .filter(parasite -> parasite.words.equalsIgnoreCase(words))
                .findFirst();
    }
}
