package org.tidewright.husbandry.exchange;

import org.jspecify.annotations.Nullable;

/**
 * Keeps a spreadsheet from taking a keeper's words for a formula: text that begins with a sign such programs act on gets an
 * apostrophe before it, and so does text that begins with one, so that taking the first apostrophe away gives every text back.
 *
 * @see <a href="https://owasp.org/www-community/attacks/CSV_Injection">OWASP, CSV Injection: the signs = + - @, tab, carriage
 *     return, line feed, and the wide forms of the first four</a>
 */
final class CsvGuard {
    private static final char GUARD = '\'';
    private static final String ACTED_ON = "=+-@＝＋－＠" + GUARD;
    private static final String BLANKS_ACTED_ON = "\t\r\n";

    private CsvGuard() {}

    /** A cell; null for nothing known, which is an empty one: an empty text is a lone apostrophe. */
    static @Nullable String cell(@Nullable String text) {
        return text == null || !needsGuard(text) ? text : GUARD + text;
    }

    /** The text of a cell that is not empty. */
    static String bare(String cell) {
        return cell.charAt(0) == GUARD ? cell.substring(1) : cell;
    }

    /** Blanks before a sign do not make it safe: some programs cut them away. */
    private static boolean needsGuard(String text) {
        if (text.isEmpty() || BLANKS_ACTED_ON.indexOf(text.charAt(0)) >= 0) {
            return true;
        }
        String stripped = text.strip();
        return !stripped.isEmpty() && ACTED_ON.indexOf(stripped.charAt(0)) >= 0;
    }
}
