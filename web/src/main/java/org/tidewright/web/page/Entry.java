package org.tidewright.web.page;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A number of a form: what was typed, what is reckoned with, and what is wrong.
 *
 * @param name in the query
 * @param text as the field shows it
 * @param value that is reckoned with: the usual where what was typed cannot be
 * @param fault what is wrong; null for nothing
 */
public record Entry(
        String name,
        String label,
        String text,
        double value,
        double least,
        double most,
        @Nullable String fault) {
    static Entry read(
            Levers.Query query, String name, String label, double usual, double least, double most, boolean whole) {
        String typed = query.get(name);
        Double asked = number(typed);
        boolean none = typed == null || typed.isBlank();
        boolean fits = asked != null && asked >= least && asked <= most && (!whole || asked == Math.rint(asked));
        double value = fits && asked != null ? asked : usual;
        String text = none || typed == null ? plain(usual) : asked == null ? "" : typed.strip();
        String fault = none || fits
                ? null
                : (whole ? "a whole number from " : "from ") + plain(least) + " to " + plain(most) + "; reckoned with "
                        + plain(usual);
        return new Entry(name, label, text, value, least, most, fault);
    }

    public String leastText() {
        return plain(least);
    }

    public String mostText() {
        return plain(most);
    }

    /** A typed word, cut where it is long. */
    static String shortened(@Nullable String typed) {
        String word = typed == null ? "" : typed.strip();
        return word.length() > 24 ? word.substring(0, 23) + "…" : word;
    }

    private static @Nullable Double number(@Nullable String text) {
        if (text == null || text.length() > 20) {
            return null;
        }
        try {
            double value = Double.parseDouble(text.strip().replace('\u2212', '-'));
            return Double.isFinite(value) ? value : null;
        } catch (NumberFormatException noNumber) {
            return null;
        }
    }

    static String plain(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }
}
