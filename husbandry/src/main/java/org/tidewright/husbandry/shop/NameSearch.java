package org.tidewright.husbandry.shop;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tidewright.plan.species.Species;

/**
 * Finds species by a part of a name, forgiving of case, accents and signs. The page's script searches in the same way.
 *
 * @param found the likeliest first
 * @param by what was searched for in the end: as typed, or its beginning where nothing has all of it
 */
public record NameSearch(List<Species> found, String by) {
    private static final int SHORTEST = 3;

    public NameSearch {
        found = List.copyOf(found);
    }

    /** Species with every word that was typed somewhere in their names. */
    public static NameSearch of(String typed, List<? extends Species> all) {
        String by = plain(typed);
        List<Species> found = matches(by, all);
        while (found.isEmpty() && by.length() > SHORTEST) {
            by = by.substring(0, by.length() - 1).strip();
            found = matches(by, all);
        }
        return new NameSearch(found, by);
    }

    /** Whether nothing has all that was typed. */
    public boolean isShortened(String typed) {
        return !by.equals(plain(typed));
    }

    /** Letters and digits in lower case without accents, words apart by one space. */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", " ")
                .strip();
    }

    private static List<Species> matches(String by, List<? extends Species> all) {
        List<Species> found = new ArrayList<>();
        if (by.isEmpty()) {
            return found;
        }
        all.stream().filter(species -> rank(by, species) < 4).forEach(found::add);
        found.sort(Comparator.<Species>comparingInt(species -> rank(by, species))
                .thenComparing(species -> plain(species.name().common()))
                .thenComparing(species -> plain(species.name().scientific())));
        return found;
    }

    /** 0 the name itself, 1 begins with it, 2 words begin with the words, 3 somewhere within, 4 not at all. */
    private static int rank(String by, Species species) {
        List<String> names = Stream.concat(
                        Stream.of(species.name().common(), species.name().scientific()),
                        species.name().synonyms().stream())
                .map(NameSearch::plain)
                .toList();
        if (names.contains(by)) {
            return 0;
        } else if (names.stream().anyMatch(name -> name.startsWith(by))) {
            return 1;
        }
        String together = " " + String.join(" ", names);
        String[] words = by.split(" ");
        if (Stream.of(words).allMatch(word -> together.contains(" " + word))) {
            return 2;
        }
        return Stream.of(words).allMatch(together::contains) ? 3 : 4;
    }
}
