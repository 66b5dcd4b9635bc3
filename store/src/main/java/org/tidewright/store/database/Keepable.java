package org.tidewright.store.database;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a database gives back as it was given. */
public final class Keepable {
    private Keepable() {}

    /**
     * The value itself, except that the zero below zero becomes plain zero, which is all that a database keeps of it.
     *
     * @throws IllegalArgumentException where it would come back as something else: not-a-number, which would be nothing; text
     *     with half of a surrogate pair or with U+0000, which not every database takes
     */
    public static @Nullable Object of(@Nullable Object value) {
        if (value instanceof Double number) {
            if (number.isNaN()) {
                throw new IllegalArgumentException("not-a-number cannot be kept: leave the value out");
            }
            return number + 0.0;
        }
        if (value instanceof String text) {
            int wrong = firstUnkeepable(text);
            if (wrong >= 0) {
                throw new IllegalArgumentException("the text “" + text.substring(0, wrong) + "…” goes on with "
                        + String.format(Locale.ROOT, "U+%04X", (int) text.charAt(wrong))
                        + ", which cannot be kept: take it out");
            }
        }
        return value;
    }

    /** Where the first of these stands; -1 if there is none. */
    private static int firstUnkeepable(String text) {
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            if (point == 0 || Character.getType(point) == Character.SURROGATE) {
                return i;
            }
            i += Character.charCount(point);
        }
        return -1;
    }
}
