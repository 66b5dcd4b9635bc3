package org.tidewright.app.forecast;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.jfree.svg.SVGGraphics2D;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;

/**
 * A forecast as a picture: one panel a quantity over one axis of days; as run dashed, changed drawn full, the band of many draws
 * shaded.
 */
public final class ForecastChart {
    private static final int WIDTH = 900;
    private static final int PANEL = 240;
    private static final int REST = 90;
    private static final double DAY = 86_400;

    /** Paper, ink and the two blues of the pages. */
    private static final Color PAPER = new Color(0xFC, 0xF9, 0xF2);

    private static final Color INK = new Color(0x1B, 0x28, 0x30);
    private static final Color RULE = new Color(0xDD, 0xD2, 0xBE);
    private static final Color SAND = new Color(0xB8, 0x9A, 0x62);
    private static final Color SHALLOW = new Color(0x3F, 0x86, 0xA0);
    private static final Color DEEP = new Color(0x12, 0x43, 0x5A);

    private ForecastChart() {}

    /** As scalable vector graphics. */
    public static byte[] svg(ForecastReport report, List<Quantity> quantities, UnitSystem units) {
        int height = REST + PANEL * quantities.size();
        SVGGraphics2D graphics = new SVGGraphics2D(WIDTH, height);
        chart(report, quantities, units).draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, height));
        return graphics.getSVGDocument().getBytes(StandardCharsets.UTF_8);
    }

    /** As a bitmap of twice the size. */
    public static byte[] png(ForecastReport report, List<Quantity> quantities, UnitSystem units) {
        int height = REST + PANEL * quantities.size();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ChartUtils.writeScaledChartAsPNG(bytes, chart(report, quantities, units), WIDTH, height, 2, 2);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static JFreeChart chart(ForecastReport report, List<Quantity> quantities, UnitSystem units) {
        CombinedDomainXYPlot panels = new CombinedDomainXYPlot(axis("days"));
        panels.setGap(14);
        for (Quantity quantity : quantities) {
            panels.add(panel(report, quantity, units));
        }
        Font title = new Font(Font.SERIF, Font.PLAIN, 18);
        JFreeChart chart = new JFreeChart(report.plan().name() + ": " + report.lead(units), title, panels, true);
        chart.setBackgroundPaint(PAPER);
        chart.getTitle().setPaint(INK);
        chart.getTitle().setFont(new Font(Font.SERIF, Font.PLAIN, 13));
        chart.getLegend().setBackgroundPaint(PAPER);
        return chart;
    }

    private static XYPlot panel(ForecastReport report, Quantity quantity, UnitSystem units) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(series("as run", report.asRun(), quantity, units));
        if (report.changed() != null) {
            data.addSeries(series("changed", report.changed(), quantity, units));
        }
        String unit = ForecastReport.unit(quantity, units);
        NumberAxis range = axis(quantity.words() + (unit.isEmpty() ? "" : ", " + unit));
        range.setAutoRangeIncludesZero(false);
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        lines.setSeriesPaint(0, SHALLOW);
        lines.setSeriesStroke(
                0, new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0));
        lines.setSeriesPaint(1, DEEP);
        lines.setSeriesStroke(1, new BasicStroke(2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        XYPlot plot = new XYPlot(data, null, range, lines);
        if (report.doubt() != null) {
            plot.setDataset(1, band(report.doubt().told(), quantity, units));
            plot.setRenderer(1, bandRenderer());
        }
        plot.setBackgroundPaint(PAPER);
        plot.setRangeGridlinePaint(RULE);
        plot.setDomainGridlinePaint(RULE);
        plot.setOutlinePaint(RULE);
        return plot;
    }

    private static XYSeries series(String name, Course course, Quantity quantity, UnitSystem units) {
        XYSeries series = new XYSeries(name);
        double[] values = course.of(quantity);
        for (int i = 0; i < values.length; i++) {
            series.add(course.time()[i] / DAY, ForecastReport.shown(quantity, values[i], units));
        }
        return series;
    }

    private static YIntervalSeriesCollection band(Outlook outlook, Quantity quantity, UnitSystem units) {
        YIntervalSeries series = new YIntervalSeries("middle and nine of ten of " + outlook.draws() + " draws");
        Band band = outlook.of(quantity);
        for (int i = 0; i < outlook.time().length; i++) {
            series.add(
                    outlook.time()[i] / DAY,
                    ForecastReport.shown(quantity, band.middle()[i], units),
                    ForecastReport.shown(quantity, band.low()[i], units),
                    ForecastReport.shown(quantity, band.high()[i], units));
        }
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        data.addSeries(series);
        return data;
    }

    private static DeviationRenderer bandRenderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setSeriesPaint(0, SAND);
        renderer.setSeriesFillPaint(0, SAND);
        renderer.setSeriesStroke(0, new BasicStroke(1f));
        renderer.setAlpha(0.35f);
        return renderer;
    }

    private static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelPaint(INK);
        axis.setTickLabelPaint(INK);
        axis.setAutoRangeIncludesZero(false);
        axis.setLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        axis.setTickLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        return axis;
    }
}
