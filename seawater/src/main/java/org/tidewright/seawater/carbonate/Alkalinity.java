package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Alkalinity between the units of the trade, which are per litre, and of chemistry, which are per kilogram. One mole of
 * alkalinity neutralises one mole of hydrogen ion: mol/m^3 is meq/L.
 */
public final class Alkalinity {
    /** One German degree is 10 mg/L of CaO, 56.0774 g/mol, two equivalents a mole: 0.35665 meq/L. */
    @Unit("mol/m^3")
    public static final double GERMAN_DEGREE = 2 * 10 / 56.0774;

    /** Half the molar mass of CaCO3, 100.0869 g/mol: IUPAC standard atomic weights of 2021. */
    @Unit("g/mol")
    public static final double CALCIUM_CARBONATE_EQUIVALENT = 100.0869 / 2;

    private Alkalinity() {}

    /**
     * Alkalinity from degrees of German carbonate hardness.
     *
     * <pre>1 dKH = 10 mg/L CaO = 0.35665 meq/L = 17.848 mg/L CaCO3</pre>
     *
     * @param degrees dKH
     * @return per volume
     * @source definition of the German degree; molar mass of CaO from the IUPAC standard atomic weights
     * @validity everywhere
     * @checkvalue 1 meq/L is 2.8039 dKH
     */
    @Unit("mol/m^3")
    public static double fromGermanDegrees(@Unit("dKH") double degrees) {
        return degrees * GERMAN_DEGREE;
    }

    /**
     * Alkalinity in degrees of German carbonate hardness.
     *
     * @param alkalinity per volume
     * @return dKH
     * @source as {@link #fromGermanDegrees}
     * @validity everywhere
     */
    @Unit("dKH")
    public static double toGermanDegrees(@Unit("mol/m^3") double alkalinity) {
        return alkalinity / GERMAN_DEGREE;
    }

    /**
     * Alkalinity from milligrams of calcium carbonate per litre.
     *
     * @param asCalciumCarbonate mg/L
     * @return per volume
     * @source half the molar mass of CaCO3
     * @validity everywhere
     * @checkvalue 50.04 mg/L is 1 meq/L
     */
    @Unit("mol/m^3")
    public static double fromCalciumCarbonate(@Unit("mg/L") double asCalciumCarbonate) {
        return asCalciumCarbonate / CALCIUM_CARBONATE_EQUIVALENT;
    }

    /**
     * Alkalinity as milligrams of calcium carbonate per litre.
     *
     * @param alkalinity per volume
     * @return mg/L
     * @source as {@link #fromCalciumCarbonate}
     * @validity everywhere
     */
    @Unit("mg/L")
    public static double toCalciumCarbonate(@Unit("mol/m^3") double alkalinity) {
        return alkalinity * CALCIUM_CARBONATE_EQUIVALENT;
    }

    /**
     * Alkalinity per kilogram of seawater from that per volume.
     *
     * @param perVolume mol/m^3, the trade's meq/L
     * @param temperature of the water when its volume was taken, ITS-90
     * @param practicalSalinity PSS-78
     * @return per kilogram of seawater
     * @source EOS-80 density, {@link Density#ofSeawater}
     * @validity as the density; forgetting this step costs 2.3 %
     */
    @Unit("mol/kg")
    public static double perMass(
            @Unit("mol/m^3") double perVolume, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.finite(perVolume, "mol/m^3", "alkalinity");
        return perVolume / Density.ofSeawater(temperature, practicalSalinity);
    }

    /**
     * Alkalinity per volume from that per kilogram of seawater.
     *
     * @param perMass mol/kg
     * @param temperature at which the volume is meant, ITS-90
     * @param practicalSalinity PSS-78
     * @return mol/m^3, the trade's meq/L
     * @source as {@link #perMass}
     * @validity as {@link #perMass}
     */
    @Unit("mol/m^3")
    public static double perVolume(
            @Unit("mol/kg") double perMass, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.finite(perMass, "mol/kg", "alkalinity");
        return perMass * Density.ofSeawater(temperature, practicalSalinity);
    }
}
