package org.tidewright.husbandry.estimate;

import static org.tidewright.plan.method.WaterQuantity.*;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What is to be expected of a quantity in a kept system before its journal is read, in its coherent unit and days.
 *
 * <p>Alkalinity's walks are those of the handbook, section 3.2, which has them as a heuristic of the project: 0.01 (soft
 * corals) to 0.06 (stony ones) dKH a day per √day for the use, 0.03 to 0.07 dKH per √day for the level. The others are of
 * the same kind: guesses at what keepers see, common practice at best. The journal replaces them: each walk is known here
 * only to a factor.
 *
 * @param usualLevel where nothing is stated
 * @param levelError of what the plan states of the level; twice that where it states nothing
 * @param useError of the use a day
 * @param levelWalk what shakes the level, a √day
 * @param useWalk what shakes the use, a √day
 * @param swing of each of the two waves, a quarter of a day apart, that make up the daily swing; 0 for none of its own
 * @param restless share that comes and goes within {@link #FADES}; 0 for none
 */
record Priors(
        double usualLevel,
        double levelError,
        double useError,
        Walk levelWalk,
        Walk useWalk,
        double swing,
        Walk restless) {
    /** A weather of days: what a room, a cloud or a meal does to a quantity that is held. */
    static final double FADES = 2;

    /**
     * Size of a noise: log-normal.
     *
     * @param usual half of all systems have more
     * @param spread of its natural logarithm, one standard error; 0 where it is not learnt
     */
    record Walk(double usual, double spread) {
        static final Walk NONE = new Walk(0, 0);
    }

    /** One in twenty is twice as large as 2.3 of these, one in twenty half as small: a factor of 3 each way. */
    private static final double THREEFOLD = 0.7;

    private static final Map<WaterQuantity, Priors> ALL = new EnumMap<>(WaterQuantity.class);

    static {
        //                  usual  level  use   level walk  use walk  swing  restless
        put(ALKALINITY, /*   */ 8, 1.5, 0.3, 0.05, 0.03, 0, 0); // dKH
        put(CALCIUM, /*    */ 420, 40, 0.3, 0.7, 0, 0, 0); // mg/L
        put(MAGNESIUM, /* */ 1320, 120, 0.5, 2, 0, 0, 0); // mg/L
        put(NITRATE, /*     */ 10, 30, 0.4, 0.2, 0.04, 0, 0); // mg/L
        put(SALINITY, /*    */ 35, 1.5, 0.02, 0.05, 0.001, 0, 0);
        put(TEMPERATURE, /* */ 25, 2, 0.02, 0.05, 0.001, 0.2, 0.3); // °C
        put(PH, /*         */ 8.1, 0.3, 0.005, 0.015, 0.0003, 0.1, 0.04);
        put(OXYGEN, /*     */ 6.8, 1.5, 0.02, 0.05, 0.001, 0.5, 0.2); // mg/L
        put(PHOSPHATE, /* */ 0.08, 0.3, 0.005, 0.004, 0.001, 0, 0); // mg/L
        put(AMMONIA, /*   */ 0.02, 0.5, 0.02, 0.005, 0.005, 0, 0); // mg/L N
        put(NITRITE, /*   */ 0.05, 0.5, 0.02, 0.005, 0.005, 0, 0); // mg/L NO2
    }

    /** What is expected of a quantity. */
    static Priors of(WaterQuantity quantity) {
        Priors priors = ALL.get(quantity);
        if (priors == null) {
            throw new IllegalStateException("nothing is expected of " + quantity.words());
        }
        return priors;
    }

    private static void put(
            WaterQuantity quantity,
            double usual,
            double level,
            double use,
            double levelWalk,
            double useWalk,
            double swing,
            double restless) {
        QuantityUnit unit = quantity.units().get(0);
        double held = unit.toHeld(usual);
        double one = unit.errorToHeld(usual, 1);
        ALL.put(
                quantity,
                new Priors(
                        held,
                        level * one,
                        use * one,
                        walk(levelWalk * one),
                        walk(useWalk * one),
                        swing * one,
                        walk(restless * one)));
    }

    private static Walk walk(double usual) {
        return usual > 0 ? new Walk(usual, THREEFOLD) : Walk.NONE;
    }
}
