package org.tidewright.seawater.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Oxygen as a share of what the water would hold in equilibrium with the air above it, both ways; a hundred times the
 * share is the per cent of an oxygen meter. The pressure is that of the barometer at the water: leaving it out at 1500
 * m makes saturated water look like 83 %.
 */
public final class OxygenSaturation {
    private static final double MOST = 10;

    private OxygenSaturation() {}

    /**
     * Share of saturation from a concentration by volume.
     *
     * @param massPerVolume milligrams of O2 per litre of seawater
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return share of saturation, 1 in equilibrium with the air
     * @source definition, with {@link OxygenSolubility}
     * @validity as {@link OxygenSolubility#perMass} and {@link OxygenSolubility#pressureFactor}
     */
    @Unit("1")
    public static double ofMassPerVolume(
            @Unit("mg/L") double massPerVolume,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        Bounds.within(massPerVolume, "mg/L", 0, 100, "oxygen", "is it in umol/kg or per cent?");
        return massPerVolume / atSaturation(temperature, practicalSalinity, pressure);
    }

    /**
     * Concentration by volume from a share of saturation, the inverse of {@link #ofMassPerVolume}.
     *
     * @param share of saturation, 1 in equilibrium with the air
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return milligrams of O2 per litre of seawater
     * @source definition, with {@link OxygenSolubility}
     * @validity as {@link OxygenSolubility#perMass} and {@link OxygenSolubility#pressureFactor}
     */
    @Unit("mg/L")
    public static double toMassPerVolume(
            @Unit("1") double share,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        return share(share) * atSaturation(temperature, practicalSalinity, pressure);
    }

    /**
     * Share of saturation from a concentration by mass.
     *
     * @param perMass micromoles of O2 per kilogram of seawater
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return share of saturation, 1 in equilibrium with the air
     * @source definition, with {@link OxygenSolubility}
     * @validity as {@link OxygenSolubility#perMass} and {@link OxygenSolubility#pressureFactor}
     */
    @Unit("1")
    public static double ofPerMass(
            @Unit("umol/kg") double perMass,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        Bounds.within(perMass, "umol/kg", 0, 5000, "oxygen", "is it in nmol/kg?");
        return perMass
                / OxygenSolubility.perMass(temperature, practicalSalinity)
                / OxygenSolubility.pressureFactor(temperature, practicalSalinity, pressure);
    }

    /**
     * Concentration by mass from a share of saturation, the inverse of {@link #ofPerMass}.
     *
     * @param share of saturation, 1 in equilibrium with the air
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return micromoles of O2 per kilogram of seawater
     * @source definition, with {@link OxygenSolubility}
     * @validity as {@link OxygenSolubility#perMass} and {@link OxygenSolubility#pressureFactor}
     */
    @Unit("umol/kg")
    public static double toPerMass(
            @Unit("1") double share,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure) {
        return share(share)
                * OxygenSolubility.perMass(temperature, practicalSalinity)
                * OxygenSolubility.pressureFactor(temperature, practicalSalinity, pressure);
    }

    private static double atSaturation(double temperature, double practicalSalinity, double pressure) {
        return OxygenSolubility.massPerVolume(temperature, practicalSalinity)
                * OxygenSolubility.pressureFactor(temperature, practicalSalinity, pressure);
    }

    private static double share(double share) {
        return Bounds.within(share, "1", 0, MOST, "share of oxygen saturation", "is it in per cent?");
    }
}
