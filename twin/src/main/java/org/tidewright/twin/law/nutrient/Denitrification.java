package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;

/**
 * Nitrate turned into nitrogen gas inside rock and sand, where oxygen is gone. The evidence is weak: a controlled study
 * of rock in coral aquaria found no significant removal of nitrate (Li et al. 2017, Acta Oceanol. Sin. 36(12), 87), and
 * nobody has measured a keeper's sand bed whole. The usual rates below are chosen so that a tank of 200 L with 25 kg of
 * rock and 0.5 m^2 of sand at 10 mg/L loses 1 % of its nitrate a day; none at all is within the range.
 */
public final class Denitrification {
    private static final double MILLIMOLE = 1e-3; // mol

    /** Per area of the bed; reef surfaces 0.05 to 1 mmol per m^2 and day, from memory. */
    @Unit("mol/(m^2*s)")
    public static final Spread SAND = Spread.perDay(0, 0.4, 1).times(MILLIMOLE);

    /** An estimate, a twentieth of the ammonium that rock takes up; not significant in Li et al. 2017. */
    @Unit("mol/(kg*s)")
    public static final Spread ROCK = Spread.perDay(0, 0.009, 0.036).times(MILLIMOLE);

    /**
     * Nitrate at which half the full rate is left. The sand itself is satisfied above 0.018 mol/m^3 (Cook, Kessler and
     * Eyre 2016, Biogeosciences 13); a bed that waits for nitrate to diffuse down goes on rising, so more is taken.
     */
    @Unit("mol/m^3")
    public static final Spread HALF_SATURATION = new Spread(0.01, 0.05, 0.3);

    /** Carbon eaten per nitrate, 5 CH2O + 4 NO3- + 4 H+ = 5 CO2 + 2 N2 + 7 H2O. */
    @Unit("1")
    public static final double CARBON_PER_NITRATE = 1.25;

    /** Nitrogen gas per nitrate. */
    @Unit("1")
    public static final double GAS_PER_NITRATE = 0.5;

    private static final double REFERENCE = 25; // degC
    private static final double WELL_AIRED = 0.2; // mol/m^3
    private static final double OXYGEN_REACH = 0.1; // mol/m^3; an estimate

    private Denitrification() {}

    /**
     * Nitrate turned into gas.
     *
     * <pre>R = F N/(K + N) (K_O + O_ref)/(K_O + O) 2^((T - 25 degC)/10 K)</pre>
     *
     * Oxygen counts as that of the water outside: the less there is, the more of the rock is without. F holds in well
     * aired water, O_ref 0.2 mol/m^3; without oxygen the rate is three times as high.
     *
     * @param full F, of {@link #fullRate}
     * @param nitrate N
     * @param halfSaturation K, {@link #HALF_SATURATION}
     * @param oxygen O of the water outside
     * @param temperature T, ITS-90
     * @return amount per time
     * @source an estimate in the usual form; see the class
     * @validity an order of magnitude
     */
    @Unit("mol/s")
    public static double rate(
            @Unit("mol/s") double full,
            @Unit("mol/m^3") double nitrate,
            @Unit("mol/m^3") double halfSaturation,
            @Unit("mol/m^3") double oxygen,
            @Unit("degC") double temperature) {
        Bounds.notNegative(full, "mol/s", "full rate");
        return full
                * Limitation.monod(nitrate, halfSaturation)
                * (Limitation.inhibition(oxygen, OXYGEN_REACH) / Limitation.inhibition(WELL_AIRED, OXYGEN_REACH))
                * Q10.factor(Q10.COMMUNITY, temperature, REFERENCE);
    }

    /**
     * What rock and sand together take with plenty of nitrate, in well aired water at 25 degC.
     *
     * <pre>F = r_rock M + r_sand A</pre>
     *
     * @param rock M, dry mass of established rock
     * @param perRock {@link #ROCK}
     * @param sand A, area of the bed
     * @param perSand {@link #SAND}
     * @return amount per time
     * @source sum of both
     * @validity an order of magnitude
     */
    @Unit("mol/s")
    public static double fullRate(
            @Unit("kg") double rock,
            @Unit("mol/(kg*s)") double perRock,
            @Unit("m^2") double sand,
            @Unit("mol/(m^2*s)") double perSand) {
        return Bounds.within(rock, "kg", 0, 1e6, "mass of rock") * Bounds.notNegative(perRock, "mol/(kg*s)", "rate")
                + Bounds.within(sand, "m^2", 0, 1e6, "area of sand")
                        * Bounds.notNegative(perSand, "mol/(m^2*s)", "rate");
    }
}
