package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.StructuralModel;

/** States by name, what is known of them at the start, and what drives and shakes them, while a model is put together. */
final class StateDraft {
    private final Map<String, Integer> states = new LinkedHashMap<>();
    private final List<Known> known = new ArrayList<>();
    private final List<Drive> drives = new ArrayList<>();
    private final List<Map<String, Double>> shakes = new ArrayList<>();

    private record Drive(String of, String by, double amount) {}

    void add(String state, Known atTheStart) {
        if (states.putIfAbsent(state, states.size()) != null) {
            throw new IllegalStateException("there are two states “" + state + "”");
        }
        known.add(atTheStart);
    }

    boolean has(String state) {
        return states.containsKey(state);
    }

    /** A state moves by so much a day for each unit of another; without effect where either is missing. */
    void drive(String of, String by, double amount) {
        if (has(of) && has(by)) {
            drives.add(new Drive(of, by, amount));
        }
    }

    /** States are shaken together, each by its number; those that are missing are left out. */
    void shake(Map<String, Double> direction) {
        shakes.add(direction);
    }

    /** A state falls back to 0 within some days, and is shaken so that a size is how far from there it usually is. */
    void shakeFading(String state, double within) {
        drives.add(new Drive(state, state, -1 / within));
        shakes.add(Map.of(state, Math.sqrt(2 / within)));
    }

    Map<String, Integer> states() {
        return states;
    }

    double[][] drives() {
        double[][] matrix = new double[states.size()][states.size()];
        for (Drive drive : drives) {
            matrix[index(drive.of())][index(drive.by())] += drive.amount();
        }
        return matrix;
    }

    StructuralModel structure() {
        return new StructuralModel(
                drives(), shakes.stream().map(this::direction).toList());
    }

    Belief start() {
        return Belief.independent(
                known.stream().mapToDouble(Known::value).toArray(),
                known.stream().mapToDouble(Known::standardError).toArray());
    }

    private double[] direction(Map<String, Double> shake) {
        double[] direction = new double[states.size()];
        shake.forEach((state, amount) -> {
            if (has(state)) {
                direction[index(state)] = amount;
            }
        });
        return direction;
    }

    private int index(String state) {
        Integer index = states.get(state);
        if (index == null) {
            throw new IllegalStateException("there is no state “" + state + "”");
        }
        return index;
    }
}
