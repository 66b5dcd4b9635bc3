package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/** Faeces, leftovers and dead cells brought back to ammonia, phosphate and carbon dioxide by bacteria. */
public final class Remineralisation {
    /** What rots soon, at 25 degC; from memory. */
    @Unit("1/s")
    public static final Spread LABILE = Spread.perDay(0.1, 0.2, 0.3);

    /** What rots late, at 25 degC; from memory. */
    @Unit("1/s")
    public static final Spread SLOW = Spread.perDay(0.01, 0.02, 0.03);

    /** Share of fresh waste that rots soon; from memory. */
    @Unit("1")
    public static final Spread LABILE_SHARE = new Spread(0.4, 0.6, 0.8);

    /**
     * Rate of phosphorus over that of carbon and nitrogen. Fish faeces leach over half their phosphorus in a day (Meyer
     * and Schultz 1985, Limnol. Oceanogr. 30, 146), which over the usual labile rate is the high end; the rest from
     * memory.
     */
    @Unit("1")
    public static final Spread PHOSPHORUS_FACTOR = new Spread(1.2, 2, 3.5);

    /** Oxygen at which half of the breakdown with oxygen is left, 0.3 mg/L; from memory. */
    @Unit("mol/m^3")
    public static final Spread HALF_SATURATION = new Spread(0.003, 0.010, 0.030);

    /** Share of the rate that goes on without oxygen, by nitrate and sulfate; from memory. */
    @Unit("1")
    public static final Spread WITHOUT_OXYGEN = new Spread(0.1, 0.3, 0.6);

    /** Oxygen per carbon of plankton and waste down to ammonia, 118/106; Anderson 1995, from memory. */
    @Unit("1")
    public static final double OXYGEN_PER_CARBON = 118.0 / 106;

    private static final double REFERENCE = 25; // degC

    private Remineralisation() {}

    /**
     * Specific rate with plenty of oxygen.
     *
     * <pre>k(T) = k 2^((T - 25 degC)/10 K)</pre>
     *
     * @param rate k at 25 degC, {@link #LABILE} or {@link #SLOW}; times {@link #PHOSPHORUS_FACTOR} for phosphorus
     * @param temperature T, ITS-90
     * @return share of the pool per time
     * @source first order in the pool; Q10 by common practice
     * @validity 15 to 32 degC, a factor of two
     */
    @Unit("1/s")
    public static double rate(@Unit("1/s") double rate, @Unit("degC") double temperature) {
        Bounds.notNegative(rate, "1/s", "rate of breakdown");
        return rate * Q10.factor(Q10.COMMUNITY, temperature, REFERENCE);
    }

    /**
     * Share of the full rate left at an oxygen, with and without it together.
     *
     * <pre>a + (1 - a) O/(K + O)</pre>
     *
     * @param oxygen O
     * @param halfSaturation K, {@link #HALF_SATURATION}
     * @param withoutOxygen a, {@link #WITHOUT_OXYGEN}
     * @return share, from a to 1
     * @source Michaelis and Menten 1913 for the part with oxygen; a from memory
     * @validity the products of breakdown without oxygen are left out
     */
    @Unit("1")
    public static double share(
            @Unit("mol/m^3") double oxygen, @Unit("mol/m^3") double halfSaturation, @Unit("1") double withoutOxygen) {
        Bounds.within(withoutOxygen, "1", 0, 1, "share without oxygen");
        double aerobic = OxygenLimitation.share(oxygen, halfSaturation);
        return withoutOxygen + (1 - withoutOxygen) * aerobic;
    }

    /**
     * Share of the full rate that burns oxygen: all of it in aired water, none without.
     *
     * <pre>O/(K + O)</pre>
     *
     * @param oxygen O
     * @param halfSaturation K, {@link #HALF_SATURATION}
     * @return share, at most {@link #share}
     * @source Michaelis and Menten 1913
     * @validity the part without oxygen fades in as oxygen runs out
     */
    @Unit("1")
    public static double aerobicShare(@Unit("mol/m^3") double oxygen, @Unit("mol/m^3") double halfSaturation) {
        return OxygenLimitation.share(oxygen, halfSaturation);
    }

    /**
     * Oxygen that burns organic matter down to ammonia, per carbon.
     *
     * <pre>(C + H/4 - O/2 - 3 N/4 + 5 P/4) / C of matter C_c H_h O_o N_n P_p</pre>
     *
     * @param hydrogen h per carbon
     * @param oxygen o per carbon
     * @param nitrogen n per carbon
     * @param phosphorus p per carbon
     * @return moles of oxygen per mole of carbon
     * @source balance of electrons
     * @validity everywhere
     * @checkvalue C106 H175 O42 N16 P: 118/106, and 150/106 with the ammonia oxidised (Anderson 1995, Deep-Sea Res. I
     *     42, 1675-1680; from memory)
     */
    @Unit("1")
    public static double oxygenPerCarbon(
            @Unit("1") double hydrogen,
            @Unit("1") double oxygen,
            @Unit("1") double nitrogen,
            @Unit("1") double phosphorus) {
        Bounds.within(hydrogen, "1", 0, 4, "hydrogen per carbon");
        Bounds.within(oxygen, "1", 0, 3, "oxygen per carbon");
        Bounds.within(nitrogen, "1", 0, 1, "nitrogen per carbon");
        Bounds.within(phosphorus, "1", 0, 1, "phosphorus per carbon");
        return 1 + hydrogen / 4 - oxygen / 2 - 0.75 * nitrogen + 1.25 * phosphorus;
    }
}
