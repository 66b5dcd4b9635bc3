package org.tidewright.twin.law.hydraulic;

import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A smooth, sharp, rectangular crest by the formula of Francis.
 *
 * <pre>Q = 1.84 (b - 0.1 n h) h^1.5        (SI; b length of the crest, n end contractions)</pre>
 *
 * <p>Beyond h = b/3, where Francis stopped, the contraction is held at its value there, so that flow goes on rising
 * with head instead of turning back.
 *
 * @param length length of the crest
 * @param endContractions ends at which the water must turn in: 2 for a notch in a wall, 0 for a wall-to-wall crest;
 *     corners of a box that stands in the water count 0
 * @source Francis 1883, Lowell Hydraulic Experiments (coefficient in SI, from memory)
 * @validity h below b/3; measured from about 0.06 m of head upward
 * @checkvalue b = 1.0 m, n = 2, h = 0.1 m: 0.0570222 m^3/s
 */
public record FrancisWeir(
        @Unit("m") double length, @Unit("1") double endContractions) implements Weir {
    private static final double COEFFICIENT = 1.84;
    private static final double CONTRACTION = 0.1;
    private static final double MOST_HEAD_PER_LENGTH = 1.0 / 3;
    private static final double LEAST_MEASURED_HEAD = 0.06;
    private static final double RELATIVE_ERROR_OF_THIN_SHEETS = 0.15;

    public FrancisWeir {
        Bounds.positive(length, "m", "length of the crest");
        Bounds.within(endContractions, "1", 0, 2, "number of end contractions");
    }

    @Override
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        if (!(head > 0)) {
            return Dry.noFlow(head);
        }
        return COEFFICIENT * effectiveLength(head) * head * Math.sqrt(head);
    }

    private double effectiveLength(double head) {
        return length - CONTRACTION * endContractions * Math.min(head, MOST_HEAD_PER_LENGTH * length);
    }

    @Override
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.notNegative(flow, "m^3/s", "flow over the crest");
        double uncontracted = Math.cbrt(square(flow / (COEFFICIENT * length)));
        if (endContractions == 0 || flow == 0) {
            return uncontracted;
        }
        // The contraction takes at most 2/30 of the length, so the head grows by at most (1 - 1/15)^(-2/3) < 1.05.
        return Bracketed.root(head -> flow(head) - flow, 0.99 * uncontracted, 1.05 * uncontracted);
    }

    private static double square(double x) {
        return x * x;
    }

    @Override
    public boolean withinStatedRange(@Unit("m") double head) {
        return head >= LEAST_MEASURED_HEAD && head < MOST_HEAD_PER_LENGTH * length;
    }

    /**
     * {@inheritDoc}
     *
     * @source common practice: 15 %; the gap to Rehbock's formula is of that size
     */
    @Override
    @Unit("1")
    public double relativeError() {
        return RELATIVE_ERROR_OF_THIN_SHEETS;
    }
}
