package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.nutrient.FlowPicture;
import org.tidewright.husbandry.nutrient.NutrientCurve;
import org.tidewright.husbandry.nutrient.NutrientForecast;
import org.tidewright.husbandry.nutrient.NutrientReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.web.chart.FlowScript;
import org.tidewright.web.chart.WeeksChart;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * Where nitrogen and phosphorus come from and go, and what a change would do in twelve weeks.
 *
 * @param draws how many the bands stand on; 0 where they are not there yet
 * @param flows null where the twin came to the end of its laws
 */
public record NutrientPage(
        String href,
        String note,
        Markup lead,
        Markup doubt,
        NutrientForm form,
        @Nullable Flows flows,
        List<Chart> charts,
        int draws,
        boolean changed,
        List<End> ends,
        List<UnknownLine> unknowns,
        List<String> cautions,
        NutrientReport.Keys keys,
        List<Source> sources) {
    private static final int[] SHOWN_DAYS = {0, 7, 14, 21, 28, 42, 56, 70, 84};

    /** The picture of an element's flows, and the same as a table. */
    public record Flows(String element, String caption, Markup json, List<FlowLine> lines, FlowLine sum) {}

    /**
     * A flow as a line of the table.
     *
     * @param changed empty where nothing was changed
     */
    public record FlowLine(String from, String to, String asRun, String changed) {}

    /** A curve with its table. */
    public record Chart(
            String id,
            String title,
            String name,
            String unit,
            String band,
            Markup svg,
            boolean drawn,
            List<Row> rows) {}

    /** A line of a curve's table. */
    public record Row(String after, String asRun, String changed, String drawn) {}

    /** What becomes of a quantity. */
    public record End(
            String name,
            String unit,
            String start,
            String asRun,
            String changed,
            String difference,
            String halfWay,
            String band,
            String bandSource) {}

    /** Something not known exactly. */
    public record UnknownLine(String name, String usual, String range, String unit, String ground) {}

    static NutrientPage of(Desk desk, SystemView view, NutrientForm form, UnitSystem units) {
        NutrientReport report = desk.nutrients(view.plan(), units, form.values());
        boolean changed = report.isChanged();
        NutrientReport.Flows flows = report.of(form.element());
        return new NutrientPage(
                Reader.href(view.entry()),
                "Twelve weeks from plan revision " + view.entry().revision() + " as it stands now",
                SentenceMarkup.of(report.lead(), units),
                SentenceMarkup.of(report.doubt(), units),
                form,
                flows == null ? null : flows(flows, units),
                report.curves().stream().map(NutrientPage::chart).toList(),
                report.draws(),
                changed,
                report.curves().stream()
                        .map(curve -> end(curve, report.keys().band(curve.quantity())))
                        .toList(),
                report.unknowns().stream()
                        .map(unknown -> new UnknownLine(
                                unknown.name(),
                                unknown.usual(),
                                unknown.range(),
                                unknown.unit(),
                                SourceWords.of(unknown.basis(), unknown.detail())))
                        .toList(),
                report.cautions(),
                report.keys(),
                report.sources());
    }

    // ── flows ──

    private static Flows flows(NutrientReport.Flows flows, UnitSystem units) {
        FlowPicture drawn = flows.drawn();
        String element = flows.element().words();
        String caption = "Grams of " + element + " a day, the mean of the last "
                + FigureText.number(drawn.days() / 7, 0) + " of the twelve weeks"
                + (flows.changed() == null ? "" : " with what you moved")
                + ". What only goes round is left out: ammonia that becomes nitrate in the water, waste that settles and rots"
                + " again. The thinnest flows stand in the table alone.";
        return new Flows(
                element, caption, Markup.json(FlowScript.of(drawn, units)), lines(flows, units), sum(flows, units));
    }

    private static List<FlowLine> lines(NutrientReport.Flows flows, UnitSystem units) {
        Map<String, FlowPicture.Flow> ways = new LinkedHashMap<>();
        FlowPicture changed = flows.changed();
        flows.drawn().flows().forEach(flow -> ways.put(key(flow), flow));
        flows.asRun().flows().forEach(flow -> ways.putIfAbsent(key(flow), flow));
        List<FlowPicture.Flow> all = new ArrayList<>(ways.values());
        all.sort(Comparator.comparing((FlowPicture.Flow flow) -> flow.from().kind())
                .thenComparing(flow -> flow.to().kind())
                .thenComparing(flow -> -flow.rate()));
        List<FlowLine> lines = new ArrayList<>();
        for (FlowPicture.Flow flow : all) {
            String from = flow.from().id();
            String to = flow.to().id();
            lines.add(new FlowLine(
                    flow.from().words(),
                    flow.to().words(),
                    FlowScript.told(flows.element(), flows.asRun().rate(from, to), units),
                    changed == null ? "" : FlowScript.told(flows.element(), changed.rate(from, to), units)));
        }
        return lines;
    }

    private static String key(FlowPicture.Flow flow) {
        return flow.from().id() + " > " + flow.to().id();
    }

    private static FlowLine sum(NutrientReport.Flows flows, UnitSystem units) {
        FlowPicture changed = flows.changed();
        return new FlowLine(
                "All that comes in",
                "goes out or stays",
                FlowScript.told(flows.element(), flows.asRun().total(), units),
                changed == null ? "" : FlowScript.told(flows.element(), changed.total(), units));
    }

    // ── courses ──

    private static Chart chart(NutrientCurve curve) {
        Quantity quantity = curve.quantity();
        String name = quantity.words();
        String title = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        double[] changed = curve.changed();
        Band drawn = curve.drawn();
        List<Row> rows = new ArrayList<>();
        for (int day : SHOWN_DAYS) {
            if (day < curve.days().length) {
                rows.add(new Row(
                        day == 0 ? "now" : day / 7 + (day == 7 ? " week" : " weeks"),
                        number(quantity, curve.asRun()[day]),
                        changed == null ? "" : number(quantity, changed[day]),
                        drawn == null || day >= drawn.low().length
                                ? ""
                                : number(quantity, drawn.low()[day]) + "–" + number(quantity, drawn.high()[day])));
            }
        }
        WeeksChart.Curves curves = new WeeksChart.Curves(
                title,
                quantity.unit(),
                quantity.decimals(),
                curve.band().low(),
                curve.band().high(),
                curve.days(),
                curve.asRun(),
                changed,
                drawn,
                NutrientForecast.DAYS,
                quantity == Quantity.AMMONIA);
        return new Chart(
                quantity.name().toLowerCase(Locale.ROOT),
                title,
                name,
                quantity.unit(),
                "held " + band(curve),
                new Markup(WeeksChart.of(curves)),
                drawn != null,
                rows);
    }

    private static End end(NutrientCurve curve, String source) {
        Quantity quantity = curve.quantity();
        String name = quantity.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + quantity.words().substring(1);
        double halfWay = curve.halfWay();
        double difference = curve.changed() == null ? curve.end() - curve.start() : curve.end() - curve.endAsRun();
        return new End(
                name,
                quantity.unit(),
                number(quantity, curve.start()),
                number(quantity, curve.endAsRun()),
                curve.changed() == null ? "" : number(quantity, curve.end()),
                (difference > 0 ? "+" : "") + number(quantity, difference),
                told(halfWay),
                band(curve),
                source);
    }

    private static String told(double days) {
        if (Double.isInfinite(days)) {
            return "nothing moves";
        }
        return days < 1 ? "a day" : FigureText.number(days, 0) + "\u00a0days";
    }

    private static String band(NutrientCurve curve) {
        String high = plain(curve.band().high());
        return curve.band().low() > 0 ? plain(curve.band().low()) + "–" + high : "under " + high;
    }

    private static String plain(double value) {
        return FigureText.number(value, 2).replaceAll("\\.?0+$", "");
    }

    private static String number(Quantity quantity, double value) {
        return FigureText.number(value, quantity.decimals());
    }
}
