package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Time with two speeds: the first two minutes, a break, then hours. Without moving water there is one speed.
 *
 * @param hours length of the whole
 * @param twoSpeeds whether the first two minutes are stretched
 */
public record TimeAxis(double hours, boolean twoSpeeds) {
    /** Seconds shown at the first speed. */
    public static final double FIRST = 120;

    private static final double SPLIT = 0.385;
    private static final double GAP = 0.02;

    /** A bar of the scale, as shares of its length. */
    public record Bar(double from, double to) {}

    /**
     * A number on the scale.
     *
     * @param wideOnly left out on narrow screens
     */
    public record Label(double at, String words, String anchor, boolean wideOnly) {}

    public double seconds() {
        return hours * 3600;
    }

    /** Share of the axis at which a time stands. */
    public double position(double seconds) {
        if (!twoSpeeds) {
            return clamp(seconds / seconds());
        }
        if (seconds <= FIRST) {
            return Math.max(0, seconds / FIRST * SPLIT);
        }
        return clamp(SPLIT + GAP + (seconds - FIRST) / (seconds() - FIRST) * (1 - SPLIT - GAP));
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** Share where the break begins; zero without one. */
    public double breakAt() {
        return twoSpeeds ? SPLIT : 0;
    }

    /** Share the break takes. */
    public double breakWidth() {
        return twoSpeeds ? GAP : 0;
    }

    /** Ten-second bars, then bars of an hour or more. */
    public List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        if (twoSpeeds) {
            for (int i = 0; i < 12; i++) {
                bars.add(new Bar(position(10 * i), position(10 * (i + 1))));
            }
        }
        double step = barHours();
        for (double from = 0; from < hours - 1e-9; from += step) {
            double start = from == 0 ? breakAt() + breakWidth() : position(from * 3600);
            bars.add(new Bar(start, position(Math.min(hours, from + step) * 3600)));
        }
        return bars;
    }

    private double barHours() {
        return hours <= 4 ? 0.25 : hours <= 30 ? 1 : hours <= 60 ? 2 : hours <= 100 ? 4 : 6;
    }

    private double labelHours() {
        return hours <= 2 ? 0.5 : hours <= 4 ? 1 : hours <= 10 ? 2 : hours <= 30 ? 4 : hours <= 60 ? 8 : 24;
    }

    public List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        if (twoSpeeds) {
            labels.add(new Label(0, "0 s", "start", false));
            labels.add(new Label(position(30), "30", "middle", true));
            labels.add(new Label(position(60), "60", "middle", false));
            labels.add(new Label(position(90), "90", "middle", true));
            labels.add(new Label(position(FIRST), "2 min", "end", false));
        } else {
            labels.add(new Label(0, "0 h", "start", false));
        }
        double step = labelHours();
        double half = Math.ceil(hours / 2 / step) * step;
        for (double h = step; h < hours - 0.45 * step; h += step) {
            labels.add(new Label(position(h * 3600), told(h) + " h", "middle", Math.abs(h - half) > 1e-9));
        }
        labels.add(new Label(1, told(hours) + " h", "end", false));
        return labels;
    }

    private static String told(double hours) {
        return hours == Math.rint(hours) ? Long.toString((long) hours) : Double.toString(hours);
    }
}
