package org.tidewright.husbandry.sheet;

import static org.tidewright.husbandry.sheet.SheetColumn.CONDUCTIVITY;
import static org.tidewright.husbandry.sheet.SheetColumn.INORGANIC_CARBON;
import static org.tidewright.husbandry.sheet.SheetColumn.PARTIAL_PRESSURE;
import static org.tidewright.husbandry.sheet.SheetColumn.PH_TOTAL;
import static org.tidewright.husbandry.sheet.SheetColumn.PRACTICAL_SALINITY;
import static org.tidewright.husbandry.sheet.SheetColumn.TEMPERATURE;
import static org.tidewright.husbandry.sheet.SheetColumn.TOTAL_ALKALINITY;
import static org.tidewright.husbandry.sheet.SheetColumn.TOTAL_AMMONIA;
import static org.tidewright.husbandry.sheet.SheetColumn.TOTAL_PHOSPHATE;
import static org.tidewright.husbandry.sheet.SheetColumn.TOTAL_SILICATE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.salinity.Conductivity;

/**
 * A water with all that follows from what is known of it.
 *
 * @param used what it was computed from; anything else given was not looked at
 * @param computed every number that could be computed, in the order of the sheet and in the unit of its column
 */
public record WaterSheet(Set<SheetColumn> used, Map<SheetColumn, Double> computed) {
    /** Any two of these settle the carbonate system; where more are given, the first two do. */
    public static final List<SheetColumn> SETTLING =
            List.of(TOTAL_ALKALINITY, INORGANIC_CARBON, PH_TOTAL, PARTIAL_PRESSURE);

    /** What a sheet can be computed from. */
    public static final Set<SheetColumn> KNOWABLE = Collections.unmodifiableSet(EnumSet.of(
            TEMPERATURE,
            PRACTICAL_SALINITY,
            CONDUCTIVITY,
            TOTAL_ALKALINITY,
            INORGANIC_CARBON,
            PH_TOTAL,
            PARTIAL_PRESSURE,
            TOTAL_PHOSPHATE,
            TOTAL_SILICATE,
            TOTAL_AMMONIA));

    private static final List<SheetColumn> NUTRIENTS = List.of(TOTAL_PHOSPHATE, TOTAL_SILICATE, TOTAL_AMMONIA);

    private static final double MICRO = 1e-6;
    private static final double MS_PER_CM = 0.1; // in S/m

    /**
     * Computes all that can be.
     *
     * @param given numbers in the units of their columns
     * @param calcium as measured, mol/kg; null for the sea's ratio to salinity
     * @throws IllegalArgumentException where a number cannot be meant, or no water has both of a pair
     */
    public static WaterSheet of(Map<SheetColumn, Double> given, BoronRatio boron, @Nullable Double calcium) {
        EnumSet<SheetColumn> used = EnumSet.noneOf(SheetColumn.class);
        Double temperature = take(TEMPERATURE, given, used);
        Double salinity = take(PRACTICAL_SALINITY, given, used);
        if (salinity == null && temperature != null && given.containsKey(CONDUCTIVITY)) {
            Double conductivity = take(CONDUCTIVITY, given, used);
            salinity = conductivity == null ? null : Conductivity.toPractical(conductivity * MS_PER_CM, temperature);
        }
        CarbonateState state = null;
        Double ph = given.get(PH_TOTAL);
        List<SheetColumn> pair = pair(given);
        if (temperature != null && salinity != null && pair.size() == 2) {
            used.addAll(pair);
            NUTRIENTS.stream().filter(given::containsKey).forEach(used::add);
            state = solve(temperature, salinity, pair, given, totals(salinity, given, boron, calcium));
            ph = state.ph();
        } else if (ph != null) {
            used.add(PH_TOTAL);
        }
        SolvedWater water = new SolvedWater(temperature, salinity, ph, state);
        Map<SheetColumn, Double> computed = new EnumMap<>(SheetColumn.class);
        for (SheetColumn column : SheetColumn.values()) {
            Double value = used.contains(column) ? null : column.of(water);
            if (value != null) {
                computed.put(column, value);
            }
        }
        return new WaterSheet(Collections.unmodifiableSet(used), Collections.unmodifiableMap(computed));
    }

    private static List<SheetColumn> pair(Map<SheetColumn, Double> given) {
        List<SheetColumn> pair = new ArrayList<>();
        for (SheetColumn column : SETTLING) {
            if (given.containsKey(column) && pair.size() < 2) {
                pair.add(column);
            }
        }
        return pair;
    }

    private static CarbonateState solve(
            double temperature,
            double salinity,
            List<SheetColumn> pair,
            Map<SheetColumn, Double> given,
            TotalConcentrations totals) {
        CarbonateSystem water = new CarbonateSystem(temperature, salinity, totals, CarbonicAcid.LUEKER_2000);
        double first = amount(pair.get(0), given);
        double second = amount(pair.get(1), given);
        boolean pressure = pair.get(1) == PARTIAL_PRESSURE;
        return switch (pair.get(0)) {
            case TOTAL_ALKALINITY ->
                pressure
                        ? water.fromAlkalinityAndPartialPressure(first, second)
                        : pair.get(1) == PH_TOTAL
                                ? water.fromAlkalinityAndPh(first, second)
                                : water.fromAlkalinityAndCarbon(first, second);
            case INORGANIC_CARBON ->
                pressure ? water.fromCarbonAndPartialPressure(first, second) : water.fromCarbonAndPh(first, second);
            default -> water.fromPhAndPartialPressure(first, second);
        };
    }

    /** Boron and calcium that go with the salt, and the nutrients given. */
    static TotalConcentrations totals(
            double salinity, Map<SheetColumn, Double> given, BoronRatio boron, @Nullable Double calcium) {
        TotalConcentrations totals = TotalConcentrations.ofSeawater(salinity, boron)
                .withNutrients(
                        MICRO * given.getOrDefault(TOTAL_PHOSPHATE, 0.0),
                        MICRO * given.getOrDefault(TOTAL_SILICATE, 0.0),
                        MICRO * given.getOrDefault(TOTAL_AMMONIA, 0.0));
        return calcium == null ? totals : totals.withCalcium(calcium);
    }

    private static double amount(SheetColumn column, Map<SheetColumn, Double> given) {
        double value = given.getOrDefault(column, Double.NaN);
        return column == PH_TOTAL ? value : value * MICRO;
    }

    private static @Nullable Double take(SheetColumn column, Map<SheetColumn, Double> given, Set<SheetColumn> used) {
        Double value = given.get(column);
        if (value != null) {
            used.add(column);
        }
        return value;
    }
}
