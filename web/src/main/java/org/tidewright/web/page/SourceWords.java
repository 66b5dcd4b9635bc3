package org.tidewright.web.page;

import java.util.Locale;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.source.Basis;

/** The note under a source letter: what kind of ground, and which. */
public final class SourceWords {
    private SourceWords() {}

    public static String of(Source source) {
        return of(source.basis(), source.detail());
    }

    /** Words with a stop at their end. */
    public static String ended(String words) {
        String stripped = words.strip();
        return stripped.endsWith(".") ? stripped : stripped + ".";
    }

    static String of(Basis basis, String detail) {
        String words = basis.words();
        String first = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        String more = detail.strip();
        if (more.isEmpty()) {
            return first + ".";
        }
        return first + ": " + ended(more);
    }
}
