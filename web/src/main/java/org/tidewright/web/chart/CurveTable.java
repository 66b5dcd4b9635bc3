package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.UnitSystem;

/** A curve as a table: time, the middle draw, the band. */
public record CurveTable(String title, String unit, List<Row> rows) {
    /**
     * A line of the table.
     *
     * @param band from the 5th to the 95th of 100 draws; empty where there is no doubt
     */
    public record Row(String time, String middle, String band) {}

    public static CurveTable of(Curve curve, TimeAxis axis, UnitSystem units) {
        int decimals = Math.max(1, curve.unit().decimals());
        List<Row> rows = new ArrayList<>();
        for (double when : times(curve, axis)) {
            double low = Curve.at(curve.time(), curve.low(), when);
            double high = Curve.at(curve.time(), curve.high(), when);
            String time =
                    FigureText.of(Figure.exact(Measure.DURATION, when), units).line();
            String band = high - low < 1e-9 || Double.isNaN(high - low)
                    ? ""
                    : FigureText.number(low, decimals) + "–" + FigureText.number(high, decimals);
            rows.add(new Row(time, FigureText.number(Curve.at(curve.time(), curve.middle(), when), decimals), band));
        }
        return new CurveTable(curve.title(), curve.unit().symbol(), rows);
    }

    private static List<Double> times(Curve curve, TimeAxis axis) {
        List<Double> times = new ArrayList<>(List.of(0.0));
        if (curve.id().equals(Curve.ROOM)) {
            times.addAll(List.of(5.0, 10.0, 20.0, 30.0, 45.0, 60.0, 90.0, 120.0));
        } else {
            double step = axis.hours() <= 6 ? 0.5 : axis.hours() <= 12 ? 1 : axis.hours() <= 30 ? 2 : 6;
            for (double h = step; h < axis.hours() - 1e-9; h += step) {
                times.add(3600 * h);
            }
        }
        times.add(axis.seconds());
        return times;
    }
}
