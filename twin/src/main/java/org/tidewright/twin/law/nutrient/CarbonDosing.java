package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/** Bacteria that grow on a carbon source given to the tank and take nitrogen and phosphorus from the water to do so. */
public final class CarbonDosing {
    /** Carbon into cells per carbon eaten; from memory. */
    @Unit("1")
    public static final Spread YIELD = new Spread(0.3, 0.4, 0.5);

    /** Carbon to nitrogen in cells, 5 by mass (4 to 6.5); from memory. */
    @Unit("1")
    public static final Spread CARBON_TO_NITROGEN =
            new Spread(4, 5, 6.5).times(ElementMass.NITROGEN / ElementMass.CARBON);

    /** Nitrogen to phosphorus in cells, 7 to 10 by mass; from memory. */
    @Unit("1")
    public static final Spread NITROGEN_TO_PHOSPHORUS =
            new Spread(7, 8, 10).times(ElementMass.PHOSPHORUS / ElementMass.NITROGEN);

    /** Growth at 25 degC with plenty of everything; from memory. */
    @Unit("1/s")
    public static final Spread GROWTH = Spread.perDay(1, 3, 8);

    /** Death and grazing at 25 degC; from memory. */
    @Unit("1/s")
    public static final Spread LOSS = Spread.perDay(0.1, 0.3, 1);

    /** Dosed carbon, as carbon; from memory. */
    @Unit("mol/m^3")
    public static final Spread CARBON_HALF_SATURATION = new Spread(0.01, 0.05, 0.2);

    /** Ammonia and nitrate together; from memory. */
    @Unit("mol/m^3")
    public static final Spread NITROGEN_HALF_SATURATION = new Spread(2e-4, 1e-3, 5e-3);

    /** Phosphate; from memory. */
    @Unit("mol/m^3")
    public static final Spread PHOSPHORUS_HALF_SATURATION = new Spread(1e-5, 5e-5, 3e-4);

    /** Oxygen; from memory. */
    @Unit("mol/m^3")
    public static final Spread OXYGEN_HALF_SATURATION = new Spread(0.003, 0.010, 0.030);

    /** Oxygen that burns acetic acid or sugar, per carbon. */
    @Unit("1")
    public static final double OXYGEN_OF_ACETATE = 1;

    /** Oxygen that burns ethanol, per carbon. */
    @Unit("1")
    public static final double OXYGEN_OF_ETHANOL = 1.5;

    /** Oxygen that burns cells C5H7O2N down to ammonia, per carbon. */
    @Unit("1")
    public static final double OXYGEN_OF_CELLS = 1;

    /** Oxygen that a nitrate spares as it is reduced to the level of ammonia: eight electrons, four to an oxygen. */
    @Unit("1")
    public static final double OXYGEN_IN_NITRATE = 2;

    private static final double REFERENCE = 25; // degC

    private CarbonDosing() {}

    /**
     * Specific growth.
     *
     * <pre>mu C/(K_C + C) N/(K_N + N) P/(K_P + P) O/(K_O + O) 2^((T - 25 degC)/10 K), usual half-saturations</pre>
     *
     * @param growth mu, {@link #GROWTH}
     * @param carbon C, dosed carbon in the water
     * @param nitrogen N, ammonia and nitrate
     * @param phosphorus P, phosphate
     * @param oxygen O
     * @param temperature T, ITS-90
     * @return share of the cells per time
     * @source Monod 1949; the numbers from memory
     * @validity a factor of three; which bacteria grow is not known
     */
    @Unit("1/s")
    public static double growth(
            @Unit("1/s") double growth,
            @Unit("mol/m^3") double carbon,
            @Unit("mol/m^3") double nitrogen,
            @Unit("mol/m^3") double phosphorus,
            @Unit("mol/m^3") double oxygen,
            @Unit("degC") double temperature) {
        Bounds.notNegative(growth, "1/s", "growth");
        return growth
                * Limitation.monod(carbon, CARBON_HALF_SATURATION.usual())
                * Limitation.monod(nitrogen, NITROGEN_HALF_SATURATION.usual())
                * Limitation.monod(phosphorus, PHOSPHORUS_HALF_SATURATION.usual())
                * OxygenLimitation.share(oxygen, OXYGEN_HALF_SATURATION.usual())
                * Q10.factor(Q10.COMMUNITY, temperature, REFERENCE);
    }

    /**
     * Nitrogen that goes into cells, per carbon eaten.
     *
     * <pre>Y / (C:N)</pre>
     *
     * @param yield Y, {@link #YIELD}
     * @param carbonToNitrogen C:N, {@link #CARBON_TO_NITROGEN}
     * @source mass balance
     * @validity everywhere
     */
    @Unit("1")
    public static double nitrogenPerCarbon(@Unit("1") double yield, @Unit("1") double carbonToNitrogen) {
        Bounds.within(yield, "1", 0, 1, "yield");
        return yield / Bounds.within(carbonToNitrogen, "1", 1, 100, "carbon to nitrogen");
    }

    /**
     * Phosphorus that goes into cells, per carbon eaten.
     *
     * <pre>Y / (C:N N:P)</pre>
     *
     * @param yield Y, {@link #YIELD}
     * @param carbonToNitrogen C:N, {@link #CARBON_TO_NITROGEN}
     * @param nitrogenToPhosphorus N:P, {@link #NITROGEN_TO_PHOSPHORUS}
     * @source mass balance
     * @validity everywhere
     */
    @Unit("1")
    public static double phosphorusPerCarbon(
            @Unit("1") double yield, @Unit("1") double carbonToNitrogen, @Unit("1") double nitrogenToPhosphorus) {
        return nitrogenPerCarbon(yield, carbonToNitrogen)
                / Bounds.within(nitrogenToPhosphorus, "1", 1, 1000, "nitrogen to phosphorus");
    }

    /**
     * Oxygen used per carbon eaten: what burns the source less what the cells keep and what nitrate brings.
     *
     * <pre>o - Y - 2 s Y / (C:N), not below 0</pre>
     *
     * @param source o, {@link #OXYGEN_OF_ACETATE} or {@link #OXYGEN_OF_ETHANOL}
     * @param yield Y, {@link #YIELD}
     * @param carbonToNitrogen C:N, {@link #CARBON_TO_NITROGEN}
     * @param nitrateShare s, share of the cells' nitrogen that comes from nitrate
     * @source balance of electrons with cells C5H7O2N
     * @validity everywhere
     */
    @Unit("1")
    public static double oxygenPerCarbon(
            @Unit("1") double source,
            @Unit("1") double yield,
            @Unit("1") double carbonToNitrogen,
            @Unit("1") double nitrateShare) {
        Bounds.within(source, "1", 0, 2, "oxygen of the source");
        Bounds.within(nitrateShare, "1", 0, 1, "share of nitrate");
        double spared = OXYGEN_IN_NITRATE * nitrateShare * nitrogenPerCarbon(yield, carbonToNitrogen);
        return Math.max(0, source - OXYGEN_OF_CELLS * yield - spared);
    }
}
