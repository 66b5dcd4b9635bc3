package org.tidewright.twin.mechanism.gas;

import java.util.List;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.CarbonDioxideTransfer;
import org.tidewright.twin.law.gas.GasTransfer;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Oxygen and carbon dioxide between air and water. The surface is still unless one of its stirrers runs.
 *
 * @param oxygenStore the air as a source of oxygen, which a room never runs short of
 * @param usualSchmidt of oxygen at the temperature the two velocities are given for
 * @param still transfer velocity of oxygen over still water
 * @param stirred the same while a stirrer runs
 * @param cover factor of what lies over the water, 1 for nothing
 * @param stirrers supplies of the pumps that move this body's surface
 */
public record SurfaceGases(
        Body water,
        Body oxygenStore,
        AirOver air,
        @Unit("m^2") double area,
        @Unit("1") double usualSchmidt,
        Parameter still,
        Parameter stirred,
        Parameter cover,
        List<Supply> stirrers)
        implements Mechanism {
    public SurfaceGases {
        stirrers = List.copyOf(stirrers);
    }

    @Override
    public String name() {
        return "gas exchange at the surface";
    }

    @Override
    public void act(View now, Transfers out) {
        double temperature = now.temperature(water);
        boolean moved = isMoved(now);
        double exponent = moved ? GasTransfer.RIPPLED : GasTransfer.SMOOTH;
        double schmidt = SchmidtNumber.ofOxygen(temperature);
        double velocity =
                now.value(moved ? stirred : still) * now.value(cover) * Math.pow(usualSchmidt / schmidt, exponent);
        Solution solution = now.solution(water);
        out.move(
                Stock.OXYGEN,
                oxygenStore,
                water,
                area * GasTransfer.flux(velocity, solution.oxygenAtRest(), now.oxygen(water)));
        double ofCarbonDioxide = CarbonDioxideTransfer.velocity(velocity, temperature, exponent);
        if (!moved) {
            // Only a film as thick as that of still water lasts long enough for carbon dioxide to react in it.
            double salinity = now.salinity(water);
            ofCarbonDioxide *= CarbonDioxideTransfer.enhancement(
                    ofCarbonDioxide,
                    solution.ph(),
                    temperature,
                    salinity,
                    CarbonicAcid.LUEKER_2000.first(temperature, salinity),
                    CarbonicAcid.LUEKER_2000.second(temperature, salinity));
        }
        double atRest = solution.carbonDioxideUnder(air.carbonDioxide(now));
        out.move(
                Stock.INORGANIC_CARBON,
                air.body(),
                water,
                area * ofCarbonDioxide * (atRest - solution.carbonDioxide()));
    }

    private boolean isMoved(View now) {
        for (int i = 0; i < stirrers.size(); i++) {
            if (stirrers.get(i).isOn(now)) {
                return true;
            }
        }
        return false;
    }
}
