package org.tidewright.testkit;

import java.util.SplittableRandom;

/**
 * Tries a property on random cases. Every case draws from a seed of its own, which the failure names, so that
 * {@link #only} can run it again alone.
 *
 * <p>The seeds are the same in every run, unless the system property {@code cases.seed} holds another number to start
 * them from.
 */
public final class SeededCases {
    private static final int USUAL = 1000;

    private SeededCases() {}

    /** What must hold for every case. */
    @FunctionalInterface
    public interface Property {
        /** Fails, by an exception or an error of its assertions, where the case contradicts it. */
        void holdsFor(Draw draw) throws Exception;
    }

    /** Tries a thousand cases. */
    public static void check(Property property) {
        check(USUAL, property);
    }

    /** Tries so many cases. */
    public static void check(int cases, Property property) {
        SplittableRandom seeds = new SplittableRandom(Long.getLong("cases.seed", 0));
        for (int i = 1; i <= cases; i++) {
            run(seeds.nextLong(), "case " + i + " of " + cases, property);
        }
    }

    /** Runs the one case of a seed again, to look into its failure. */
    public static void only(long seed, Property property) {
        run(seed, "the case", property);
    }

    private static void run(long seed, String name, Property property) {
        Draw draw = new Draw(seed);
        try {
            property.holdsFor(draw);
        } catch (Exception | AssertionError failure) {
            throw new AssertionError(
                    name + " fails, seed " + seed + "L, drawn " + draw + ": " + failure.getMessage(), failure);
        }
    }
}
