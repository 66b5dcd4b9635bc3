package org.tidewright.plan.fault;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Spelling {
    private Spelling() {}

    /** The candidate nearest to a word, when near enough to be a slip of it. */
    public static Optional<String> nearest(String word, Collection<String> candidates) {
        String lower = word.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Math.max(1, Math.min(3, word.length() / 3)) + 1;
        for (String candidate : candidates) {
            int distance = distance(lower, candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** {@code Did you mean “height”?}, or nothing. */
    public static String suggestion(String word, Collection<String> candidates) {
        return nearest(word, candidates)
                .map(candidate -> "Did you mean “" + candidate + "”?")
                .orElse("");
    }

    /** Edits between two words, two neighbours exchanged counting as one (optimal string alignment). */
    static int distance(String a, String b) {
        if (a.length() > 60) {
            return a.length();
        }
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                    continue;
                }
                int changed = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                int best = Math.min(changed, Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
                boolean exchanged =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                edits[i][j] = exchanged ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
            }
        }
        return edits[a.length()][b.length()];
    }
}
