package org.tidewright.twin.system;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.OccupantCarbonDioxide;

/** What one person in the room gives off: an adult of 70 kg who sits. */
final class Breath {
    @Unit("mol/s")
    static final double CARBON_DIOXIDE = OccupantCarbonDioxide.rate(
            OccupantCarbonDioxide.Person.MAN_30_TO_60.basalMetabolicRate(70), OccupantCarbonDioxide.SITTING);

    /** Of breath and skin, 50 g an hour, as liquid water; common practice. */
    @Unit("m^3/s")
    static final double VAPOUR = 50e-6 / 3600;

    private Breath() {}
}
