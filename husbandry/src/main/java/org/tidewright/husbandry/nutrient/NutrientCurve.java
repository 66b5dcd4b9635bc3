package org.tidewright.husbandry.nutrient;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;

/**
 * A nutrient along twelve weeks: the start, then the mean of every day at its noon.
 *
 * @param days since the first midnight
 * @param asRun mg/L as {@link Quantity} tells it
 * @param changed the same with the changes; null without any
 * @param drawn in which nine of ten draws lie as it is run; null where none were made
 */
public record NutrientCurve(
        Quantity quantity,
        TargetBand band,
        double[] days,
        double[] asRun,
        double @Nullable [] changed,
        @Nullable Band drawn) {
    private static final int WEEK = 7;
    private static final double DAY = 86_400;

    /** Below this a share that is lost says little, mg/L: what a good phosphate test can tell; common practice. */
    private static final double TELLABLE = 0.02;

    static NutrientCurve of(
            Quantity quantity, TargetBand band, Course asRun, @Nullable Course changed, @Nullable Outlook outlook) {
        double[] base = daily(asRun, quantity);
        double[] other = changed == null ? null : daily(changed, quantity);
        int shown = other == null ? base.length : Math.min(base.length, other.length);
        double[] days = new double[shown];
        for (int i = 1; i < shown; i++) {
            days[i] = i - 0.5;
        }
        return new NutrientCurve(
                quantity,
                band,
                days,
                Arrays.copyOf(base, shown),
                other == null ? null : Arrays.copyOf(other, shown),
                outlook == null ? null : daily(outlook, quantity));
    }

    /** The start, then means of whole days. */
    private static double[] daily(Course course, Quantity quantity) {
        return daily(course.time(), course.of(quantity));
    }

    private static Band daily(Outlook outlook, Quantity quantity) {
        Band band = outlook.of(quantity);
        return new Band(
                daily(outlook.time(), band.low()),
                daily(outlook.time(), band.middle()),
                daily(outlook.time(), band.high()));
    }

    private static double[] daily(double[] time, double[] values) {
        int days = (int) Math.floor(time[time.length - 1] / DAY + 1e-9);
        double[] sums = new double[days + 1];
        int[] counts = new int[days + 1];
        for (int i = 0; i < time.length; i++) {
            int day = (int) Math.floor(time[i] / DAY + 1e-9);
            if (day < days) {
                sums[day + 1] += values[i];
                counts[day + 1]++;
            }
        }
        sums[0] = values[0];
        for (int day = 1; day <= days; day++) {
            sums[day] /= counts[day];
        }
        return sums;
    }

    public double start() {
        return asRun[0];
    }

    /** Mean of the last week as it is run. */
    public double endAsRun() {
        return end(asRun);
    }

    /** Mean of the last week with the changes, or as it is run without any. */
    public double end() {
        return end(changed == null ? asRun : changed);
    }

    private static double end(double[] values) {
        return mean(values, values.length - WEEK, values.length);
    }

    private static double mean(double[] values, int from, int to) {
        return Arrays.stream(values, Math.max(0, from), to).average().orElse(Double.NaN);
    }

    /** What the last four weeks still move, mg/L: the mean of their second half less that of their first. */
    double moving() {
        double[] values = changed == null ? asRun : changed;
        int n = values.length;
        return mean(values, n - 2 * WEEK, n) - mean(values, n - 4 * WEEK, n - 2 * WEEK);
    }

    /**
     * Days until half of what the changes do is done, or without changes half of the way from the start; infinite where
     * there is nothing to be done.
     */
    public double halfWay() {
        double[] way = new double[days.length];
        for (int i = 0; i < way.length; i++) {
            way[i] = changed == null ? asRun[i] - asRun[0] : changed[i] - asRun[i];
        }
        double whole = end(way);
        if (Math.abs(whole) < 1e-3 * Math.max(Math.abs(end()), 1e-9)) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 1; i < way.length; i++) {
            if (way[i] / whole >= 0.5) {
                double share = (0.5 * whole - way[i - 1]) / (way[i] - way[i - 1]);
                return days[i - 1] + Math.max(0, Math.min(1, share)) * (days[i] - days[i - 1]);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The largest share lost within a week as it is run, where there is enough to tell. */
    public double steepestFallAsRun() {
        return steepestFall(asRun);
    }

    /** The same with the changes, or as it is run without any. */
    public double steepestFall() {
        return steepestFall(changed == null ? asRun : changed);
    }

    private static double steepestFall(double[] values) {
        double steepest = 0;
        for (int i = 0; i + WEEK < values.length; i++) {
            if (values[i] > TELLABLE) {
                steepest = Math.max(steepest, 1 - values[i + WEEK] / values[i]);
            }
        }
        return steepest;
    }
}
