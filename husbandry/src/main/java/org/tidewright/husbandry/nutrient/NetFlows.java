package org.tidewright.husbandry.nutrient;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Amounts that flow between nodes. What goes round can be taken out: along each circle the least of its flows is taken
 * from all of them, which leaves what every node gains as it was.
 */
final class NetFlows<N> {
    private final Map<N, Map<N, Double>> flows = new LinkedHashMap<>();

    /** What sees each flow. */
    @FunctionalInterface
    interface Each<N> {
        void flow(N from, N to, double amount);
    }

    void add(N from, N to, double amount) {
        flows.computeIfAbsent(from, node -> new LinkedHashMap<>()).merge(to, amount, Double::sum);
    }

    void each(Each<N> seen) {
        flows.forEach((from, all) -> all.forEach((to, amount) -> seen.flow(from, to, amount)));
    }

    /** What a node gains. */
    double net(N node) {
        double[] sum = new double[1];
        each((from, to, amount) -> {
            sum[0] += to.equals(node) ? amount : 0;
            sum[0] -= from.equals(node) ? amount : 0;
        });
        return sum[0];
    }

    void cancelRounds() {
        for (List<N> round = round(); round != null; round = round()) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < round.size(); i++) {
                least = Math.min(least, amount(round.get(i), round.get((i + 1) % round.size())));
            }
            for (int i = 0; i < round.size(); i++) {
                take(round.get(i), round.get((i + 1) % round.size()), least);
            }
        }
    }

    private double amount(N from, N to) {
        return flows.getOrDefault(from, Map.of()).getOrDefault(to, 0.0);
    }

    /** The least of a circle is taken whole, so that no rounding keeps the circle alive. */
    private void take(N from, N to, double amount) {
        Map<N, Double> all = flows.getOrDefault(from, Map.of());
        double left = amount(from, to) - amount;
        if (left > 0) {
            all.put(to, left);
        } else {
            all.remove(to);
        }
    }

    /** Nodes of a circle in the order of their flows; null where there is none. */
    private @Nullable List<N> round() {
        Set<N> done = new LinkedHashSet<>();
        for (N start : List.copyOf(flows.keySet())) {
            List<N> round = follow(start, new ArrayList<>(), done);
            if (round != null) {
                return round;
            }
        }
        return null;
    }

    private @Nullable List<N> follow(N node, List<N> path, Set<N> done) {
        int before = path.indexOf(node);
        if (before >= 0) {
            return List.copyOf(path.subList(before, path.size()));
        }
        if (!done.add(node)) {
            return null;
        }
        path.add(node);
        for (N next : flows.getOrDefault(node, Map.of()).keySet()) {
            List<N> round = follow(next, path, done);
            if (round != null) {
                return round;
            }
        }
        path.remove(path.size() - 1);
        return null;
    }
}
