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
 * @param usualLevel of kept systems, and how far from it they are, one standard error
 * @param statedError by how much a level may have changed since the plan stated it
 * @param useError of the use a day
 * @param levelWalk what shakes the level, a √day
 * @param use what the use does: a walk, a √day, or where it fades, how far from none it is usually
 * @param useFades days within which the use falls back to none, as that of something does whose coming and going adjust to
 *     each other; infinite for a use that stays
 * @param swing of each of the two waves, a quarter of a day apart, that make up the daily swing; 0 for none of its own
 * @param restless share that comes and goes within {@link #FADES}
 */
record Priors(
        Known usualLevel,
        double statedError,
        double useError,
        Walk levelWalk,
        Walk use,
        double useFades,
        double swing,
        Walk restless) {
    /** Days: a weather, what a room, a cloud or a meal does to a quantity that is held. */
    static final double FADES = 2;

    /**
     * Size of a noise: log-normal on each side of what is usual.
     *
     * @param usual half of all systems have more
     * @param below standard error of its natural logarithm towards less
     * @param above and towards more
     */
    record Walk(double usual, double below, double above) {
        static final Walk NONE = new Walk(0, 1, 1);

        /** On the side on which a size lies. */
        double spread(double size) {
            return size > usual ? above : below;
        }
    }

    /** One system in twenty has less than a third of what is usual: 1.645 of these. */
    private static final double THREEFOLD = 0.7;

    /** Or more than three times; six times; twelve times, where a new tank or a mishap moves what hardly moves else. */
    private static final Map<WaterQuantity, Double> ABOVE = new EnumMap<>(Map.of(
            ALKALINITY, THREEFOLD,
            CALCIUM, THREEFOLD,
            MAGNESIUM, THREEFOLD,
            NITRATE, 1.5,
            PHOSPHATE, 1.5,
            AMMONIA, 1.5,
            NITRITE, 1.5));

    private static final double ABOVE_ELSE = 1.1;

    private static final double STAYS = Double.POSITIVE_INFINITY;
    private static final Map<WaterQuantity, Priors> ALL = new EnumMap<>(WaterQuantity.class);

    static {
        //                 usual level  stated  use  level walk  use  fades  swing  restless
        put(ALKALINITY, /*   */ 8, 2, 1, 0.15, 0.05, 0.03, STAYS, 0, 0); // dKH
        put(CALCIUM, /*    */ 420, 60, 30, 0.22, 0.45, 0, STAYS, 0, 0); // mg/L
        put(MAGNESIUM, /* */ 1320, 150, 80, 0.28, 1.5, 0, STAYS, 0, 0); // mg/L
        put(NITRATE, /*     */ 10, 40, 10, 0.13, 0.2, 0.10, 20, 0, 0); // mg/L
        put(SALINITY, /*    */ 35, 3, 1, 0.016, 0.05, 0.001, STAYS, 0, 0);
        put(TEMPERATURE, /* */ 25, 3, 1, 0.005, 0.05, 0.02, 30, 0.2, 0.3); // °C
        put(PH, /*         */ 8.1, 0.3, 0.2, 0.001, 0.015, 0.005, 30, 0.1, 0.04);
        put(OXYGEN, /*     */ 6.8, 1.5, 1, 0.005, 0.05, 0.02, 30, 0.5, 0.2); // mg/L
        put(PHOSPHATE, /* */ 0.08, 0.5, 0.1, 0.001, 0.002, 0.015, 7, 0, 0); // mg/L
        put(AMMONIA, /*   */ 0.02, 0.5, 0.2, 0.001, 0.005, 0.003, 5, 0, 0); // mg/L N
        put(NITRITE, /*   */ 0.05, 0.5, 0.2, 0.002, 0.01, 0.011, 5, 0, 0); // mg/L NO2
    }

    /** Share of the use by which it walks, a √day; the handbook, section 3.2. */
    private static final double WALK_OF_USE = 0.03;

    /** Level walks between none used and a degree a day, dKH a √day; soft and stony corals of the same table. */
    private static final double QUIET = 0.03;

    private static final double LIVELIER = 0.02;

    /** Walks of alkalinity where so much is used a day. */
    Priors ofAlkalinityUsed(double use) {
        double degree = ALKALINITY.units().get(0).toHeld(1);
        double walk = Math.max(0.01 * degree, Math.min(0.06 * degree, WALK_OF_USE * use));
        double level = QUIET * degree + LIVELIER * Math.max(0, Math.min(2 * degree, use));
        return new Priors(
                usualLevel,
                statedError,
                useError,
                new Walk(level, levelWalk.below(), levelWalk.above()),
                new Walk(walk, this.use.below(), this.use.above()),
                useFades,
                swing,
                restless);
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
            double stated,
            double use,
            double levelWalk,
            double useSize,
            double useFades,
            double swing,
            double restless) {
        QuantityUnit unit = quantity.units().get(0);
        double held = unit.toHeld(usual);
        double above = ABOVE.getOrDefault(quantity, ABOVE_ELSE);
        double one = unit.errorToHeld(usual, 1);
        ALL.put(
                quantity,
                new Priors(
                        new Known(held, level * one),
                        stated * one,
                        use * one,
                        walk(levelWalk * one, above),
                        walk(useSize * one, above),
                        useFades,
                        swing * one,
                        walk(restless * one, above)));
    }

    private static Walk walk(double usual, double above) {
        return usual > 0 ? new Walk(usual, THREEFOLD, above) : Walk.NONE;
    }
}
