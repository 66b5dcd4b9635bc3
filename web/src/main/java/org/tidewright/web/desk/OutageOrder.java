package org.tidewright.web.desk;

import org.tidewright.seawater.unit.Unit;

/**
 * Which power cut to rehearse.
 *
 * @param hours how long
 * @param outdoor temperature outdoors, taken as constant
 * @param airHolesBlocked whether no siphon-break hole lets air in
 * @param checkValveWorks whether a check valve in the return is counted on
 * @param backupUsed whether battery and generator of the plan are used
 */
public record OutageOrder(
        @Unit("h") double hours,
        @Unit("degC") double outdoor,
        boolean airHolesBlocked,
        boolean checkValveWorks,
        boolean backupUsed) {
    /** Longest cut a page may ask for, hours. */
    public static final double LONGEST = 168;

    /** Shortest, hours. */
    public static final double SHORTEST = 1;

    public static final double COLDEST = -40;
    public static final double WARMEST = 50;

    public OutageOrder {
        within("hours", hours, SHORTEST, LONGEST, "h");
        within("outdoor", outdoor, COLDEST, WARMEST, "°C");
    }

    public OutageOrder withAirHolesBlocked(boolean blocked) {
        return new OutageOrder(hours, outdoor, blocked, checkValveWorks, backupUsed);
    }

    private static void within(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " is " + value + " " + unit + ", outside " + least + " to " + most + " " + unit);
        }
    }
}
