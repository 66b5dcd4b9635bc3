package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Algae adrift in the water, counted by the nitrogen in them. In most reef tanks grazers and filters clear them faster
 * than they grow; where nutrients, light and few grazers come together they bloom and take the nutrients up.
 */
public final class MicroalgalBloom {
    /** Growth through a lit day at 25 degC with plenty of everything; from memory, below {@link #ceiling}. */
    @Unit("1/s")
    public static final Spread GROWTH = Spread.perDay(0.5, 1.0, 2.0);

    /** Death and sinking; from memory. */
    @Unit("1/s")
    public static final Spread DEATH = Spread.perDay(0.02, 0.05, 0.2);

    /** Share of the water that grazers and filters clear of them; an estimate, known for no tank. */
    @Unit("1/s")
    public static final Spread CLEARANCE = Spread.perDay(0.2, 1, 5);

    /** Algae, as nitrogen, at which grazers are half satisfied; from memory. */
    @Unit("mol/m^3")
    public static final Spread GRAZERS_HALF_SATURATION = new Spread(1e-3, 5e-3, 20e-3);

    /** Photon flux, 50 to 200 umol/(m^2 s); from memory. */
    @Unit("mol/(m^2*s)")
    public static final Spread LIGHT_SATURATION = new Spread(50e-6, 100e-6, 200e-6);

    /** Ammonia and nitrate; from memory of coastal species, 0.2 to 3 umol/L. */
    @Unit("mol/m^3")
    public static final Spread NITROGEN_HALF_SATURATION = new Spread(0.2e-3, 1e-3, 3e-3);

    /** Phosphate; from memory, 0.03 to 0.3 umol/L. */
    @Unit("mol/m^3")
    public static final Spread PHOSPHORUS_HALF_SATURATION = new Spread(0.03e-3, 0.1e-3, 0.3e-3);

    /** Carbon to nitrogen, Redfield, Ketchum and Richards 1963. */
    @Unit("1")
    public static final double CARBON_TO_NITROGEN = 106.0 / 16;

    /** Nitrogen to phosphorus, Redfield, Ketchum and Richards 1963. */
    @Unit("1")
    public static final double NITROGEN_TO_PHOSPHORUS = 16;

    /**
     * Dimming by the algae themselves, 15 m^2 per g of chlorophyll and a gram of it per mole of nitrogen; from memory.
     */
    @Unit("m^2/mol")
    public static final double SHADING = 15;

    private static final double DOUBLINGS_AT_ZERO = 0.851; // per day
    private static final double PER_KELVIN = 1.066;
    private static final double DAY = 86_400;
    private static final double REFERENCE = 25; // degC
    private static final double THIN = 1e-6;

    private MicroalgalBloom() {}

    /**
     * The fastest growth that any alga was found to reach.
     *
     * <pre>0.851 1.066^T doublings a day, T in degC</pre>
     *
     * @param temperature T, ITS-90
     * @return share of the cells per time
     * @source Eppley 1972, Fish. Bull. 70, 1063-1085
     * @validity 0 to 40 degC
     */
    @Unit("1/s")
    public static double ceiling(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        return Math.log(2) * DOUBLINGS_AT_ZERO * Math.pow(PER_KELVIN, temperature) / DAY;
    }

    /**
     * Specific growth.
     *
     * <pre>mu tanh(I/I_k) N/(K_N + N) P/(K_P + P) 1.066^(T - 25 degC), usual half-saturations</pre>
     *
     * @param growth mu, {@link #GROWTH}
     * @param light I, mean photon flux in the water, as {@link #meanLight}
     * @param nitrogen N, ammonia and nitrate
     * @param phosphorus P, phosphate
     * @param temperature T, ITS-90
     * @return share of the cells per time
     * @source Monod 1949; Jassby and Platt 1976; warmth after Eppley 1972
     * @validity below the heat that harms; silicate, which diatoms need, is left out
     */
    @Unit("1/s")
    public static double growth(
            @Unit("1/s") double growth,
            @Unit("mol/(m^2*s)") double light,
            @Unit("mol/m^3") double nitrogen,
            @Unit("mol/m^3") double phosphorus,
            @Unit("degC") double temperature) {
        Bounds.notNegative(growth, "1/s", "growth");
        Bounds.waterTemperature(temperature);
        return growth
                * Limitation.light(light, LIGHT_SATURATION.usual())
                * Limitation.monod(nitrogen, NITROGEN_HALF_SATURATION.usual())
                * Limitation.monod(phosphorus, PHOSPHORUS_HALF_SATURATION.usual())
                * Math.pow(PER_KELVIN, temperature - REFERENCE);
    }

    /**
     * What the water loses of them to death and to grazers and filters, which satisfied grazers slow.
     *
     * <pre>B (d + c / (1 + B/K_g)), usual K_g</pre>
     *
     * @param algae B, nitrogen in them
     * @param death d, {@link #DEATH}
     * @param clearance c, {@link #CLEARANCE}
     * @return amount per volume and time
     * @source response of the second type, Holling 1959, Can. Entomol. 91, 385-398
     * @validity grazers of a constant number
     */
    @Unit("mol/(m^3*s)")
    public static double loss(@Unit("mol/m^3") double algae, @Unit("1/s") double death, @Unit("1/s") double clearance) {
        Bounds.finite(algae, "mol/m^3", "algae");
        Bounds.notNegative(death, "1/s", "death");
        Bounds.notNegative(clearance, "1/s", "clearance");
        double present = Math.max(0, algae);
        return present * (death + clearance * Limitation.inhibition(present, GRAZERS_HALF_SATURATION.usual()));
    }

    /**
     * Mean light from the surface down.
     *
     * <pre>I_0 (1 - e^(-(k_w + k_c B) z)) / ((k_w + k_c B) z)</pre>
     *
     * @param surface I_0, photon flux just below the surface
     * @param depth z of the water
     * @param attenuation k_w of the water without algae
     * @param algae B, nitrogen in them; each mole dims by {@link #SHADING}
     * @return photon flux
     * @source Lambert and Beer, averaged over the depth
     * @validity light from above, spread evenly
     */
    @Unit("mol/(m^2*s)")
    public static double meanLight(
            @Unit("mol/(m^2*s)") double surface,
            @Unit("m") double depth,
            @Unit("1/m") double attenuation,
            @Unit("mol/m^3") double algae) {
        Bounds.notNegative(surface, "mol/(m^2*s)", "light at the surface");
        Bounds.within(depth, "m", 0, 100, "depth");
        Bounds.within(attenuation, "1/m", 0, 1000, "attenuation");
        Bounds.finite(algae, "mol/m^3", "algae");
        double thickness = (attenuation + SHADING * Math.max(0, algae)) * depth;
        return thickness < THIN ? surface * (1 - thickness / 2) : surface * -Math.expm1(-thickness) / thickness;
    }
}
