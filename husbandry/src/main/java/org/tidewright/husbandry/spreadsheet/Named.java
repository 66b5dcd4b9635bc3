package org.tidewright.husbandry.spreadsheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with one value to a row, beside the name of what was measured.
 *
 * @param unitColumn null where there is none
 * @param names what each name means; without value for one that is left out
 */
public record Named(
        int nameColumn, int valueColumn, @Nullable Integer unitColumn, Map<String, Optional<Measured>> names) {
    public Named {
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    /** Names that differ only in case and in blanks are one. */
    static String key(String cell) {
        return cell.strip().toLowerCase(Locale.ROOT);
    }
}
