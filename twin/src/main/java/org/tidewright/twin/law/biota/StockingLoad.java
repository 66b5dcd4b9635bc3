package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.law.nutrient.Spread;

/** Ammonia that a fish brings to the filter, from what it is fed. */
public final class StockingLoad {
    /** Dry food per live mass, 1 to 4 % a day; common practice. */
    @Unit("1/s")
    public static final Spread RATION = Spread.of(0.01, 0.02, 0.04, 1 / 86_400.0);

    /** Nitrogen in dry pellets, 64 to 88 mg/g; from memory. */
    @Unit("mol/kg")
    public static final Spread PELLETS = Spread.of(0.064, 0.077, 0.088, 1 / ElementMass.NITROGEN);

    /**
     * Share of the food's nitrogen that a growing fish turns to ammonia: 0.55 excreted, 0.15 from what rots in time.
     */
    @Unit("1")
    public static final double GROWING = 0.70;

    /** The same of a fish that hardly grows: 0.70 and 0.15. */
    @Unit("1")
    public static final double ADULT = 0.85;

    private StockingLoad() {}

    /**
     * Ammonia from one fish.
     *
     * <pre>L = r M n s</pre>
     *
     * @param mass M, live
     * @param ration r, {@link #RATION}
     * @param foodNitrogen n, {@link #PELLETS}
     * @param share s, {@link #GROWING} or {@link #ADULT}
     * @return amount of nitrogen per time, as a mean over days
     * @source mass balance; shares from memory
     * @validity days, not the hours after a meal
     */
    @Unit("mol/s")
    public static double ammonia(
            @Unit("kg") double mass,
            @Unit("1/s") double ration,
            @Unit("mol/kg") double foodNitrogen,
            @Unit("1") double share) {
        Bounds.within(mass, "kg", 0, 1000, "mass of the fish");
        Bounds.within(ration, "1/s", 0, 1 / 86_400.0, "ration");
        Bounds.within(foodNitrogen, "mol/kg", 0, 20, "nitrogen in the food");
        Bounds.within(share, "1", 0, 1, "share turned to ammonia");
        return mass * ration * foodNitrogen * share;
    }
}
