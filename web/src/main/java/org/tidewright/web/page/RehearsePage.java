package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.web.chart.CrossingBar;
import org.tidewright.web.chart.Curve;
import org.tidewright.web.chart.CurveScript;
import org.tidewright.web.chart.CurveTable;
import org.tidewright.web.chart.ScrubberScale;
import org.tidewright.web.chart.TimeAxis;
import org.tidewright.web.chart.TraceChart;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.SectionDrawing;
import org.tidewright.web.drawing.WaterScript;

/** A power cut, played on the drawing and its traces. */
public record RehearsePage(
        String href,
        String note,
        String title,
        Markup lead,
        Levers levers,
        SectionDrawing drawing,
        Markup section,
        Markup keys,
        Account account,
        Markup scale,
        List<TracePanel> traces,
        String caption,
        Markup curvesJson,
        @Nullable Markup waterJson,
        List<Markup> remarks,
        Markup crossingScale,
        List<CrossingLine> crossings,
        List<AssumptionLine> assumptions,
        List<String> cautions,
        List<Source> sources) {

    /**
     * A trace with its words and its table.
     *
     * @param name the title in lower case, for the middle of a sentence
     */
    public record TracePanel(
            String id, String title, String name, Markup value, String note, Markup chart, CurveTable table) {}

    /** A crossing as a line of the table. */
    public record CrossingLine(String quantity, Markup limit, Markup after, Markup bar, String share) {}

    /** Something not known exactly, as a line of the table. */
    public record AssumptionLine(String name, Markup figure, String ground) {}

    static RehearsePage of(Desk desk, SystemView view, Levers levers, Reader reader) {
        Plan plan = view.plan();
        UnitSystem units = reader.units(view.entry());
        OutageReport report = desk.rehearse(plan, levers.order());
        WaterMovement movement = report.water().movement();
        WaterMovement drawn = movement == null ? desk.running(plan) : movement;
        TimeAxis time = new TimeAxis(levers.order().hours(), movement != null);
        List<Curve> curves = Curve.all(report, time.seconds(), units);
        String label = "Section of " + plan.name() + " to scale, with the water levels of the rehearsal";
        SectionDrawing drawing = SectionDrawing.of(plan, drawn, 0, units, label);
        Figure room = report.water().roomLeft().length == 0
                ? null
                : withDoubt(report.water().roomLeft()[0], report.water().room());
        return new RehearsePage(
                Reader.href(view.entry()),
                "Rehearsal from plan revision " + view.entry().revision() + " as it stands now",
                "A power cut of " + hours(levers.order().hours()),
                SentenceMarkup.of(report.lead(), units),
                levers,
                drawing,
                new Markup(drawing.svg()),
                Keys.of(plan, drawn, 0, units),
                Account.of(plan, drawn, 0, movement != null, room, units),
                new Markup(ScrubberScale.of(time)),
                curves.stream().map(curve -> panel(curve, time, units)).toList(),
                caption(movement != null),
                Markup.json(CurveScript.of(curves, time)),
                movement == null ? null : Markup.json(WaterScript.of(plan, movement, units)),
                report.remarks().stream()
                        .map(remark -> SentenceMarkup.of(remark, units))
                        .toList(),
                new Markup(CrossingBar.scale()),
                crossings(report, units),
                report.assumptions().stream()
                        .map(assumption -> new AssumptionLine(
                                assumption.name(),
                                SentenceMarkup.of(assumption.figure(), units),
                                SourceWords.of(assumption.basis(), assumption.detail())))
                        .toList(),
                report.cautions(),
                report.sources());
    }

    private static Figure withDoubt(double room, @Nullable Figure end) {
        Doubt doubt = end != null && end.doubt() instanceof Doubt.StandardError error ? error : new Doubt.None();
        return new Figure(Measure.VOLUME, room, doubt);
    }

    private static String hours(double hours) {
        String number = hours == Math.rint(hours) ? FigureText.number(hours, 0) : FigureText.number(hours, 1);
        return number + (hours == 1 ? " hour" : " hours");
    }

    private static String caption(boolean moves) {
        String bands = "Bands hold 90 of 100 draws; ± is one standard error.";
        return moves
                ? "Drawn to scale; dotted lines are the running levels. The first two minutes are stretched so the water can"
                        + " be followed, then the scale changes to hours at the break. " + bands
                : "Drawn to scale. No water can fall back here, so the scale counts hours from the start. " + bands;
    }

    private static TracePanel panel(Curve curve, TimeAxis time, UnitSystem units) {
        String title = curve.title();
        String value =
                FigureText.number(curve.middle()[0], Math.max(1, curve.unit().decimals()));
        Markup shown = new Markup("<span class=\"sounding\">" + Markup.words(value) + "<span class=\"u\">"
                + Markup.words(curve.unit().symbol()) + "</span></span>");
        String name = title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
        return new TracePanel(
                curve.id(),
                title,
                name,
                shown,
                "",
                new Markup(TraceChart.of(curve, time, units)),
                CurveTable.of(curve, time, units));
    }

    private static List<CrossingLine> crossings(OutageReport report, UnitSystem units) {
        List<CrossingLine> lines = new ArrayList<>();
        for (Crossing crossing : report.crossings()) {
            Trace trace = report.traces().stream()
                    .filter(t -> t.id().equals(crossing.trace()))
                    .findFirst()
                    .orElse(null);
            if (trace == null) {
                continue;
            }
            Figure value = Figure.exact(trace.measure(), crossing.limit().value());
            String side = crossing.limit().forbiddenBelow() ? " under " : " over ";
            Markup limit = SentenceMarkup.of(
                    Sentence.of(
                            crossing.limit().words() + side,
                            crossing.limit().source().isEmpty()
                                    ? value
                                    : Sentence.figure(value, crossing.limit().source())),
                    units);
            long share = Math.round(100 * crossing.share());
            lines.add(new CrossingLine(
                    trace.title(),
                    limit,
                    SentenceMarkup.of(crossing.after(), units),
                    new Markup(CrossingBar.of(crossing)),
                    share + " of 100 draws"));
        }
        return lines;
    }
}
