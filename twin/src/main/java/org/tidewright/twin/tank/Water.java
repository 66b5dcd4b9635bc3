package org.tidewright.twin.tank;

import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.transport.Viscosity;
import org.tidewright.seawater.unit.Unit;

/**
 * The water of a plan as it is kept, and its properties there.
 *
 * @param oxygen before anything fails
 * @param saturation of oxygen at its temperature and salinity, one atmosphere
 */
public record Water(
        @Unit("degC") double temperature,
        @Unit("1") double salinity,
        @Unit("mol/m^3") double oxygen,
        @Unit("mol/m^3") double saturation,
        @Unit("kg/m^3") double density,
        @Unit("J/(kg*K)") double specificHeat,
        @Unit("m^2/s") double viscosity) {
    /** Oxygen of a running reef at night, as a share of saturation: 0.9 to 1; common practice. */
    private static final double USUAL_OXYGEN_SHARE = 0.95;

    public static Water of(Plan plan) {
        double temperature = plan.water().temperature().in("degC");
        double salinity = plan.water().salinity().in("1");
        double saturation = OxygenSolubility.perVolume(temperature, salinity);
        double share = plan.water().oxygenSaturation() == null
                ? USUAL_OXYGEN_SHARE
                : plan.water().oxygenSaturation().in("1");
        double density = Density.ofSeawater(temperature, salinity);
        return new Water(
                temperature,
                salinity,
                share * saturation,
                saturation,
                density,
                SpecificHeat.ofSeawater(temperature, salinity),
                Viscosity.ofSeawater(temperature, salinity) / density);
    }
}
