package org.tidewright.husbandry.spreadsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/** In which unit numbers of a quantity are, from the words above them and from the numbers. */
final class UnitGuess {
    private static final double MOST = 0.8;
    private static final double SOME = 0.3;
    private static final double FEW = 0.1;

    private UnitGuess() {}

    /** Empty where no unit makes sense of the numbers. */
    static Optional<Guess<QuantityUnit>> of(WaterQuantity quantity, HeaderWords header, List<CellNumber> numbers) {
        Optional<Guess<QuantityUnit>> said = UnitWords.unit(quantity, header);
        if (said.isPresent()) {
            return checked(quantity, said.get(), numbers);
        }
        return ofNumbers(quantity, numbers);
    }

    /** What the header says stands, unless the numbers speak for another unit. */
    private static Optional<Guess<QuantityUnit>> checked(
            WaterQuantity quantity, Guess<QuantityUnit> said, List<CellNumber> numbers) {
        if (numbers.isEmpty() || share(quantity, said.value(), numbers) >= SOME) {
            return Optional.of(said);
        }
        Optional<Guess<QuantityUnit>> better = ofNumbers(quantity, numbers);
        if (better.isPresent()) {
            String words = "the header says " + name(said.value()) + ", but numbers such as "
                    + numbers.get(numbers.size() / 2).digits() + " would be usual in "
                    + name(better.get().value());
            return Optional.of(new Guess<>(said.value(), words, false));
        }
        return possible(quantity, said.value(), numbers) >= MOST ? Optional.of(said) : Optional.empty();
    }

    private static Optional<Guess<QuantityUnit>> ofNumbers(WaterQuantity quantity, List<CellNumber> numbers) {
        Map<QuantityUnit, Double> shares = new LinkedHashMap<>();
        quantity.units().forEach(unit -> shares.put(unit, share(quantity, unit, numbers)));
        QuantityUnit best = quantity.units().get(0);
        for (QuantityUnit unit : quantity.units()) {
            if (shares.getOrDefault(unit, 0.0) > shares.getOrDefault(best, 0.0)) {
                best = unit;
            }
        }
        double bestShare = shares.getOrDefault(best, 0.0);
        if (bestShare < SOME) {
            return Optional.empty();
        }
        List<String> others = new ArrayList<>();
        for (QuantityUnit unit : quantity.units()) {
            if (!unit.equals(best) && shares.getOrDefault(unit, 0.0) > FEW) {
                others.add(name(unit));
            }
        }
        String such = "numbers such as " + numbers.get(numbers.size() / 2).digits() + " are usual in " + name(best);
        if (quantity == WaterQuantity.PH) {
            return Optional.of(
                    new Guess<>(best, such + ", as probes and kits of the trade show it", bestShare >= MOST));
        }
        return Optional.of(new Guess<>(
                best,
                others.isEmpty() ? such : such + ", but also in " + String.join(" and ", others),
                others.isEmpty() && bestShare >= MOST));
    }

    /** How many of the numbers, those of nothing apart, would be usual in a unit. */
    static double share(WaterQuantity quantity, QuantityUnit unit, List<CellNumber> numbers) {
        int counted = 0;
        int usual = 0;
        for (CellNumber number : numbers) {
            if (number.value() != 0) {
                counted++;
                usual += isUsual(quantity, unit, number.value()) ? 1 : 0;
            }
        }
        return counted == 0 ? 0 : usual / (double) counted;
    }

    private static double possible(WaterQuantity quantity, QuantityUnit unit, List<CellNumber> numbers) {
        long possible = numbers.stream()
                .filter(number -> isPossible(quantity, unit, number.value()))
                .count();
        return possible / (double) numbers.size();
    }

    private static boolean isUsual(WaterQuantity quantity, QuantityUnit unit, double written) {
        try {
            return UsualRange.holds(quantity, unit, written);
        } catch (IllegalArgumentException outsideTheLaw) {
            return false;
        }
    }

    private static boolean isPossible(WaterQuantity quantity, QuantityUnit unit, double written) {
        try {
            double held = unit.toHeld(written);
            return held >= quantity.least() && held <= quantity.most();
        } catch (IllegalArgumentException outsideTheLaw) {
            return false;
        }
    }

    static String name(QuantityUnit unit) {
        return unit.symbol().isEmpty() ? unit.key() : unit.symbol();
    }
}
