package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.law.nutrient.Spread;

/**
 * A meal on its way: swallowed, it passes a first stage and then a second, and what leaves the second is excreted,
 * dropped and kept in the shares of {@link Partition}. Two stages in a row let excretion rise for hours after a meal.
 */
public final class Digestion {
    private static final double HOUR = 3600;

    /**
     * Farmed young fish keep 20 to 30 % of the nitrogen (Guttman 2019, review); gills 0.4 to 0.7, faeces 0.1 to
     * 0.25.
     */
    public static final Partition NITROGEN_GROWING = new Partition(0.25, 0.55, 0.15, 0.05);

    /** From memory: what a grown fish does not keep leaves by the gills. */
    public static final Partition NITROGEN_ADULT = new Partition(0.10, 0.70, 0.15, 0.05);

    /** Retained 0.2 to 0.45, faeces 0.3 to 0.6: their N:P is 8 against 48 of excretion (Meyer and Schultz 1985). */
    public static final Partition PHOSPHORUS_GROWING = new Partition(0.30, 0.20, 0.45, 0.05);

    /** From memory: the same with less kept. */
    public static final Partition PHOSPHORUS_ADULT = new Partition(0.10, 0.30, 0.55, 0.05);

    /** A fifth undigested (Schiettekatte et al. 2020); the rest from memory. Excreted means breathed out. */
    public static final Partition CARBON_GROWING = new Partition(0.20, 0.56, 0.19, 0.05);

    /** The same with less kept. */
    public static final Partition CARBON_ADULT = new Partition(0.08, 0.68, 0.19, 0.05);

    /**
     * Ammonia's share of excreted nitrogen; the rest is urea and organic. Over 0.85 in croaker (Cai et al. 2016,
     * Environ. Sci. Pollut. Res.), only half in sea bream (Porter et al. 1987, Aquaculture 66, 287).
     */
    @Unit("1")
    public static final Spread AMMONIA_SHARE = new Spread(0.5, 0.85, 0.95);

    /**
     * Specific rate of each stage at 25 degC, so that excretion peaks after 3 to 6 h: sea bream within 4.5 h at 24 degC
     * (Porter et al. 1987), flounder after 6 h at 25 degC (Lee et al. 2015, Fish. Aquat. Sci. 18, 373).
     */
    @Unit("1/s")
    public static final Spread STAGE = new Spread(1 / (6 * HOUR), 1 / (4.5 * HOUR), 1 / (3 * HOUR));

    /** Flounder peaked after 12 h at 12 degC and 6 h at 25 degC (Lee et al. 2015): 2^(10/13). */
    @Unit("1")
    public static final double WARMTH = 1.7;

    /** Nitrogen that a fasted fish of 50 g loses, 50 to 150 mg per kg and day; from memory. */
    @Unit("mol/(kg*s)")
    public static final Spread FASTING = Spread.of(50e-6, 100e-6, 150e-6, 1 / (ElementMass.NITROGEN * 24 * HOUR));

    /** Exponent of excretion with mass; Shrestha et al. 2023, J. Exp. Mar. Biol. Ecol. */
    @Unit("1")
    public static final double MASS_EXPONENT = 0.75;

    /**
     * Carbon a stomach takes per live mass before the fish turns away: dry food of 45 % carbon, 3 % of live mass in one
     * meal, 1 to 5; common practice.
     */
    @Unit("mol/kg")
    public static final double FULL = 0.03 * 0.45 / ElementMass.CARBON;

    private static final double REFERENCE = 25; // degC
    private static final double REFERENCE_MASS = 0.050; // kg

    private Digestion() {}

    /**
     * What leaves one stage for the next.
     *
     * <pre>J = k A 1.7^((T - 25 degC)/10 K)</pre>
     *
     * @param held A in the stage
     * @param rate k, {@link #STAGE}
     * @param temperature T, ITS-90
     * @return amount per time
     * @source first order in the content; warmth after Lee et al. 2015
     * @validity 12 to 30 degC; the size of the meal is left out
     */
    @Unit("mol/s")
    public static double passage(@Unit("mol") double held, @Unit("1/s") double rate, @Unit("degC") double temperature) {
        Bounds.finite(held, "mol", "content");
        Bounds.notNegative(rate, "1/s", "rate of passage");
        return Math.max(0, held) * rate * Q10.factor(WARMTH, temperature, REFERENCE);
    }

    /**
     * Share of a meal that leaves the second stage per time, a time after it was swallowed in one go.
     *
     * <pre>k^2 t e^(-k t)</pre>
     *
     * @param time t since the meal
     * @param rate k of both stages, at their temperature
     * @return share per time; its peak stands at 1/k
     * @source solution of two equal first-order stages
     * @validity a meal of minutes
     */
    @Unit("1/s")
    public static double afterMeal(@Unit("s") double time, @Unit("1/s") double rate) {
        Bounds.finite(time, "s", "time since the meal");
        Bounds.positive(rate, "1/s", "rate of passage");
        return time <= 0 ? 0 : rate * (rate * time) * Math.exp(-rate * time);
    }

    /**
     * Nitrogen that a fish loses out of its own body when it has nothing to digest.
     *
     * <pre>R = r 50 g (M/50 g)^0.75 2^((T - 25 degC)/10 K)</pre>
     *
     * @param mass M, live
     * @param rate r, {@link #FASTING}
     * @param temperature T, ITS-90
     * @return amount per time
     * @source exponent of Shrestha et al. 2023; rate from memory, Q10 by common practice
     * @validity a factor of two; a fed fish loses this as part of the share excreted, not on top of it
     */
    @Unit("mol/s")
    public static double fasting(
            @Unit("kg") double mass, @Unit("mol/(kg*s)") double rate, @Unit("degC") double temperature) {
        Bounds.within(mass, "kg", 0, 1000, "mass of the fish");
        Bounds.notNegative(rate, "mol/(kg*s)", "rate of fasting excretion");
        return rate
                * REFERENCE_MASS
                * Math.pow(mass / REFERENCE_MASS, MASS_EXPONENT)
                * Q10.factor(Q10.COMMUNITY, temperature, REFERENCE);
    }
}
