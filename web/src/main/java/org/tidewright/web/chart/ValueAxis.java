package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The upright scale of a trace.
 *
 * @param ticks round numbers between the two ends
 */
public record ValueAxis(double low, double high, List<Double> ticks, int decimals) {
    /** Height of a trace, CSS pixels. */
    public static final double HEIGHT = 112;

    private static final double PADDING = 8;

    static ValueAxis of(Curve curve) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < curve.middle().length; i++) {
            low = Math.min(low, least(curve.low()[i], curve.middle()[i]));
            high = Math.max(high, -least(-curve.high()[i], -curve.middle()[i]));
        }
        if (!(low <= high)) {
            low = 0;
            high = 1;
        }
        double span = Math.max(high - low, Math.max(1e-3, 0.04 * Math.max(Math.abs(low), Math.abs(high))));
        double from = low;
        double to = high;
        for (Curve.Bound bound : near(curve.bounds(), low, high, span)) {
            from = Math.min(from, bound.value());
            to = Math.max(to, bound.value());
        }
        span = Math.max(to - from, span);
        from -= 0.12 * span;
        to += 0.1 * span;
        double step = step(to - from);
        List<Double> ticks = new ArrayList<>();
        for (double at = Math.ceil(from / step) * step; at <= to + 1e-9; at += step) {
            ticks.add(at);
        }
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        return new ValueAxis(from, to, ticks, decimals);
    }

    /**
     * The limits worth a line: those the quantity meets or nearly meets, else the nearest. A limit far from anything that
     * happens would flatten the curve; the table of crossings names it all the same.
     */
    private static List<Curve.Bound> near(List<Curve.Bound> bounds, double low, double high, double span) {
        List<Curve.Bound> met = bounds.stream()
                .filter(bound -> away(bound, low, high) <= 0.08 * span)
                .toList();
        if (!met.isEmpty()) {
            return met;
        }
        return bounds.stream()
                .filter(bound -> away(bound, low, high) <= 1.5 * span)
                .min(Comparator.comparingDouble(bound -> away(bound, low, high)))
                .stream()
                .toList();
    }

    private static double away(Curve.Bound bound, double low, double high) {
        return Math.max(0, Math.max(low - bound.value(), bound.value() - high));
    }

    private static double least(double a, double b) {
        return Double.isNaN(a) ? b : Math.min(a, b);
    }

    /** A round step that gives about three or four ticks. */
    static double step(double span) {
        double rough = span / 5;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double times : new double[] {1, 2, 5, 10}) {
            if (times * power >= rough) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** Pixels from the top. */
    double y(double value) {
        double held = Math.max(low, Math.min(high, value));
        return PADDING + (HEIGHT - 2 * PADDING) * (1 - (held - low) / (high - low));
    }

    boolean shows(double value) {
        return value >= low && value <= high;
    }
}
