package org.tidewright.testkit;

/** Exchanges pieces of a text, each of which must be there: a test whose change has no effect proves nothing. */
public final class ChangedText {
    private ChangedText() {}

    /** The text with pieces exchanged: old, new, old, new … */
    public static String of(String text, String... replacements) {
        if (replacements.length % 2 != 0) {
            throw new IllegalArgumentException("“" + replacements[replacements.length - 1] + "” has no replacement");
        }
        String changed = text;
        for (int i = 0; i < replacements.length; i += 2) {
            if (!changed.contains(replacements[i])) {
                throw new IllegalArgumentException("the text holds no “" + replacements[i] + "”");
            }
            changed = changed.replace(replacements[i], replacements[i + 1]);
        }
        return changed;
    }
}
