package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Phosphate on iron oxide media and on rock and sand; it comes off again where the water falls below what the load
 * stands in equilibrium with.
 */
public final class PhosphateAdsorption {
    private static final double REFERENCE_LOAD = 10e-3 / ElementMass.PHOSPHORUS; // mol/kg, of 10 mg/g
    private static final double REFERENCE_CONCENTRATION = 0.3e-3 / ElementMass.PHOSPHORUS; // mol/m^3, of 0.3 mg/L

    /** Share of the equilibrium load that a reactor reaches; an estimate. */
    @Unit("1")
    public static final Spread USABLE = new Spread(0.3, 0.45, 0.6);

    /** Share a fresh bed takes out of the water that passes once; an estimate. */
    @Unit("1")
    public static final Spread SINGLE_PASS = new Spread(0.2, 0.3, 0.6);

    /** Phosphate on rock and sand over that in the water; weak, from memory. */
    @Unit("1")
    public static final Spread RESERVOIR_RATIO = new Spread(5, 20, 50);

    /** Specific rate at which the rock and sand follow the water; from memory. */
    @Unit("1/s")
    public static final Spread RESERVOIR_EXCHANGE = Spread.perDay(0.02, 0.05, 0.1);

    private PhosphateAdsorption() {}

    /**
     * Load in equilibrium with the water.
     *
     * <pre>q(C) = 10 mg/g (C / 0.3 mg/L)^(1/3), phosphorus</pre>
     *
     * @param concentration C; at or below zero the load is 0
     * @return phosphorus per dry mass of media
     * @source 10 mg/g at 0.3 mg/L in seawater, goethite and akaganeite, J. Colloid Interface Sci. 2006; exponent 1/3,
     *     Golterman 1995, Hydrobiologia 315, 59
     * @validity measured near 0.3 mg/L; below it an extrapolation. Silicate, which takes room, is left out
     */
    @Unit("mol/kg")
    public static double equilibriumLoad(@Unit("mol/m^3") double concentration) {
        Bounds.finite(concentration, "mol/m^3", "phosphate");
        return REFERENCE_LOAD * Math.cbrt(Math.max(0, concentration) / REFERENCE_CONCENTRATION);
    }

    /**
     * Concentration that a load stands in equilibrium with, the inverse of {@link #equilibriumLoad}.
     *
     * <pre>C(q) = 0.3 mg/L (q / (u 10 mg/g))^3</pre>
     *
     * @param load q, phosphorus per dry mass of media
     * @param usable u, {@link #USABLE}
     * @return phosphorus in the water; smooth at no load
     * @source as {@link #equilibriumLoad}
     * @validity as {@link #equilibriumLoad}
     */
    @Unit("mol/m^3")
    public static double equilibriumConcentration(@Unit("mol/kg") double load, @Unit("1") double usable) {
        Bounds.within(load, "mol/kg", -1e-3, 100, "load");
        Bounds.within(usable, "1", 0.01, 1, "usable share");
        double part = Math.max(0, load) / (usable * REFERENCE_LOAD);
        return REFERENCE_CONCENTRATION * part * part * part;
    }

    /**
     * Phosphorus that passes from the water to the media of a reactor; negative where the media give back.
     *
     * <pre>J = F e (C - C(q))</pre>
     *
     * @param flow F of water through the media
     * @param singlePass e, {@link #SINGLE_PASS}
     * @param concentration C in the water
     * @param load q, phosphorus per dry mass of media
     * @param usable u, {@link #USABLE}
     * @return amount per time
     * @source linear driving force, Glueckauf 1955, Trans. Faraday Soc. 51, 1540
     * @validity one mixed bed
     */
    @Unit("mol/s")
    public static double uptake(
            @Unit("m^3/s") double flow,
            @Unit("1") double singlePass,
            @Unit("mol/m^3") double concentration,
            @Unit("mol/kg") double load,
            @Unit("1") double usable) {
        Bounds.within(flow, "m^3/s", 0, 10, "flow");
        Bounds.within(singlePass, "1", 0, 1, "share of a single pass");
        Bounds.finite(concentration, "mol/m^3", "phosphate");
        return flow * singlePass * (Math.max(0, concentration) - equilibriumConcentration(load, usable));
    }

    /**
     * Phosphorus that passes from the water to the rock and sand; negative where they give back.
     *
     * <pre>J = k (r V C - R)</pre>
     *
     * @param held R, phosphorus on rock and sand that can exchange
     * @param dissolved V C, phosphorus in the water
     * @param ratio r, {@link #RESERVOIR_RATIO}
     * @param exchange k, {@link #RESERVOIR_EXCHANGE}
     * @return amount per time
     * @source linear exchange of two pools; the numbers from memory
     * @validity weak: an order of magnitude
     */
    @Unit("mol/s")
    public static double reservoirUptake(
            @Unit("mol") double held,
            @Unit("mol") double dissolved,
            @Unit("1") double ratio,
            @Unit("1/s") double exchange) {
        Bounds.finite(held, "mol", "phosphorus held");
        Bounds.finite(dissolved, "mol", "phosphorus dissolved");
        Bounds.within(ratio, "1", 0, 1e4, "ratio of the reservoir");
        Bounds.notNegative(exchange, "1/s", "rate of exchange");
        return exchange * (ratio * dissolved - held);
    }
}
