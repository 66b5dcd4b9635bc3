package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * People in the room give off carbon dioxide and vapour.
 *
 * @param present setting: how many are there
 * @param carbonDioxide of one
 * @param vapour of one, as liquid water
 */
public record People(
        Body people,
        Body air,
        Setting present,
        @Unit("mol/s") double carbonDioxide,
        @Unit("m^3/s") double vapour) implements Mechanism {
    @Override
    public String name() {
        return "people in the room";
    }

    @Override
    public void act(View now, Transfers out) {
        double count = now.value(present);
        if (count > 0) {
            out.move(Stock.INORGANIC_CARBON, people, air, count * carbonDioxide);
            out.move(Stock.WATER, people, air, count * vapour);
        }
    }
}
