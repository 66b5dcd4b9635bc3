package org.tidewright.twin.mechanism.gas;

import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.Bubbles;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Oxygen off the bubbles of an air stone.
 *
 * @param airFlow at the stone
 * @param depth of the stone
 * @param efficiency share of the air's oxygen taken up per metre
 */
public record AirStone(
        Body water,
        Body air,
        @Unit("m^3/s") double airFlow,
        @Unit("m") double depth,
        Parameter efficiency,
        Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        if (!supply.isOn(now)) {
            return;
        }
        double temperature = now.temperature(water);
        double standard = Bubbles.standardRate(airFlow, depth, now.value(efficiency));
        double saturation = OxygenSolubility.perVolume(temperature, now.salinity(water));
        out.move(
                Stock.OXYGEN,
                air,
                water,
                Bubbles.rate(standard, Bubbles.ALPHA, saturation, now.oxygen(water), temperature));
    }
}
