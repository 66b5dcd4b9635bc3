package org.tidewright.husbandry.advice;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.source.Basis;

/** Gives every source of a report its letter, once. */
public final class Sources {
    private final List<Source> sources = new ArrayList<>();

    /** The letter of a source; the same words get the same letter. */
    public String key(String what, Basis basis, String detail) {
        for (Source known : sources) {
            if (known.what().equals(what) && known.detail().equals(detail) && known.basis() == basis) {
                return known.key();
            }
        }
        String key = letters(sources.size());
        sources.add(new Source(key, what, basis, detail));
        return key;
    }

    /** All of them, in the order of their letters. */
    public List<Source> all() {
        return List.copyOf(sources);
    }

    /** a … z, aa, ab … */
    private static String letters(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }
}
