package org.tidewright.twin.mechanism.gas;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.BubbleExchange;
import org.tidewright.twin.law.gas.Bubbles;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Oxygen and carbon dioxide off the bubbles of an air stone or a skimmer.
 *
 * @param oxygenStore the air as a source of oxygen
 * @param air what the bubbles are made of
 * @param airFlow at the stone
 * @param depth through which they rise
 * @param waterFlow through the chamber in which they rise; infinite for a stone in the open water
 * @param efficiency share of the air's oxygen taken up per metre
 */
public record BubbleGases(
        Body water,
        Body oxygenStore,
        AirOver air,
        @Unit("m^3/s") double airFlow,
        @Unit("m") double depth,
        @Unit("m^3/s") double waterFlow,
        Parameter efficiency,
        Supply supply)
        implements Mechanism {
    @Override
    public String name() {
        return "bubbles";
    }

    @Override
    public void act(View now, Transfers out) {
        if (!supply.isOn(now)) {
            return;
        }
        double temperature = now.temperature(water);
        double standard = Bubbles.standardRate(airFlow, depth, now.value(efficiency));
        double conductance = Bubbles.conductance(standard, Bubbles.ALPHA, temperature);
        Solution solution = now.solution(water);
        double ofOxygen = BubbleExchange.through(conductance, waterFlow);
        out.move(Stock.OXYGEN, oxygenStore, water, ofOxygen * (solution.oxygenAtRest() - now.oxygen(water)));
        double pressure = air.carbonDioxide(now);
        double perAtmosphere = solution.carbonDioxideUnder(1);
        double ofCarbonDioxide = BubbleExchange.through(
                BubbleExchange.carbonDioxideConductance(conductance, airFlow, perAtmosphere, temperature), waterFlow);
        out.move(
                Stock.INORGANIC_CARBON,
                air.body(),
                water,
                ofCarbonDioxide * (perAtmosphere * pressure - solution.carbonDioxide()));
    }
}
