package org.tidewright.twin.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;

/**
 * What turns into what when a reaction has gone once: so many moles of stocks less here, so many more there. It is
 * refused unless every {@link Balance} holds. Alkalinity is not stated: in each body it follows from the charges of what
 * appears and vanishes there.
 */
public final class Recipe {
    private static final double ROUNDING = 1e-12;

    private final String name;
    private final int[] places;
    private final double[] amounts;

    private Recipe(String name, List<Change> changes) {
        this.name = name;
        places = changes.stream()
                .mapToInt(change -> change.body().at(change.stock()))
                .toArray();
        amounts = changes.stream().mapToDouble(Change::amount).toArray();
    }

    /** One line of a recipe. */
    private record Change(Body body, Stock stock, double amount) {}

    /** Starts a recipe. */
    public static Builder named(String name) {
        return new Builder(name);
    }

    public String name() {
        return name;
    }

    /** Number of stocks it changes. */
    public int size() {
        return places.length;
    }

    /** Position in the state of the stock that a line changes. */
    public int place(int line) {
        return places[line];
    }

    /** Change of that stock when the reaction has gone once, in the stock's unit. */
    public @Unit("*") double amount(int line) {
        return amounts[line];
    }

    /** Collects the lines of a recipe. */
    public static final class Builder {
        private final String name;
        private final List<Change> changes = new ArrayList<>();

        private Builder(String name) {
            this.name = name;
        }

        /** So much of a stock vanishes. */
        public Builder takes(Body body, Stock stock, @Unit("*") double amount) {
            return gives(body, stock, -amount);
        }

        /** So much of a stock appears. */
        public Builder gives(Body body, Stock stock, @Unit("*") double amount) {
            if (stock == Stock.ALKALINITY) {
                throw new IllegalArgumentException(
                        name + ": alkalinity follows from the other changes and cannot be stated");
            }
            if (!Double.isFinite(amount)) {
                throw new IllegalArgumentException(name + ": the change of " + stock + " is " + amount);
            }
            if (amount != 0) {
                changes.add(new Change(body, stock, amount));
            }
            return this;
        }

        /** Something goes from one body to another as it is. */
        public Builder moves(Stock stock, Body from, Body to, @Unit("*") double amount) {
            return takes(from, stock, amount).gives(to, stock, amount);
        }

        /**
         * The recipe.
         *
         * @throws IllegalArgumentException where something would be made or lost
         */
        public Recipe build() {
            for (Balance balance : Balance.values()) {
                requireKept(balance);
            }
            List<Change> whole = new ArrayList<>(changes);
            charges().forEach((body, charge) -> {
                if (Math.abs(charge) > ROUNDING) {
                    whole.add(new Change(body, Stock.ALKALINITY, -charge));
                }
            });
            return new Recipe(name, whole);
        }

        private void requireKept(Balance balance) {
            double sum = 0;
            double size = 0;
            for (Change change : changes) {
                double counted = balance.weight(change.stock()) * change.amount();
                sum += counted;
                size += Math.abs(counted);
            }
            // What charge is missing in a body becomes its alkalinity.
            if (balance != Balance.CHARGE && Math.abs(sum) > ROUNDING * size) {
                throw new IllegalArgumentException(
                        name + " would make " + sum + " of " + balance + " out of nothing: " + changes);
            }
        }

        private Map<Body, Double> charges() {
            Map<Body, Double> charges = new LinkedHashMap<>();
            for (Change change : changes) {
                charges.merge(change.body(), Balance.CHARGE.weight(change.stock()) * change.amount(), Double::sum);
            }
            return charges;
        }
    }
}
