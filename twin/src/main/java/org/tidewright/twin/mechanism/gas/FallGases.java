package org.tidewright.twin.mechanism.gas;

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
import org.tidewright.twin.law.gas.WeirAeration;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Oxygen and carbon dioxide that the water exchanges as it falls over the overflow into the box. It is counted in the
 * water above the fall, whence it comes.
 *
 * @param flow over the fall while the pump runs
 * @param height of the fall
 * @param form b of the fall
 */
public record FallGases(
        Body water,
        Body oxygenStore,
        AirOver air,
        @Unit("m^3/s") double flow,
        @Unit("m") double height,
        Parameter form,
        Supply pump)
        implements Mechanism {
    @Override
    public String name() {
        return "gas exchange at the overflow";
    }

    @Override
    public void act(View now, Transfers out) {
        if (!pump.isOn(now)) {
            return;
        }
        double temperature = now.temperature(water);
        double deficits = WeirAeration.deficitRatio(WeirAeration.CLEAN_WATER, now.value(form), height, temperature);
        double conductance = WeirAeration.conductance(flow, deficits);
        Solution solution = now.solution(water);
        out.move(Stock.OXYGEN, oxygenStore, water, conductance * (solution.oxygenAtRest() - now.oxygen(water)));
        double atRest = solution.carbonDioxideUnder(air.carbonDioxide(now));
        out.move(
                Stock.INORGANIC_CARBON,
                air.body(),
                water,
                CarbonDioxideTransfer.overOxygen(temperature, GasTransfer.RIPPLED)
                        * conductance
                        * (atRest - solution.carbonDioxide()));
    }
}
