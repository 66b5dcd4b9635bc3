package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Bubbles;

/** Foam fractionation: what rising bubbles carry off, what their air does to the water's gases, how much water goes. */
public final class Skimming {
    /**
     * Share of total organic carbon that foam can take at all: trials on tank water levelled off after 20 to 35 %
     * (Feldman 2009 and 2010, in an aquarists' journal).
     */
    @Unit("1")
    public static final Spread SKIMMABLE = new Spread(0.20, 0.27, 0.35);

    /** Share of it taken out of the water that passes once; an estimate. */
    @Unit("1")
    public static final Spread SINGLE_PASS = new Spread(0.1, 0.3, 0.6);

    /** Share of the day's organic waste, its nitrogen and phosphorus, caught before it rots; an estimate. */
    @Unit("1")
    public static final Spread WASTE_CAUGHT = new Spread(0.05, 0.20, 0.35);

    /** Water that leaves with the foam, share of the system's volume per time, 0.1 to 1 % a day; common practice. */
    @Unit("1/s")
    public static final Spread WETNESS = Spread.perDay(0.001, 0.003, 0.01);

    /** Oxygen that a column's fine air gives up per metre; as a fine stone, from memory. */
    @Unit("1/m")
    public static final Spread OXYGEN_PER_METRE = new Spread(0.04, Bubbles.FINE, 0.12);

    private Skimming() {}

    /**
     * Organic carbon carried off with the foam; nitrogen and phosphorus go in proportion to what the pool holds.
     *
     * <pre>J = F e C_s</pre>
     *
     * @param flow F of water through the column
     * @param singlePass e, {@link #SINGLE_PASS}
     * @param skimmable C_s, organics that foam can take
     * @return amount per time
     * @source first order approach to a plateau, Feldman 2009
     * @validity clean column, steady foam
     */
    @Unit("mol/s")
    public static double removed(
            @Unit("m^3/s") double flow, @Unit("1") double singlePass, @Unit("mol/m^3") double skimmable) {
        Bounds.within(flow, "m^3/s", 0, 10, "flow");
        Bounds.within(singlePass, "1", 0, 1, "share of a single pass");
        Bounds.finite(skimmable, "mol/m^3", "skimmable organics");
        return flow * singlePass * Math.max(0, skimmable);
    }

    /**
     * Exchange of oxygen with the column's air, as a flow of water brought to saturation with that air.
     *
     * <pre>Bubbles.conductance of Q 0.279 kg/m^3 e z</pre>
     *
     * @param airFlow Q drawn in
     * @param path z, depth of water that the air rises through
     * @param perMetre e, {@link #OXYGEN_PER_METRE}
     * @param alpha {@link Bubbles#ALPHA}
     * @param temperature of the water, ITS-90
     * @return volume per time
     * @source {@link Bubbles}: ASCE/EWRI 2-06, from memory
     * @validity the short column of a skimmer taken as an air stone at that depth
     */
    @Unit("m^3/s")
    public static double oxygenConductance(
            @Unit("m^3/s") double airFlow,
            @Unit("m") double path,
            @Unit("1/m") double perMetre,
            @Unit("1") double alpha,
            @Unit("degC") double temperature) {
        return Bubbles.conductance(Bubbles.standardRate(airFlow, path, perMetre), alpha, temperature);
    }

    /**
     * Water that leaves with the foam.
     *
     * <pre>Q = w V</pre>
     *
     * @param volume V of the system
     * @param wetness w, {@link #WETNESS}
     * @return volume per time
     * @source common practice
     * @validity set by the keeper, from dry to wet foam
     */
    @Unit("m^3/s")
    public static double skimmate(@Unit("m^3") double volume, @Unit("1/s") double wetness) {
        Bounds.within(volume, "m^3", 0, 1e6, "volume");
        return volume * Bounds.within(wetness, "1/s", 0, 1e-3, "wetness");
    }
}
