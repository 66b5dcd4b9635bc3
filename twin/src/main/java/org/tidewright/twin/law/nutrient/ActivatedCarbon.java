package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Activated carbon that takes up dissolved organics, the yellow substance, until it is spent. Sources are weak:
 * capacities are known for dyes and for the organics of drinking water, hardly for those of an aquarium, and one carbon
 * differs from another by a factor of three.
 */
public final class ActivatedCarbon {
    /** Organic carbon that fills it, 10 to 100 mg/g; from memory of drinking water. */
    @Unit("mol/kg")
    public static final Spread CAPACITY = new Spread(10e-3, 40e-3, 100e-3).times(1 / ElementMass.CARBON);

    /** Adsorbable organic carbon at which it is half filled, 0.5 to 5 mg/L; from memory. */
    @Unit("mol/m^3")
    public static final Spread HALF_FILLING = new Spread(0.5e-3, 2e-3, 5e-3).times(1 / ElementMass.CARBON);

    /** Share a fresh bed takes out of the water that passes once; an estimate. */
    @Unit("1")
    public static final Spread SINGLE_PASS = new Spread(0.1, 0.3, 0.6);

    /** Share of dissolved organic carbon that carbon can take at all; from memory. */
    @Unit("1")
    public static final Spread ADSORBABLE = new Spread(0.3, 0.6, 0.8);

    private ActivatedCarbon() {}

    /**
     * Filling in equilibrium with the water.
     *
     * <pre>C / (K + C)</pre>
     *
     * @param concentration C, adsorbable organic carbon
     * @param halfFilling K, {@link #HALF_FILLING}
     * @return share of the capacity, 0 to 1
     * @source Langmuir 1918, J. Am. Chem. Soc. 40, 1361-1403
     * @validity one kind of organics; a mixture fills over a wider range
     */
    @Unit("1")
    public static double equilibriumFilling(
            @Unit("mol/m^3") double concentration, @Unit("mol/m^3") double halfFilling) {
        return Limitation.monod(concentration, halfFilling);
    }

    /**
     * Organic carbon that passes from the water to the activated carbon; negative where it gives back.
     *
     * <pre>J = F e (C (1 - x) - K x)</pre>
     *
     * @param flow F of water through it
     * @param singlePass e, {@link #SINGLE_PASS}
     * @param concentration C, adsorbable organic carbon
     * @param filling x, what it holds over its capacity, 0 to 1
     * @param halfFilling K, {@link #HALF_FILLING}
     * @return amount of carbon per time
     * @source kinetics of Langmuir 1918; nothing passes at {@link #equilibriumFilling}
     * @validity one mixed bed; a factor of three
     */
    @Unit("mol/s")
    public static double uptake(
            @Unit("m^3/s") double flow,
            @Unit("1") double singlePass,
            @Unit("mol/m^3") double concentration,
            @Unit("1") double filling,
            @Unit("mol/m^3") double halfFilling) {
        Bounds.within(flow, "m^3/s", 0, 10, "flow");
        Bounds.within(singlePass, "1", 0, 1, "share of a single pass");
        Bounds.finite(concentration, "mol/m^3", "organic carbon");
        Bounds.within(filling, "1", -0.01, 1.01, "filling");
        Bounds.positive(halfFilling, "mol/m^3", "half-filling");
        double filled = Math.min(1, Math.max(0, filling));
        return flow * singlePass * (Math.max(0, concentration) * (1 - filled) - halfFilling * filled);
    }
}
