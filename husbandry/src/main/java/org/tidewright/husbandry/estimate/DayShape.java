package org.tidewright.husbandry.estimate;

import java.util.Arrays;
import java.util.List;
import org.tidewright.seawater.unit.Unit;

/**
 * How something that comes again every day is spread over the day: the share of it that has come by each time of day.
 *
 * @param times since midnight, rising, from 0 to 1; a time that stands twice is one at which much comes at once
 * @param shares that have come by then, from 0 to 1
 */
public record DayShape(@Unit("d") double[] times, @Unit("1") double[] shares) {

    /** Evenly over the whole day. */
    public static final DayShape EVEN = new DayShape(new double[] {0, 1}, new double[] {0, 1});

    public DayShape {
        boolean sound = times.length == shares.length && times.length >= 2;
        for (int i = 1; sound && i < times.length; i++) {
            sound = times[i] >= times[i - 1] && shares[i] >= shares[i - 1] - 1e-12;
        }
        if (!sound || times[0] != 0 || times[times.length - 1] != 1) {
            throw new IllegalArgumentException("a day goes from 0 to 1 and its shares never fall: "
                    + Arrays.toString(times) + ", " + Arrays.toString(shares));
        }
    }

    /** In equal pulses. */
    static DayShape pulses(List<Double> timesOfDay) {
        List<Double> sorted = timesOfDay.stream().sorted().toList();
        int count = sorted.size();
        double[] times = new double[2 * count + 2];
        double[] shares = new double[2 * count + 2];
        for (int i = 0; i < count; i++) {
            times[2 * i + 1] = sorted.get(i);
            times[2 * i + 2] = sorted.get(i);
            shares[2 * i + 1] = (double) i / count;
            shares[2 * i + 2] = (i + 1.0) / count;
        }
        times[2 * count + 1] = 1;
        shares[2 * count + 1] = 1;
        return new DayShape(times, shares);
    }

    /**
     * Evenly within a window and evenly outside it, but faster within.
     *
     * @param from time of day at which it begins
     * @param lasts its length; it may run over midnight
     * @param faster how many times as fast it goes within; infinite for nothing outside
     */
    static DayShape window(double from, double lasts, double faster) {
        if (lasts <= 0 || lasts >= 1 || faster == 1) {
            return EVEN;
        }
        double outside = Double.isInfinite(faster) ? 0 : 1 / (1 - lasts + faster * lasts);
        double inside = (1 - outside * (1 - lasts)) / lasts;
        double to = from + lasts;
        double[] times = to <= 1 ? new double[] {0, from, to, 1} : new double[] {0, to - 1, from, 1};
        double[] shares = new double[4];
        for (int i = 1; i < 4; i++) {
            boolean within = (i == 2) == (to <= 1);
            shares[i] = shares[i - 1] + (within ? inside : outside) * (times[i] - times[i - 1]);
        }
        shares[3] = 1;
        return new DayShape(times, shares);
    }

    /** Days' worth that has come from the first midnight to a time. */
    public @Unit("d") double by(@Unit("d") double time) {
        double days = Math.floor(time);
        return days + share(time - days);
    }

    private double share(double timeOfDay) {
        for (int i = times.length - 1; i > 0; i--) {
            if (timeOfDay >= times[i - 1]) {
                double length = times[i] - times[i - 1];
                double part = length > 0 ? (timeOfDay - times[i - 1]) / length : 1;
                return shares[i - 1] + part * (shares[i] - shares[i - 1]);
            }
        }
        return 0;
    }

    /**
     * Days' worth that a time is ahead of a day in which all comes evenly: a wave without a mean, 0 for {@link #EVEN}.
     */
    @Unit("d")
    double ahead(@Unit("d") double time) {
        double mean = 0;
        for (int i = 1; i < times.length; i++) {
            mean += (times[i] - times[i - 1]) * (shares[i] + shares[i - 1]) / 2;
        }
        return by(time) - time - (mean - 0.5);
    }
}
