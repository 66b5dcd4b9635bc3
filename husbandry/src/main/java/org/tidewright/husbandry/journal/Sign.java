package org.tidewright.husbandry.journal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What a keeper can see of a fish that is not well. A sign is no diagnosis: what it may be is told as possibilities, and
 * who finds out is a veterinarian.
 *
 * <p>Descriptions are our own. What each may be is from memory of handbooks of fish disease; for white spot after extension
 * bulletin FA164 of the University of Florida (its part on signs), for velvet after 600-200 of Virginia Cooperative
 * Extension.
 */
public enum Sign {
    WHITE_GRAINS(
            "white grains",
            "Raised grains like salt on skin and fins, each for itself.",
            "white spot, or harmless lumps of skin"),
    DUSTY_FILM(
            "dusty film",
            "A fine dust over the skin, grey to golden, best seen from the side against the light.",
            "velvet, which kills within days"),
    PEELING_SLIME(
            "peeling slime",
            "Skin that turns milky and comes off in shreds.",
            "brooklynella, on clownfish above all, flukes or other parasites of the skin"),
    FAST_BREATHING(
            "fast breathing",
            "Gill covers that beat fast or hard, a mouth that stays open.",
            "parasites in the gills, too little oxygen, ammonia"),
    ONE_GILL_STILL("one gill still", "Only one of the two gill covers moves.", "flukes or an injury of the gill"),
    SCRATCHING(
            "scratching",
            "Rubs or flicks its side against panes and pipes.",
            "parasites of skin or gills, or water that stings"),
    CLAMPED_FINS("clamped fins", "Fins folded to the body.", "unwell for many reasons: look closely at the skin"),
    CLOUDY_EYE("cloudy eye", "An eye that is milky, or stands out.", "a blow, flukes, bacteria or poor water"),
    FRAYED_FINS("frayed fins", "Fin edges torn, white or shrinking.", "bites, or bacteria"),
    SORES(
            "sores or red patches",
            "Open places, blood under the skin, scales that stand up.",
            "bacteria, other single-celled parasites or a wound"),
    PALE_STRINGY_DROPPINGS(
            "pale stringy droppings", "White or clear threads that hang on.", "an empty gut, or parasites of the gut"),
    SWOLLEN_BELLY("swollen belly", "A belly that bulges on both sides.", "a blocked gut, eggs, bacteria within"),
    THIN_BEHIND_THE_HEAD(
            "thin behind the head",
            "Back and belly hollow, the head looks too large.",
            "long hunger, or worms of the gut"),
    HIDING("hiding", "Does not come out when others do or food comes.", "fear in the first days, later illness"),
    HANGING_AT_THE_SURFACE(
            "hanging at the surface",
            "Stands under the surface or in the stream of the air.",
            "parasites in the gills, too little oxygen, ammonia"),
    SPINNING(
            "spinning",
            "Turns, sinks, floats or swims with its head down.",
            "harm from the catch or from the journey, poisoning, an illness within"),
    SOMETHING_ELSE("something else", "Anything else that was not so before: say it in the remark.", "anything");

    private final String words;
    private final String looks;
    private final String mayBe;

    Sign(String words, String looks, String mayBe) {
        this.words = words;
        this.looks = looks;
        this.mayBe = mayBe;
    }

    /** Name in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As a keeper says it. */
    public String words() {
        return words;
    }

    /** What it looks like, a sentence. */
    public String looks() {
        return looks;
    }

    /** What it may be, as the end of a sentence. */
    public String mayBe() {
        return mayBe;
    }

    /** Whether hours count: gills that fail, and velvet. */
    public boolean isUrgent() {
        return this == DUSTY_FILM || this == FAST_BREATHING || this == HANGING_AT_THE_SURFACE || this == PEELING_SLIME;
    }

    public static Optional<Sign> ofKey(String key) {
        return Arrays.stream(values()).filter(sign -> sign.key().equals(key)).findFirst();
    }

    /** By the words a keeper says it with. */
    public static Optional<Sign> ofWords(String words) {
        return Arrays.stream(values())
                .filter(sign -> sign.words.equalsIgnoreCase(words))
                .findFirst();
    }
}
