package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** How often an interval held the truth, and how far an estimate erred beside simpler ways. */
final class Tally {
    private static final double NINETY = 0.9;

    private int count;
    private int held;
    private int below;
    private final List<double[]> compared = new ArrayList<>();

    /** Something known, and what was true of it. */
    void add(Known known, double truth) {
        count++;
        held += known.holds(truth, NINETY) ? 1 : 0;
        below += truth < known.quantile((1 - NINETY) / 2) ? 1 : 0;
    }

    /** How far off the estimate and its rivals were, in this order. */
    void compare(double... off) {
        compared.add(off);
    }

    void add(Tally other) {
        count += other.count;
        held += other.held;
        below += other.below;
        compared.addAll(other.compared);
    }

    int count() {
        return count;
    }

    /** Share that lay within the 90 % interval. */
    double coverage() {
        return (double) held / count;
    }

    /** Share that lay below it. */
    double below() {
        return (double) below / count;
    }

    boolean isCompared() {
        return !compared.isEmpty();
    }

    /** Half of the errors of the estimate (0) or a rival (1, 2) are smaller; NaN where there is no such rival. */
    double middleError(int of) {
        double[] sorted = errors(of).map(Math::abs).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }

    double rootMeanSquare(int of) {
        return Math.sqrt(errors(of).map(error -> error * error).average().orElse(Double.NaN));
    }

    private DoubleStream errors(int of) {
        return compared.stream().filter(off -> off.length > of).mapToDouble(off -> off[of]);
    }
}
