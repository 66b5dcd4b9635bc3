package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.unit.Unit;

/**
 * The carbonate system of one water after another, from alkalinity and inorganic carbon, for a model that asks a million
 * times about waters that follow each other. Nothing is allocated per water. An instance holds what it works on: it belongs
 * to one thread, and the state it gives is that of the last water only. Each solution starts from the last one and ends at
 * the same root to rounding.
 */
public final class RepeatedCarbonate {
    private final BoronRatio boron;
    private final CarbonicAcid carbonicAcid;
    private final Equilibria equilibria = new Equilibria();
    private final CarbonateState state = new CarbonateState(equilibria);

    /** Of the last water: the next is seldom far from it. */
    private double hydrogen;

    /**
     * A solver with these constants.
     *
     * @param boron whose ratio of boron to salinity
     * @param carbonicAcid whose constants for carbonic acid
     */
    public RepeatedCarbonate(BoronRatio boron, CarbonicAcid carbonicAcid) {
        this.boron = boron;
        this.carbonicAcid = carbonicAcid;
    }

    /**
     * The state of a water; valid until the next is asked for.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param calcium all of it
     * @param phosphate all phosphoric acid and its ions
     * @param ammonia NH3 and NH4+
     * @param alkalinity total
     * @param inorganicCarbon dissolved
     * @throws IllegalArgumentException where a number cannot be meant
     */
    public CarbonateState solve(
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("mol/kg") double calcium,
            @Unit("mol/kg") double phosphate,
            @Unit("mol/kg") double ammonia,
            @Unit("mol/kg") double alkalinity,
            @Unit("mol/kg") double inorganicCarbon) {
        equilibria.set(temperature, practicalSalinity, carbonicAcid);
        equilibria.setTotals(boron.totalBorate(practicalSalinity), calcium, phosphate, 0, ammonia);
        KnownPair.alkalinity(alkalinity);
        KnownPair.carbon(inorganicCarbon);
        hydrogen = hydrogen > 0
                ? AlkalinityBalance.withCarbonNear(equilibria, alkalinity, inorganicCarbon, hydrogen)
                : AlkalinityBalance.withCarbon(equilibria, alkalinity, inorganicCarbon);
        state.set(hydrogen, alkalinity, inorganicCarbon);
        return state;
    }

    /** Solubility of carbon dioxide in the last water, per unit of fugacity. */
    @Unit("mol/(kg*atm)")
    public double solubility() {
        return equilibria.k0;
    }
}
