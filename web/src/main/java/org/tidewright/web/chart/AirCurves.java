package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;

/**
 * The pH a probe reads, by alkalinity, a curve for each air.
 *
 * @param alkalinity dKH, rising
 * @param own the keeper's water; null where too little is known of it
 */
public record AirCurves(
        double[] alkalinity, List<Air> airs, @Nullable Mark own) {
    /**
     * One air.
     *
     * @param ppm carbon dioxide in it, by parts of dry air
     * @param fresh whether it is the air outdoors
     * @param ph on the NBS scale
     */
    public record Air(double ppm, boolean fresh, double[] ph) {}

    /**
     * A water among the curves.
     *
     * @param alkalinity dKH
     * @param ph on the NBS scale
     * @param freshPh what it would be in fresh air
     */
    public record Mark(double alkalinity, double ph, double freshPh) {}

    /** A line of the table: an alkalinity, and the pH in each air. */
    public record Row(String alkalinity, List<String> ph) {}

    double from() {
        return alkalinity[0];
    }

    double to() {
        return alkalinity[alkalinity.length - 1];
    }

    /** Heads of the table's columns. */
    public List<String> heads() {
        return airs.stream().map(air -> FigureText.number(air.ppm(), 0)).toList();
    }

    /** The curves at whole degrees. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < alkalinity.length; i++) {
            int at = i;
            if (alkalinity[i] == Math.rint(alkalinity[i])) {
                rows.add(new Row(
                        FigureText.number(alkalinity[i], 0),
                        airs.stream()
                                .map(air -> FigureText.number(air.ph()[at], 2))
                                .toList()));
            }
        }
        return rows;
    }

    /** The picture's result in words. */
    String told() {
        int middle = alkalinity.length / 2;
        Air most = airs.get(airs.size() - 1);
        Air least = airs.get(0);
        String words = "pH on a probe by alkalinity, from " + FigureText.number(from(), 0) + " to "
                + FigureText.number(to(), 0) + " dKH. At " + FigureText.number(alkalinity[middle], 0)
                + " dKH it reads " + FigureText.number(least.ph()[middle], 2) + " in air of "
                + FigureText.number(least.ppm(), 0) + " ppm of carbon dioxide and "
                + FigureText.number(most.ph()[middle], 2) + " in air of " + FigureText.number(most.ppm(), 0)
                + " ppm.";
        return own == null
                ? words
                : words + " Your water reads " + FigureText.number(own.ph(), 2) + " and would read "
                        + FigureText.number(own.freshPh(), 2) + " in fresh air.";
    }
}
