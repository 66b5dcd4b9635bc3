package org.tidewright.twin.mechanism.gas;

import java.util.List;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.GasTransfer;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Oxygen between air and water. The surface is still unless one of its stirrers runs.
 *
 * @param usualSchmidt of oxygen at the temperature the two velocities are given for
 * @param still transfer velocity of oxygen over still water
 * @param stirred the same while a stirrer runs
 * @param cover factor of what lies over the water, 1 for nothing
 * @param stirrers supplies of the pumps that move this body's surface
 */
public record SurfaceOxygen(
        Body water,
        Body air,
        @Unit("m^2") double area,
        @Unit("1") double usualSchmidt,
        Parameter still,
        Parameter stirred,
        Parameter cover,
        List<Supply> stirrers)
        implements Mechanism {
    public SurfaceOxygen {
        stirrers = List.copyOf(stirrers);
    }

    @Override
    public void act(View now, Transfers out) {
        double temperature = now.temperature(water);
        boolean moved = isMoved(now);
        double velocity = now.value(moved ? stirred : still);
        double exponent = moved ? GasTransfer.RIPPLED : GasTransfer.SMOOTH;
        double warmth = Math.pow(usualSchmidt / SchmidtNumber.ofOxygen(temperature), exponent);
        double saturation = OxygenSolubility.perVolume(temperature, now.salinity(water));
        double flux = GasTransfer.flux(velocity * warmth * now.value(cover), saturation, now.oxygen(water));
        out.move(Stock.OXYGEN, air, water, area * flux);
    }

    private boolean isMoved(View now) {
        for (Supply stirrer : stirrers) {
            if (stirrer.isOn(now)) {
                return true;
            }
        }
        return false;
    }
}
