package org.tidewright.husbandry.spreadsheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** What the numbers below a header, or beside a name, are. */
final class MeasuredGuess {
    /**
     * Numbers without a name are tried as these, in this order; common practice, and to be confirmed in any case.
     *
     * @param least as written
     * @param most as written
     */
    private record Typical(WaterQuantity quantity, String unit, double least, double most) {
        boolean isOf(List<CellNumber> numbers) {
            long inside = numbers.stream()
                    .filter(number -> number.value() >= least && number.value() <= most)
                    .count();
            return inside >= MOST * numbers.size();
        }

        QuantityUnit quantityUnit() {
            return quantity.unitOfKey(unit).orElseThrow();
        }
    }

    private static final List<Typical> TYPICAL = List.of(
            new Typical(WaterQuantity.SALINITY, "sg_25c_25c", 1.015, 1.032),
            new Typical(WaterQuantity.MAGNESIUM, "mg_per_l", 1000, 1700),
            new Typical(WaterQuantity.CALCIUM, "mg_per_l", 300, 600),
            new Typical(WaterQuantity.TEMPERATURE, "f", 60, 90),
            new Typical(WaterQuantity.SALINITY, "pss", 29.5, 40),
            new Typical(WaterQuantity.TEMPERATURE, "c", 18, 29.5),
            new Typical(WaterQuantity.PH, "nbs", 7.5, 8.8),
            new Typical(WaterQuantity.ALKALINITY, "dkh", 5, 14));

    /** Words in the keys of methods that say how something was measured. */
    private static final Set<String> TELLING =
            Set.of("probe", "titration", "photometer", "electrode", "laboratory", "strip", "digital");

    private static final double MOST = 0.8;

    /** Where a probe stands of which nothing is said. */
    static final String TANK = "tank";

    private MeasuredGuess() {}

    /** Without value where the numbers are left out, with the reason why. */
    static Guess<Optional<Measured>> of(String header, List<CellNumber> numbers) {
        HeaderWords words = HeaderWords.of(header);
        String other = words.somethingElse();
        if (other != null) {
            return leftOut("“" + other + "” tells of something else than a reading of the water");
        } else if (numbers.isEmpty()) {
            return leftOut("it holds no numbers");
        }
        Set<WaterQuantity> named = words.quantities();
        if (named.size() > 1) {
            return leftOut("it names more than one quantity");
        } else if (named.size() == 1) {
            return named(named.iterator().next(), words, numbers);
        }
        return words.nameNothing() ? byNumbers(words, numbers) : leftOut("its words name no quantity known here");
    }

    private static Guess<Optional<Measured>> named(
            WaterQuantity quantity, HeaderWords words, List<CellNumber> numbers) {
        Guess<QuantityUnit> unit = UnitGuess.of(quantity, words, numbers).orElse(null);
        if (unit == null) {
            return leftOut("no unit makes " + quantity.words() + " of numbers such as "
                    + numbers.get(numbers.size() / 2).digits());
        }
        return measured(quantity, words, unit.value(), unit.reason(), unit.sure());
    }

    private static Guess<Optional<Measured>> byNumbers(HeaderWords words, List<CellNumber> numbers) {
        List<Typical> fitting =
                TYPICAL.stream().filter(typical -> typical.isOf(numbers)).toList();
        if (fitting.isEmpty()) {
            return leftOut("it has no name, and its numbers do not tell");
        }
        String others = fitting.stream()
                .skip(1)
                .map(typical -> typical.quantity().words() + " in " + UnitGuess.name(typical.quantityUnit()))
                .collect(Collectors.joining(" or "));
        Typical first = fitting.get(0);
        String reason = "it has no name, but numbers such as "
                + numbers.get(numbers.size() / 2).digits() + " are usual for it"
                + (others.isEmpty() ? "" : ", also for " + others);
        return measured(first.quantity(), words, first.quantityUnit(), reason, false);
    }

    private static Guess<Optional<Measured>> measured(
            WaterQuantity quantity, HeaderWords words, QuantityUnit unit, String reason, boolean sure) {
        String place = words.rest().isEmpty() ? TANK : words.rest();
        Measured measured = new Measured(quantity, unit, method(quantity, words), place, Kept.BY_PACE, sure);
        return new Guess<>(Optional.of(measured), reason, sure);
    }

    /** The only method that a word of the header names; null where none or more than one is. */
    private static @Nullable String method(WaterQuantity quantity, HeaderWords words) {
        List<String> meant = TestMethods.of(quantity).stream()
                .map(TestMethod::key)
                .filter(key ->
                        Arrays.stream(key.split("_", -1)).anyMatch(word -> TELLING.contains(word) && words.has(word))
                                || (words.hasAny("icp", "lab") && key.equals("laboratory")))
                .toList();
        return meant.size() == 1 ? meant.get(0) : null;
    }

    private static Guess<Optional<Measured>> leftOut(String reason) {
        return new Guess<>(Optional.empty(), reason, true);
    }
}
