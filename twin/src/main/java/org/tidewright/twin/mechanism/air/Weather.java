package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.unit.Unit;

/** The temperature outdoors along a run. */
@FunctionalInterface
public interface Weather {
    @Unit("degC")
    double temperature(@Unit("s") double time);

    /** The same all the time. */
    static Weather constant(@Unit("degC") double temperature) {
        return time -> temperature;
    }

    /** One temperature until a moment, and from then on weather that counts its time from there. */
    static Weather from(@Unit("s") double moment, @Unit("degC") double before, Weather then) {
        return time -> time < moment ? before : then.temperature(time - moment);
    }

    /**
     * Straight lines between given points; before the first and after the last it stays.
     *
     * @param times rising
     * @param temperatures as many
     */
    static Weather series(@Unit("s") double[] times, @Unit("degC") double[] temperatures) {
        if (times.length == 0 || times.length != temperatures.length) {
            throw new IllegalArgumentException(
                    "a weather series needs as many times as temperatures and at least one, not " + times.length
                            + " and " + temperatures.length);
        }
        for (int i = 1; i < times.length; i++) {
            if (!(times[i] > times[i - 1])) {
                throw new IllegalArgumentException(
                        "times of a weather series must rise; " + times[i] + " s comes after " + times[i - 1] + " s");
            }
        }
        double[] at = times.clone();
        double[] values = temperatures.clone();
        return time -> {
            int after = java.util.Arrays.binarySearch(at, time);
            after = after >= 0 ? after : -after - 1;
            if (after == 0) {
                return values[0];
            } else if (after == at.length) {
                return values[at.length - 1];
            }
            double share = (time - at[after - 1]) / (at[after] - at[after - 1]);
            return values[after - 1] + share * (values[after] - values[after - 1]);
        };
    }
}
