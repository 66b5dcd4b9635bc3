package org.tidewright.web.page;

import java.util.Locale;
import org.tidewright.husbandry.advice.Source;

/** The note under a source letter: what kind of ground, and which. */
public final class SourceWords {
    private SourceWords() {}

    public static String of(Source source) {
        String basis = source.basis().words();
        String first = basis.substring(0, 1).toUpperCase(Locale.ROOT) + basis.substring(1);
        String detail = source.detail().strip();
        if (detail.isEmpty()) {
            return first + ".";
        }
        return first + ": " + detail + (detail.endsWith(".") ? "" : ".");
    }
}
