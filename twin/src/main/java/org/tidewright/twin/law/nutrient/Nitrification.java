package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** What both guilds of {@link Nitrifiers} share: warmth, and the surfaces that carry them. */
public final class Nitrification {
    private static final double MILLIGRAM_N = 1e-6 / ElementMass.NITROGEN; // mol in a milligram

    /** Factor per kelvin; from memory. */
    @Unit("1")
    public static final Spread PER_KELVIN = new Spread(1.05, 1.08, 1.10);

    /**
     * Greatest rate of a mature film in seawater: 280 mg of nitrogen per m^2 and day at 24 degC, 41 % of what fresh
     * water allows (Nijhof and Bovendeur 1990, Aquac. Eng. 9, 133-143). The low end is common practice.
     */
    @Unit("mol/(m^2*s)")
    public static final Spread FILM = Spread.perDay(50, 280, 300).times(MILLIGRAM_N);

    /** Sand, per area of the bed: taken as a film of that area, for want of a measurement. */
    @Unit("mol/(m^2*s)")
    public static final Spread SAND = FILM;

    /**
     * Ammonium that established rock took up, 0.141 mg/(kg h) of NH4+; Li et al. 2017, Acta Oceanol. Sin. 36(12), 87.
     */
    @Unit("mol/(kg*s)")
    public static final double ROCK_MEASURED = 0.141e-6 / 18.0383e-3 / 3600;

    /** Rock with plenty of ammonia, 5 mg of nitrogen per kg and day: twice {@link #ROCK_MEASURED}; an estimate. */
    @Unit("mol/(kg*s)")
    public static final Spread ROCK = Spread.perDay(2, 5, 20).times(MILLIGRAM_N);

    /**
     * Surface in a volume of the open foam that filters are made of, 400 to 1500 by its pores; from memory. The doubt of
     * {@link #FILM} is the greater one.
     */
    @Unit("m^2/m^3")
    public static final double FOAM = 800;

    private static final double REFERENCE = 25; // degC
    private static final double COOLEST = 15;
    private static final double WARMEST = 32;

    private Nitrification() {}

    /**
     * Factor on growth and oxidation.
     *
     * <pre>f_T = theta^(T - 25 degC), held at its ends outside 15 to 32 degC</pre>
     *
     * @param temperature T, ITS-90
     * @param perKelvin theta, {@link #PER_KELVIN}
     * @return factor
     * @source form as in activated sludge models (Henze et al. 2000); theta from memory
     * @validity 15 to 32 degC; harm by heat is left out
     */
    @Unit("1")
    public static double warmth(@Unit("degC") double temperature, @Unit("1") double perKelvin) {
        Bounds.waterTemperature(temperature);
        Bounds.within(perKelvin, "1", 1, 1.3, "factor per kelvin");
        return Math.pow(perKelvin, Math.min(WARMEST, Math.max(COOLEST, temperature)) - REFERENCE);
    }

    /**
     * The most that the surfaces of a system can come to oxidise, at 25 degC with plenty of everything.
     *
     * <pre>C_max = r_rock M + r_sand A_sand + r_film A_film</pre>
     *
     * @param rock M, dry mass of established rock
     * @param perRock {@link #ROCK}
     * @param sand A_sand, area of the bed
     * @param perSand {@link #SAND}
     * @param film A_film, wetted area of filter media
     * @param perFilm {@link #FILM}
     * @return capacity of ammonia oxidisers; that of nitrite oxidisers is taken to be the same
     * @source sum of what was measured on each
     * @validity a factor of three
     */
    @Unit("mol/s")
    public static double greatestCapacity(
            @Unit("kg") double rock,
            @Unit("mol/(kg*s)") double perRock,
            @Unit("m^2") double sand,
            @Unit("mol/(m^2*s)") double perSand,
            @Unit("m^2") double film,
            @Unit("mol/(m^2*s)") double perFilm) {
        return Bounds.within(rock, "kg", 0, 1e6, "mass of rock") * Bounds.notNegative(perRock, "mol/(kg*s)", "rate")
                + Bounds.within(sand, "m^2", 0, 1e6, "area of sand")
                        * Bounds.notNegative(perSand, "mol/(m^2*s)", "rate")
                + Bounds.within(film, "m^2", 0, 1e7, "area of media")
                        * Bounds.notNegative(perFilm, "mol/(m^2*s)", "rate");
    }
}
