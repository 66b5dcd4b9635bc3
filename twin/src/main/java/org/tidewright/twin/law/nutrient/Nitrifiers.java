package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * One of the two guilds that turn ammonia into nitrate, in the form of a capacity: what the cells present could oxidise
 * at 25 degC with plenty of everything. Cells and capacity are the same thing in two units, C = mu X / Y.
 *
 * @param growth mu, specific growth at 25 degC with plenty of everything
 * @param decay b, specific loss
 * @param halfSaturation K of what is oxidised, ammonia or nitrite
 * @param oxygenHalfSaturation K of oxygen
 * @param halfInhibition free ammonia that halves the rate; very large for cells it does not hinder
 * @param yield Y, nitrogen into cells per nitrogen oxidised
 * @param oxygenOfOxidation oxygen that the step alone uses per nitrogen
 * @param oxygenOfCells oxygen saved per nitrogen built into cells from what is oxidised
 * @source Monod 1949 with the constants named at {@link #AMMONIA_OXIDISERS} and {@link #NITRITE_OXIDISERS}
 */
public record Nitrifiers(
        @Unit("1/s") double growth,
        @Unit("1/s") double decay,
        @Unit("mol/m^3") double halfSaturation,
        @Unit("mol/m^3") double oxygenHalfSaturation,
        @Unit("mol/m^3") double halfInhibition,
        @Unit("1") double yield,
        @Unit("1") double oxygenOfOxidation,
        @Unit("1") double oxygenOfCells) {
    private static final double MILLIGRAM_N = 1e-3 / ElementMass.NITROGEN; // mol/m^3 in mg/L
    private static final double MILLIGRAM_OXYGEN = 1e-3 / 31.9988e-3; // mol/m^3 in mg/L

    /** C5H7O2N, the usual formula of cells in wastewater practice, per nitrogen. */
    private static final double CELL_MASS = 113.115e-3; // kg/mol

    /** Five carbons brought from carbon dioxide to the level of cells, four electrons each, four to an oxygen. */
    private static final double OXYGEN_OF_CELL_CARBON = 5;

    /** Nitrite brought to the level of ammonia, six electrons. */
    private static final double OXYGEN_OF_NITRITE = 1.5;

    /** Free ammonia no water holds: cells without that weakness. */
    private static final double NEVER = 1e9;

    /** Growth of attached ammonia oxidisers; 0.86 per day in pure culture, Helder and De Vries 1983. */
    @Unit("1/s")
    public static final Spread AMMONIA_OXIDISER_GROWTH = Spread.perDay(0.2, 0.5, 0.9);

    /** Growth of attached nitrite oxidisers; 1.5 per day in pure culture, Helder and De Vries 1983. */
    @Unit("1/s")
    public static final Spread NITRITE_OXIDISER_GROWTH = Spread.perDay(0.15, 0.38, 1.5);

    /** From memory. */
    @Unit("1/s")
    public static final Spread DECAY = Spread.perDay(0.02, 0.03, 0.1);

    /** Archaea 0.002 mg/L (Martens-Habbena et al. 2009), bacteria 0.78 mg/L (Helder and De Vries 1983). */
    @Unit("mol/m^3")
    public static final Spread AMMONIA_HALF_SATURATION = new Spread(0.002, 0.10, 0.8).times(MILLIGRAM_N);

    /** Usual value from memory; 3.74 mg/L in pure culture, Helder and De Vries 1983. */
    @Unit("mol/m^3")
    public static final Spread NITRITE_HALF_SATURATION = new Spread(0.05, 0.15, 3.7).times(MILLIGRAM_N);

    /** From memory; oxidation failed below 1.0 mg/L in mixed culture, Helder and De Vries 1983. */
    @Unit("mol/m^3")
    public static final Spread AMMONIA_OXIDISER_OXYGEN = new Spread(0.2, 0.5, 1).times(MILLIGRAM_OXYGEN);

    /** From memory; oxidation failed below 3.0 mg/L in mixed culture, Helder and De Vries 1983. */
    @Unit("mol/m^3")
    public static final Spread NITRITE_OXIDISER_OXYGEN = new Spread(0.5, 0.9, 2).times(MILLIGRAM_OXYGEN);

    /** Free ammonia that halves the second step, as nitrogen; from memory. */
    @Unit("mol/m^3")
    public static final Spread FREE_AMMONIA = new Spread(0.1, 0.5, 2).times(MILLIGRAM_N);

    /** From 0.03 to 0.15 g of cells per g of nitrogen; from memory. */
    @Unit("1")
    public static final Spread AMMONIA_OXIDISER_YIELD =
            new Spread(0.03, 0.12, 0.15).times(ElementMass.NITROGEN / CELL_MASS);

    /** From 0.02 to 0.08 g of cells per g of nitrogen; from memory. */
    @Unit("1")
    public static final Spread NITRITE_OXIDISER_YIELD =
            new Spread(0.02, 0.05, 0.08).times(ElementMass.NITROGEN / CELL_MASS);

    /** NH4+ + 1.5 O2 = NO2- + 2 H+ + H2O; usual constants. */
    public static final Nitrifiers AMMONIA_OXIDISERS = ammoniaOxidisers(
            AMMONIA_OXIDISER_GROWTH.usual(),
            DECAY.usual(),
            AMMONIA_HALF_SATURATION.usual(),
            AMMONIA_OXIDISER_OXYGEN.usual(),
            AMMONIA_OXIDISER_YIELD.usual());

    /** NO2- + 0.5 O2 = NO3-; usual constants. */
    public static final Nitrifiers NITRITE_OXIDISERS = nitriteOxidisers(
            NITRITE_OXIDISER_GROWTH.usual(),
            DECAY.usual(),
            NITRITE_HALF_SATURATION.usual(),
            NITRITE_OXIDISER_OXYGEN.usual(),
            FREE_AMMONIA.usual(),
            NITRITE_OXIDISER_YIELD.usual());

    public Nitrifiers {
        Bounds.positive(growth, "1/s", "growth");
        Bounds.notNegative(decay, "1/s", "decay");
        Bounds.positive(halfSaturation, "mol/m^3", "half-saturation");
        Bounds.positive(oxygenHalfSaturation, "mol/m^3", "half-saturation of oxygen");
        Bounds.positive(halfInhibition, "mol/m^3", "half-inhibition");
        Bounds.within(yield, "1", 1e-6, 0.06, "yield");
        Bounds.positive(oxygenOfOxidation, "1", "oxygen of the step");
        Bounds.positive(oxygenOfCells, "1", "oxygen of the cells");
    }

    /** Ammonia oxidisers with constants of their own. */
    public static Nitrifiers ammoniaOxidisers(
            @Unit("1/s") double growth,
            @Unit("1/s") double decay,
            @Unit("mol/m^3") double halfSaturation,
            @Unit("mol/m^3") double oxygenHalfSaturation,
            @Unit("1") double yield) {
        return new Nitrifiers(
                growth, decay, halfSaturation, oxygenHalfSaturation, NEVER, yield, 1.5, OXYGEN_OF_CELL_CARBON);
    }

    /** Nitrite oxidisers with constants of their own; their cells are built from nitrite, which they reduce. */
    public static Nitrifiers nitriteOxidisers(
            @Unit("1/s") double growth,
            @Unit("1/s") double decay,
            @Unit("mol/m^3") double halfSaturation,
            @Unit("mol/m^3") double oxygenHalfSaturation,
            @Unit("mol/m^3") double halfInhibition,
            @Unit("1") double yield) {
        return new Nitrifiers(
                growth,
                decay,
                halfSaturation,
                oxygenHalfSaturation,
                halfInhibition,
                yield,
                0.5,
                OXYGEN_OF_CELL_CARBON + OXYGEN_OF_NITRITE);
    }

    /**
     * Share of the full rate that the water allows.
     *
     * <pre>m = S/(K + S) O/(K_O + O) K_I/(K_I + NH3)</pre>
     *
     * @param substrate S, total ammonia or nitrite as nitrogen
     * @param oxygen O
     * @param freeAmmonia NH3 as nitrogen
     * @return m, 0 to 1
     * @source Monod 1949; inhibition after Anthonisen et al. 1976, J. Water Pollut. Control Fed. 48, 835-852
     * @validity an empirical form for a population
     */
    @Unit("1")
    public double activity(
            @Unit("mol/m^3") double substrate, @Unit("mol/m^3") double oxygen, @Unit("mol/m^3") double freeAmmonia) {
        return Limitation.monod(substrate, halfSaturation)
                * Limitation.monod(oxygen, oxygenHalfSaturation)
                * Limitation.inhibition(freeAmmonia, halfInhibition);
    }

    /**
     * Nitrogen oxidised.
     *
     * <pre>r = C f_T m</pre>
     *
     * @param capacity C
     * @param warmth f_T of {@link Nitrification#warmth}
     * @param activity m of {@link #activity}
     * @return amount per time
     * @source definition of the capacity
     * @validity as its factors
     */
    @Unit("mol/s")
    public double oxidised(@Unit("mol/s") double capacity, @Unit("1") double warmth, @Unit("1") double activity) {
        Bounds.finite(capacity, "mol/s", "capacity");
        return Math.max(0, capacity) * share(warmth, activity);
    }

    /**
     * Change of the capacity with time. Crowding slows growth and not decline.
     *
     * <pre>dC/dt = g C (1 - C/C_max) where g = mu f_T m - b is above 0, else g C</pre>
     *
     * @param capacity C
     * @param most C_max, what the surfaces can carry
     * @param warmth f_T of {@link Nitrification#warmth}
     * @param activity m of {@link #activity}
     * @return capacity per time
     * @source logistic growth on a surface, Verhulst 1838; a simplification of biofilm models
     * @validity as its factors; films shed by force or grazed are left out
     */
    @Unit("mol/s^2")
    public double capacityChange(
            @Unit("mol/s") double capacity,
            @Unit("mol/s") double most,
            @Unit("1") double warmth,
            @Unit("1") double activity) {
        Bounds.finite(capacity, "mol/s", "capacity");
        Bounds.within(most, "mol/s", 1e-20, 1e6, "greatest capacity");
        double net = growth * share(warmth, activity) - decay;
        double present = Math.max(0, capacity);
        return net > 0 ? net * present * (1 - present / most) : net * present;
    }

    /**
     * Capacity of cells.
     *
     * <pre>C = mu X / Y</pre>
     *
     * @param cells X, nitrogen in them
     * @return C
     * @source definition of the yield
     * @validity everywhere
     */
    @Unit("mol/s")
    public double capacity(@Unit("mol") double cells) {
        return growth * Bounds.finite(cells, "mol", "cells") / yield;
    }

    /**
     * Cells of a capacity, the inverse of {@link #capacity}.
     *
     * @param capacity C
     * @return X, nitrogen in the cells
     * @source definition of the yield
     * @validity everywhere
     */
    @Unit("mol")
    public double cells(@Unit("mol/s") double capacity) {
        return yield * Bounds.finite(capacity, "mol/s", "capacity") / growth;
    }

    /**
     * Nitrogen the cells give back, dead or shed for want of room: what was built less what the cells grew by.
     *
     * <pre>Y r - dX/dt</pre>
     *
     * @param oxidised r of {@link #oxidised}
     * @param capacityChange of {@link #capacityChange}
     * @return amount of organic nitrogen per time, not below 0 for a pair found in the same water
     * @source mass balance
     * @validity everywhere
     */
    @Unit("mol/s")
    public double givenBack(@Unit("mol/s") double oxidised, @Unit("mol/s^2") double capacityChange) {
        return yield * Bounds.finite(oxidised, "mol/s", "nitrogen oxidised")
                - yield * Bounds.finite(capacityChange, "mol/s^2", "change of capacity") / growth;
    }

    /**
     * What leaves the water as ammonia or nitrite for each nitrogen oxidised: itself and what goes into cells.
     *
     * <pre>1 + Y</pre>
     *
     * @source mass balance
     * @validity everywhere
     */
    @Unit("1")
    public double takenPerOxidised() {
        return 1 + yield;
    }

    /**
     * Oxygen used for each nitrogen oxidised; what goes into building cells is not burnt.
     *
     * <pre>first step 1.5 - 5 Y, second 0.5 - 6.5 Y</pre>
     *
     * @source balance of electrons with cells C5H7O2N
     * @validity everywhere
     * @checkvalue cells 0.024 per 0.976 of nitrate, all in the first step: 1.88 (1.83/0.976, Ebeling et al. 2006)
     */
    @Unit("1")
    public double oxygenPerOxidised() {
        return oxygenOfOxidation - oxygenOfCells * yield;
    }

    private static double share(double warmth, double activity) {
        Bounds.within(warmth, "1", 0, 100, "warmth");
        return warmth * Bounds.within(activity, "1", 0, 1, "activity");
    }
}
