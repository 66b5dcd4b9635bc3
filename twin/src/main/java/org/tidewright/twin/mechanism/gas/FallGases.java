package org.tidewright.twin.mechanism.gas;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
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
    /** Diffusion through the film is to the power of a half, and so is a disturbed surface's transfer. */
    private static final double CARBON_DIOXIDE_OVER_OXYGEN = 0.93;

    @Override
    public String name() {
        return "gas exchange at the overflow";
    }

    @Override
    public void act(View now, Transfers out) {
        if (!pump.isOn(now)) {
            return;
        }
        double ratio =
                WeirAeration.deficitRatio(WeirAeration.CLEAN_WATER, now.value(form), height, now.temperature(water));
        double conductance = WeirAeration.conductance(flow, ratio);
        Solution solution = now.solution(water);
        out.move(Stock.OXYGEN, oxygenStore, water, conductance * (solution.oxygenAtRest() - now.oxygen(water)));
        double atRest = solution.carbonDioxideUnder(air.carbonDioxide(now));
        out.move(
                Stock.INORGANIC_CARBON,
                air.body(),
                water,
                CARBON_DIOXIDE_OVER_OXYGEN * conductance * (atRest - solution.carbonDioxide()));
    }
}
