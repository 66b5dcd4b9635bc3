package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.List;

/** Values in time, thinned to as many columns as a chart can show apart; no extreme is lost. */
public final class Thinned {
    private Thinned() {}

    /**
     * A value, or many of one time that were summed up already.
     *
     * @param at share of the width, 0 to 1
     */
    public record Value(double at, int count, double least, double mean, double most) {
        /** A single one. */
        public static Value of(double at, double value) {
            return new Value(at, 1, value, value, value);
        }
    }

    /**
     * All values of a stretch of the width.
     *
     * @param from place of the first of them
     * @param to place of the last
     */
    public record Column(double from, double to, int count, double least, double mean, double most) {
        /** Between the first and the last. */
        public double at() {
            return (from + to) / 2;
        }

        private Column with(Value value) {
            int together = count + value.count();
            return new Column(
                    from,
                    value.at(),
                    together,
                    Math.min(least, value.least()),
                    (count * mean + value.count() * value.mean()) / together,
                    Math.max(most, value.most()));
        }
    }

    /**
     * Into columns of one width; those without a value are left out.
     *
     * @param values in order of time
     */
    public static List<Column> of(List<Value> values, int columns) {
        List<Column> thinned = new ArrayList<>();
        int last = -1;
        for (Value value : values) {
            int column = (int) Math.min(columns - 1, Math.floor(value.at() * columns));
            if (column == last) {
                thinned.set(thinned.size() - 1, thinned.get(thinned.size() - 1).with(value));
            } else {
                thinned.add(
                        new Column(value.at(), value.at(), value.count(), value.least(), value.mean(), value.most()));
            }
            last = column;
        }
        return thinned;
    }
}
