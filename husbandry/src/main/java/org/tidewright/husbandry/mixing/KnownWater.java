package org.tidewright.husbandry.mixing;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What is known of a water. What is not known is absent and stays so in all that is mixed from it.
 *
 * @param values each in the coherent unit of its quantity
 * @param errors one standard error of a value; absent where none was stated
 */
public record KnownWater(Map<WaterQuantity, Double> values, Map<WaterQuantity, Double> errors) {
    /** What is kept when waters are poured together; pH and oxygen are not, they follow from other things. */
    public static final Set<WaterQuantity> KEPT = Collections.unmodifiableSet(EnumSet.of(
            WaterQuantity.SALINITY,
            WaterQuantity.TEMPERATURE,
            WaterQuantity.ALKALINITY,
            WaterQuantity.CALCIUM,
            WaterQuantity.MAGNESIUM,
            WaterQuantity.NITRATE,
            WaterQuantity.PHOSPHATE));

    /** Stands in for an unknown salinity where a density is wanted: 3 % is the most it can be off by. */
    @Unit("1")
    public static final double ASSUMED_SALINITY = 35;

    /** Stands in for an unknown temperature where a density is wanted. */
    @Unit("degC")
    public static final double ASSUMED_TEMPERATURE = 25;

    /** Refuses what cannot be meant. */
    public KnownWater {
        Map<WaterQuantity, Double> kept = new EnumMap<>(WaterQuantity.class);
        kept.putAll(values);
        kept.forEach(KnownWater::check);
        values = Collections.unmodifiableMap(kept);
        Map<WaterQuantity, Double> doubts = new EnumMap<>(WaterQuantity.class);
        doubts.putAll(errors);
        doubts.forEach((quantity, error) -> {
            Bounds.notNegative(error, quantity.held(), "standard error of " + quantity.words());
            if (!kept.containsKey(quantity)) {
                throw new IllegalArgumentException(quantity.words() + " has an error and no value");
            }
        });
        errors = Collections.unmodifiableMap(doubts);
    }

    /** Values without stated errors. */
    public KnownWater(Map<WaterQuantity, Double> values) {
        this(values, Map.of());
    }

    private static void check(WaterQuantity quantity, double value) {
        if (!KEPT.contains(quantity)) {
            throw new IllegalArgumentException(
                    quantity.words() + " is not kept when waters mix; it is one of these that can be: " + KEPT);
        }
        switch (quantity) {
            // A brine to mix with is saltier than any water one would test.
            case SALINITY -> Bounds.practicalSalinity(value);
            case TEMPERATURE -> Bounds.waterTemperature(value);
            default -> Bounds.within(value, quantity.held(), quantity.least(), quantity.most(), quantity.words());
        }
    }

    /** Nothing known but these two. */
    public static KnownWater of(@Unit("1") double salinity, @Unit("degC") double temperature) {
        return new KnownWater(Map.of(WaterQuantity.SALINITY, salinity, WaterQuantity.TEMPERATURE, temperature));
    }

    /** Water with nothing dissolved in it. */
    public static KnownWater pure(@Unit("degC") double temperature) {
        Map<WaterQuantity, Double> none = new EnumMap<>(WaterQuantity.class);
        KEPT.forEach(quantity -> none.put(quantity, 0.0));
        none.put(WaterQuantity.TEMPERATURE, temperature);
        return new KnownWater(none);
    }

    /** The same with one more known, in its coherent unit. */
    public KnownWater with(WaterQuantity quantity, @Unit("*") double value) {
        return with(quantity, value, 0);
    }

    /** The same with one more known, and how well; an error of 0 for none stated. */
    public KnownWater with(WaterQuantity quantity, @Unit("*") double value, @Unit("*") double standardError) {
        Map<WaterQuantity, Double> more = new EnumMap<>(WaterQuantity.class);
        more.putAll(values);
        more.put(quantity, value);
        Map<WaterQuantity, Double> doubts = new EnumMap<>(WaterQuantity.class);
        doubts.putAll(errors);
        doubts.remove(quantity);
        if (standardError > 0) {
            doubts.put(quantity, standardError);
        }
        return new KnownWater(more, doubts);
    }

    /** In the coherent unit; empty where it is not known. */
    public OptionalDouble value(WaterQuantity quantity) {
        Double value = values.get(quantity);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** One standard error, in the coherent unit; 0 where none was stated. */
    public @Unit("*") double error(WaterQuantity quantity) {
        return errors.getOrDefault(quantity, 0.0);
    }

    /** Known, or what stands in for it. */
    @Unit("1")
    double salinityForDensity() {
        return values.getOrDefault(WaterQuantity.SALINITY, ASSUMED_SALINITY);
    }

    /** Known, or what stands in for it. */
    @Unit("degC")
    double temperatureForDensity() {
        return values.getOrDefault(WaterQuantity.TEMPERATURE, ASSUMED_TEMPERATURE);
    }

    /** By EOS-80, {@link Density#ofSeawater}. */
    @Unit("kg/m^3")
    double density() {
        return Density.ofSeawater(temperatureForDensity(), salinityForDensity());
    }
}
