package org.tidewright.husbandry.ph;

import org.tidewright.seawater.unit.Unit;

/**
 * What a lever does.
 *
 * @param pressure of carbon dioxide that the water comes to
 * @param ph that an electrode comes to read, NBS scale
 * @param leastGain of pH, 5th of 100 draws
 * @param mostGain of pH, 95th of 100 draws; where it comes to {@link Lever#LEAST_PRESSURE}, the least that this end may be
 * @param mostPressure of carbon dioxide, at that end
 */
public record Effect(
        @Unit("atm") double pressure,
        @Unit("1") double ph,
        @Unit("1") double leastGain,
        @Unit("1") double mostGain,
        @Unit("atm") double mostPressure) {
    /** Whether the usual goes further than a balance follows. */
    public boolean isBeyond() {
        return pressure <= Lever.LEAST_PRESSURE;
    }

    /** Whether the strongest goes further than a balance follows. */
    public boolean isOpenEnded() {
        return mostPressure <= Lever.LEAST_PRESSURE;
    }
}
