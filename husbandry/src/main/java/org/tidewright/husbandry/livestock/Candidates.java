package org.tidewright.husbandry.livestock;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/** Reads who is to come: {@code yellow tang}, {@code 5 Chromis viridis 4 cm}, {@code 2 ocellaris clownfish 1.5 in}. */
public final class Candidates {
    private static final Pattern WORDS = Pattern.compile(
            "\\s*(?:(\\d{1,3})\\s*[x×]?\\s+)?(.*?)(?:[\\s,]+(\\d+(?:[.,]\\d+)?)\\s*(cm|mm|in))?\\s*",
            Pattern.CASE_INSENSITIVE);

    /** Share of its usual length at which a fish is sold, and the least; from memory. */
    private static final double SOLD = 0.45;

    private static final double SOLD_LEAST = 0.02;

    /** The shortest fish that is asked about. */
    @Unit("m")
    public static final double LEAST = 0.003;

    /** Individuals that were never measured may be a little longer than the longest that was; this project's own. */
    private static final double LONGER = 1.1;

    private Candidates() {}

    /** A candidate that cannot be read: what was found, what is expected. */
    public static final class Unreadable extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        Unreadable(String message) {
            super(message);
        }
    }

    /**
     * One candidate.
     *
     * @throws Unreadable where no species goes by that name, or a length or number cannot be
     */
    public static Animals read(String text, Catalogue catalogue) {
        Matcher found = WORDS.matcher(text);
        if (!found.matches() || found.group(2).isBlank()) {
            throw new Unreadable(
                    "found “" + text + "”; expected a name, such as “yellow tang” or “5 Chromis viridis 4 cm”.");
        }
        String name = found.group(2).strip();
        Species species = catalogue
                .find(name)
                .orElseThrow(() -> new Unreadable(("found “" + name
                                + "”; expected a species of the catalogue, by its scientific name or one of the trade's. "
                                + catalogue.suggestion(name))
                        .strip()));
        int count = found.group(1) == null ? 1 : Integer.parseInt(found.group(1));
        if (count < 1) {
            throw new Unreadable("found “" + text + "”; expected at least one.");
        }
        if (!(species instanceof FishSpecies fish)) {
            return new Animals(species, count, 0);
        }
        double length = found.group(3) == null ? sold(fish) : length(found.group(3), found.group(4));
        if (length > most(fish) || length < LEAST) {
            throw new Unreadable("found a " + fish.name().common() + " of " + found.group(3) + " " + found.group(4)
                    + "; expected at most " + Math.round(100 * fish.size().most()) + " cm, its greatest known length.");
        }
        return new Animals(species, count, length);
    }

    private static @Unit("m") double length(String number, String unit) {
        double value = Double.parseDouble(number.replace(',', '.'));
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "mm" -> value / 1000;
            case "in" -> value * 0.0254;
            default -> value / 100;
        };
    }

    /** The longest fish of its kind that is believed. */
    public static @Unit("m") double most(FishSpecies fish) {
        return LONGER * fish.size().most();
    }

    /** Length at which shops usually sell it, where nobody says how long this one is. */
    public static @Unit("m") double sold(FishSpecies fish) {
        return Math.max(SOLD_LEAST, SOLD * fish.size().usual());
    }
}
