package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;

/** How often an interval held the truth, and how far an estimate erred beside two simpler ways. */
final class Tally {
    private static final double NINETY = 0.9;

    private int count;
    private int held;
    private int below;
    private double squares;
    private double errors;
    private final List<double[]> compared = new ArrayList<>();

    /** Something known, and what was true of it. */
    void add(Known known, double truth) {
        count++;
        held += known.holds(truth, NINETY) ? 1 : 0;
        below += truth < known.quantile((1 - NINETY) / 2) ? 1 : 0;
        squares += Math.pow((known.value() - truth) / known.standardError(), 2);
        errors += known.standardError();
    }

    /** How far off the estimate and its rivals were, in this order. */
    void compare(double... off) {
        compared.add(off);
    }

    void add(Tally other) {
        count += other.count;
        held += other.held;
        below += other.below;
        squares += other.squares;
        errors += other.errors;
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

    /** Mean square of the errors in standard errors; 1 is right. */
    double meanSquare() {
        return squares / count;
    }

    double meanStandardError() {
        return errors / count;
    }

    /** Half of the errors of the estimate (0) or a rival (1, 2) are smaller. */
    double middleError(int of) {
        double[] sorted = compared.stream()
                .mapToDouble(off -> Math.abs(off.length > of ? off[of] : Double.NaN))
                .sorted()
                .toArray();
        return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }

    double rootMeanSquare(int of) {
        return Math.sqrt(compared.stream()
                .mapToDouble(off -> off.length > of ? off[of] * off[of] : Double.NaN)
                .average()
                .orElse(Double.NaN));
    }
}
