package org.tidewright.twin.mechanism.carbonate;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.CalciumReactor;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A calcium reactor whose chamber is held at a pH by its dose of carbon dioxide: lime of its media and what is left of the
 * gas come back with the effluent.
 */
public final class Reactor implements Mechanism {
    private final String name;
    private final Body water;
    private final Body store;
    private final CalciumReactor chamber;
    private final double ph;
    private final double mediaMass;
    private final Setting effluent;
    private final Parameter rateConstant;
    private final Supply supply;
    private final Recipe dissolution;

    /**
     * A reactor.
     *
     * @param store media and gas
     * @param chamber its chemistry at the water's temperature and salinity
     * @param ph on the total scale
     * @param effluent setting: flow, m³/s
     * @param rateConstant of dissolution, m³/(kg·s)
     */
    public Reactor(
            String name,
            Body water,
            Body store,
            CalciumReactor chamber,
            @Unit("1") double ph,
            @Unit("kg") double mediaMass,
            Setting effluent,
            Parameter rateConstant,
            Supply supply) {
        this.name = name;
        this.water = water;
        this.store = store;
        this.chamber = chamber;
        this.ph = ph;
        this.mediaMass = mediaMass;
        this.effluent = effluent;
        this.rateConstant = rateConstant;
        this.supply = supply;
        dissolution = Lime.from(name, store, water, CalciumReactor.MAGNESIUM_SHARE);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double flow = now.value(effluent);
        if (flow <= 0 || !supply.isOn(now)) {
            return;
        }
        double alkalinity = now.concentration(water, Stock.ALKALINITY);
        double saturated = chamber.saturatedAtPh(
                ph, alkalinity, now.concentration(water, Stock.CALCIUM), CalciumReactor.MAGNESIUM_SHARE);
        double dissolved = CalciumReactor.supply(flow, mediaMass, now.value(rateConstant), saturated);
        out.run(dissolution, dissolved);
        double perVolume = dissolved / flow;
        double leaving = chamber.inorganicCarbonAtPh(alkalinity + 2 * perVolume, ph);
        double gas = leaving - now.concentration(water, Stock.INORGANIC_CARBON) - perVolume;
        out.move(Stock.INORGANIC_CARBON, store, water, flow * Math.max(0, gas));
    }
}
