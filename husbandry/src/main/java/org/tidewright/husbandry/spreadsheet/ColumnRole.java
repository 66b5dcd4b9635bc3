package org.tidewright.husbandry.spreadsheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** Words by which keepers head the columns that are no readings. */
final class ColumnRole {
    private static final Set<String> DATE =
            HeaderWords.words("date datum day when timestamp datetime date/time tag fecha data taken tested");
    private static final Set<String> TIME = HeaderWords.words("time clock hour zeit uhrzeit heure hora ora tijd");
    private static final Set<String> REMARK = HeaderWords.words("note notes remark remarks comment comments observation"
            + " observations bemerkung bemerkungen notiz notizen kommentar notas opmerkingen");
    private static final Set<String> TANK =
            HeaderWords.words("tank tanks aquarium system sample location site becken where source");

    private ColumnRole() {}

    static boolean isDateWord(String header) {
        return any(header, DATE);
    }

    static boolean isTimeWord(String header) {
        return any(header, TIME);
    }

    static boolean isRemarkWord(String header) {
        return any(header, REMARK);
    }

    static boolean isTankWord(String header) {
        return any(header, TANK);
    }

    private static boolean any(String header, Set<String> words) {
        String lower = header.strip().toLowerCase(Locale.ROOT);
        return words.contains(lower)
                || Arrays.stream(lower.split("[^\\p{L}]+", -1)).anyMatch(words::contains);
    }
}
