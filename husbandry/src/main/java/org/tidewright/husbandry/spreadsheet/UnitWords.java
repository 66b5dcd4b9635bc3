package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.plan.method.WaterQuantity.*;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/**
 * The units that words of a header, or of a cell, name. A word alone may leave something open: a specific gravity its
 * temperatures, ammonia whether it is told as nitrogen, billionths whether of phosphate or of phosphorus.
 */
final class UnitWords {
    private static final Set<String> WHATEVER = Set.of();
    private static final Set<String> MASS = Set.of("mg/l", "ppm");
    private static final Set<String> MOLES = Set.of("mmol/l");
    private static final Set<String> BILLIONTHS = Set.of("ug/l", "ppb");
    private static final Set<String> GRAVITY = Set.of("sg", "gravity");
    private static final Set<String> NITROGEN = Set.of("n");
    private static final Set<String> PHOSPHORUS = Set.of("p", "phosphorus", "phosphor");

    /**
     * One way of naming a unit.
     *
     * @param any one of these words stands there
     * @param with and one of these, where there are any
     * @param sure whether nothing is left open
     */
    private record Rule(WaterQuantity quantity, String unit, Set<String> any, Set<String> with, boolean sure) {
        boolean fits(WaterQuantity of, HeaderWords words) {
            return of == quantity
                    && any.stream().anyMatch(words::has)
                    && (with.isEmpty() || with.stream().anyMatch(words::has));
        }
    }

    /** The first that fits holds. */
    private static final List<Rule> RULES = List.of(
            new Rule(TEMPERATURE, "f", Set.of("f", "°f", "degf", "fahrenheit"), WHATEVER, true),
            new Rule(TEMPERATURE, "c", Set.of("c", "°c", "degc", "celsius"), WHATEVER, true),
            new Rule(SALINITY, "sg_20c_20c", GRAVITY, Set.of("20/20", "20c", "20"), true),
            new Rule(SALINITY, "sg_25c_25c", GRAVITY, Set.of("25/25", "25c", "25"), true),
            new Rule(SALINITY, "sg_25c_25c", GRAVITY, WHATEVER, false),
            new Rule(SALINITY, "ms_per_cm_at_25c", Set.of("ms/cm", "ms"), WHATEVER, true),
            new Rule(SALINITY, "ms_per_cm_at_25c", Set.of("cond", "conductivity"), WHATEVER, false),
            new Rule(SALINITY, "pss", Set.of("psu", "ppt", "pss", "‰"), WHATEVER, true),
            new Rule(ALKALINITY, "mg_per_l_caco3", Set.of("caco3", "mg/l", "ppm"), WHATEVER, true),
            new Rule(ALKALINITY, "meq_per_l", Set.of("meq/l", "meq", "mmol/l", "mval"), WHATEVER, true),
            new Rule(ALKALINITY, "dkh", Set.of("dkh", "kh", "°dh", "°kh"), WHATEVER, true),
            new Rule(CALCIUM, "mmol_per_l", MOLES, WHATEVER, true),
            new Rule(CALCIUM, "mg_per_l", MASS, WHATEVER, true),
            new Rule(MAGNESIUM, "mmol_per_l", MOLES, WHATEVER, true),
            new Rule(MAGNESIUM, "mg_per_l", MASS, WHATEVER, true),
            new Rule(PH, "total", Set.of("total"), WHATEVER, true),
            new Rule(PH, "nbs", Set.of("nbs", "nist"), WHATEVER, true),
            new Rule(NITRATE, "n_mg_per_l", MASS, NITROGEN, true),
            new Rule(NITRATE, "no3_mg_per_l", MASS, WHATEVER, true),
            new Rule(NITRITE, "n_mg_per_l", MASS, NITROGEN, true),
            new Rule(NITRITE, "no2_mg_per_l", MASS, WHATEVER, true),
            new Rule(AMMONIA, "n_mg_per_l", MASS, NITROGEN, true),
            new Rule(AMMONIA, "nh3_mg_per_l", MASS, Set.of("nh3"), false),
            new Rule(AMMONIA, "nh4_mg_per_l", MASS, Set.of("nh4"), false),
            new Rule(AMMONIA, "n_mg_per_l", MASS, WHATEVER, false),
            new Rule(PHOSPHATE, "p_ug_per_l", BILLIONTHS, PHOSPHORUS, true),
            new Rule(PHOSPHATE, "po4_ug_per_l", BILLIONTHS, WHATEVER, false),
            new Rule(PHOSPHATE, "p_mg_per_l", MASS, PHOSPHORUS, true),
            new Rule(PHOSPHATE, "po4_mg_per_l", MASS, WHATEVER, true),
            new Rule(OXYGEN, "mg_per_l", MASS, WHATEVER, true));

    private UnitWords() {}

    /** Empty where the words name no unit of this quantity. */
    static Optional<Guess<QuantityUnit>> unit(WaterQuantity quantity, HeaderWords words) {
        return RULES.stream()
                .filter(rule -> rule.fits(quantity, words))
                .findFirst()
                .flatMap(rule -> quantity.unitOfKey(rule.unit())
                        .map(unit -> new Guess<>(unit, "the header says so", rule.sure())));
    }
}
