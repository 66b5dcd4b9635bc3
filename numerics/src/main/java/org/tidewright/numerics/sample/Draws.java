package org.tidewright.numerics.sample;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * One draw of an ensemble: random values by name.
 *
 * <p>A value depends on seed, draw and name only, not on what was asked before: a parameter added later leaves the others
 * as they were, and the same name gives the same value each time. A name stands for one quantity, so uniform and normal
 * of one name are the same draw in two coats, not independent.
 */
public final class Draws {
    private final long seed;
    private final int draw;

    /**
     * The draw of the given number.
     *
     * @param seed any number; the ensemble's
     * @param draw from 0
     */
    public Draws(long seed, int draw) {
        if (draw < 0) {
            throw new IllegalArgumentException("Draw is " + draw + "; draws are numbered from 0");
        }
        this.seed = seed;
        this.draw = draw;
    }

    /** A value evenly spread over (0, 1), ends excluded. */
    public double uniform(String name) {
        return Bits.fraction(Bits.of(seed, draw, name), 52);
    }

    /** A standard normal value, by the inverse of the cumulative function. */
    public double normal(String name) {
        return StandardNormal.quantile(uniform(name));
    }

    /** A fresh generator for a name that needs many values, such as a noise; it always starts from the same place. */
    public RandomGenerator stream(String name) {
        return new SplittableRandom(Bits.of(seed, draw, name));
    }
}
