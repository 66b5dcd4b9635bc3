package org.tidewright.twin.rehearsal;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.mechanism.air.Weather;

/**
 * The temperature outdoors during a rehearsal: points joined by straight lines, one point for a constant.
 *
 * @param time seconds after the event, rising
 * @param temperature at those times
 */
public record Outdoors(
        @Unit("s") double[] time, @Unit("degC") double[] temperature) {
    /** Temperatures that weather has been measured to take, with room to spare. */
    private static final double COLDEST = -60;

    private static final double HOTTEST = 60;

    public Outdoors {
        Weather.series(time, temperature); // refuses what is no series
        for (double value : temperature) {
            if (!(value >= COLDEST && value <= HOTTEST)) {
                throw new IllegalArgumentException(
                        "an outdoor temperature of " + value + " °C is outside " + COLDEST + " to " + HOTTEST + " °C");
            }
        }
    }

    public static Outdoors constant(@Unit("degC") double temperature) {
        return new Outdoors(new double[] {0}, new double[] {temperature});
    }

    public boolean isConstant() {
        return time.length == 1;
    }

    public Weather weather() {
        return isConstant() ? Weather.constant(temperature[0]) : Weather.series(time, temperature);
    }
}
