package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.law.nutrient.Limitation;
import org.tidewright.twin.law.nutrient.Spread;

/** Seaweed grown to be harvested, counted by its dry mass; numbers are for mats of Chaetomorpha and the like. */
public final class MacroalgaeGrowth {
    /**
     * Growth as a mean over day and night: Chaetomorpha linum reached 0.11 to 0.13 per day on pulses of nitrogen
     * (Menendez 2005, Aquat. Bot. 82, 181). See {@link #whileLit} where light goes on and off.
     */
    @Unit("1/s")
    public static final Spread GROWTH = Spread.of(0.02, 0.12, 0.13, 1 / 86_400.0);

    /** Loss in light and dark, 1 to 4 % a day; 0.5 to 2 mg of oxygen per dry gram and hour, from memory. */
    @Unit("1/s")
    public static final Spread LOSS = Spread.of(0.01, 0.02, 0.04, 1 / 86_400.0);

    /** From memory. */
    @Unit("mol/(m^2*s)")
    public static final Spread LIGHT_SATURATION = new Spread(80e-6, 100e-6, 120e-6);

    /** Ammonia and nitrate; 2 umol/L, from memory. */
    @Unit("mol/m^3")
    public static final Spread NITROGEN_HALF_SATURATION = new Spread(0.5e-3, 2e-3, 10e-3);

    /** Phosphate; 0.2 umol/L, from memory. */
    @Unit("mol/m^3")
    public static final Spread PHOSPHORUS_HALF_SATURATION = new Spread(0.05e-3, 0.2e-3, 1e-3);

    /** Dry over drained wet mass; from memory. */
    @Unit("1")
    public static final Spread DRY = new Spread(0.08, 0.10, 0.14);

    /** Dry mass that a mat can come to before it shades itself, 2 to 4 kg wet per lit m^2; from memory. */
    @Unit("kg/m^2")
    public static final Spread GREATEST = new Spread(0.2, 0.3, 0.4);

    /** Nitrogen in dry mass of fed tanks, 1 to 4 %; from memory. In nature 0.6 to 1.4 % (Menendez 2005). */
    @Unit("mol/kg")
    public static final Spread NITROGEN = Spread.of(0.01, 0.025, 0.04, 1 / ElementMass.NITROGEN);

    /** Phosphorus in dry mass of fed tanks, 0.08 to 0.5 %; from memory. */
    @Unit("mol/kg")
    public static final Spread PHOSPHORUS = Spread.of(0.0008, 0.0025, 0.005, 1 / ElementMass.PHOSPHORUS);

    /** Carbon in dry mass, 25 to 35 %; from memory. */
    @Unit("mol/kg")
    public static final Spread CARBON = Spread.of(0.25, 0.30, 0.35, 1 / ElementMass.CARBON);

    /** Best temperature; germlings of Chaetomorpha grew best at 25 degC, from memory of a culture study. */
    @Unit("degC")
    public static final double BEST_TEMPERATURE = 25;

    /** Beyond this no keeper's harvest is believed: sea lettuce at its fastest, from memory. */
    @Unit("1/s")
    public static final double FASTEST = 0.3 / 86_400;

    private static final double COLD_WIDTH = 9; // K; from memory
    private static final double WARM_WIDTH = 6; // K; from memory

    private MacroalgaeGrowth() {}

    /**
     * Share of the full growth at a temperature.
     *
     * <pre>e^(-((T - T_best)/w)^2), w 9 K below and 6 K above the best</pre>
     *
     * @param temperature T, ITS-90
     * @param best T_best, {@link #BEST_TEMPERATURE}
     * @return share, 0 to 1
     * @source an empirical bell, as Lehman, Botkin and Likens 1975, Limnol. Oceanogr. 20, 343; widths from memory
     * @validity short of death by heat or cold
     */
    @Unit("1")
    public static double warmth(@Unit("degC") double temperature, @Unit("degC") double best) {
        Bounds.waterTemperature(temperature);
        Bounds.waterTemperature(best);
        double off = (temperature - best) / (temperature < best ? COLD_WIDTH : WARM_WIDTH);
        return Math.exp(-off * off);
    }

    /**
     * Growth while lit that gives a growth known as a mean over day and night.
     *
     * <pre>mu / s</pre>
     *
     * @param growth mu, mean over day and night
     * @param litShare s of the day with light
     * @return share of the mass per time of light
     * @source definition of the mean
     * @validity the study's own hours of light are not known; 12 of 24 are usual
     */
    @Unit("1/s")
    public static double whileLit(@Unit("1/s") double growth, @Unit("1") double litShare) {
        Bounds.notNegative(growth, "1/s", "growth");
        return growth / Bounds.within(litShare, "1", 0.01, 1, "share of the day with light");
    }

    /**
     * Share of the full growth that light and water allow.
     *
     * <pre>tanh(I/I_k) N/(K_N + N) P/(K_P + P), usual half-saturations</pre>
     *
     * @param light I, photon flux at the mat
     * @param lightSaturation I_k, {@link #LIGHT_SATURATION}
     * @param nitrogen N, ammonia and nitrate
     * @param phosphorus P, phosphate
     * @return share, 0 to 1
     * @source Jassby and Platt 1976; Monod 1949; limited by both together as Menendez 2005 found
     * @validity what the tissue can store, up to ten times for phosphorus, is left out
     */
    @Unit("1")
    public static double limitation(
            @Unit("mol/(m^2*s)") double light,
            @Unit("mol/(m^2*s)") double lightSaturation,
            @Unit("mol/m^3") double nitrogen,
            @Unit("mol/m^3") double phosphorus) {
        return Limitation.light(light, lightSaturation)
                * Limitation.monod(nitrogen, NITROGEN_HALF_SATURATION.usual())
                * Limitation.monod(phosphorus, PHOSPHORUS_HALF_SATURATION.usual());
    }

    /**
     * Dry mass made. Times what the tissue holds it is what the water loses, and the oxygen it makes per carbon is near
     * one.
     *
     * <pre>G = mu f W (1 - W/W_max), not below 0</pre>
     *
     * @param dryMass W
     * @param greatest W_max, {@link #GREATEST} times the lit area
     * @param growth mu, {@link #GROWTH}
     * @param share f, {@link #limitation} times {@link #warmth}
     * @return dry mass per time
     * @source logistic growth, Verhulst 1838
     * @validity a mat that is turned and harvested
     */
    @Unit("kg/s")
    public static double made(
            @Unit("kg") double dryMass,
            @Unit("kg") double greatest,
            @Unit("1/s") double growth,
            @Unit("1") double share) {
        Bounds.finite(dryMass, "kg", "dry mass");
        Bounds.positive(greatest, "kg", "greatest dry mass");
        Bounds.notNegative(growth, "1/s", "growth");
        Bounds.within(share, "1", 0, 1, "share of the full growth");
        double present = Math.max(0, dryMass);
        return growth * share * present * Math.max(0, 1 - present / greatest);
    }

    /**
     * Growth that a harvest which comes again tells: what a mat makes so that it comes from what is left standing to what
     * stands before the next harvest.
     *
     * <pre>
     * (ln(W_1/W_0)/t + r) / (1 - W/W_max)
     * W_1 = W_0 + H, W = H/ln(W_1/W_0), W_max = W_1 + s
     * </pre>
     *
     * @param left W_0, dry
     * @param harvest H, dry
     * @param interval t from harvest to harvest
     * @param spare s, how much more than before a harvest could stand
     * @param loss r at the water's temperature
     * @return share of the mass made per time, mean over day and night
     * @source the integral of {@link #made} less {@link #lost} over the interval, with the mean mass of steady growth
     * @validity to 3 % where the mass no more than doubles
     */
    @Unit("1/s")
    public static double ofHarvest(
            @Unit("kg") double left,
            @Unit("kg") double harvest,
            @Unit("s") double interval,
            @Unit("kg") double spare,
            @Unit("1/s") double loss) {
        Bounds.within(left, "kg", 1e-6, 1e6, "dry mass left");
        Bounds.within(harvest, "kg", 1e-6, 1e6, "dry mass harvested");
        Bounds.within(interval, "s", 3600, 1e9, "time between harvests");
        Bounds.within(spare, "kg", 1e-6, 1e6, "dry mass to spare");
        Bounds.notNegative(loss, "1/s", "loss");
        double times = Math.log1p(harvest / left);
        double shaded = harvest / times / (left + harvest + spare);
        return (times / interval + loss) / (1 - shaded);
    }

    /**
     * Dry mass lost to breathing and decay, by day and by night; the water gets back what it held.
     *
     * <pre>r W 2^((T - 25 degC)/10 K)</pre>
     *
     * @param dryMass W
     * @param loss r, {@link #LOSS}
     * @param temperature T, ITS-90
     * @return dry mass per time
     * @source first order; rate from memory, Q10 by common practice
     * @validity a healthy mat; one that dies off at once is carrion
     */
    @Unit("kg/s")
    public static double lost(@Unit("kg") double dryMass, @Unit("1/s") double loss, @Unit("degC") double temperature) {
        Bounds.finite(dryMass, "kg", "dry mass");
        Bounds.notNegative(loss, "1/s", "loss");
        return Math.max(0, dryMass) * loss * Q10.factor(Q10.COMMUNITY, temperature, BEST_TEMPERATURE);
    }
}
