package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.quantity.Fork;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Stability;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.web.chart.ReadingsChart;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * The water by one quantity: what to do, what is known, the readings over time, what other doses would do, how steady it was.
 *
 * @param quantities every one that was ever read or that a probe measures
 * @param shown null where nothing was read yet
 * @param notes what could not be counted
 */
public record QuantityPage(
        String href,
        String logHref,
        List<Listed> quantities,
        @Nullable Shown shown,
        List<String> notes) {

    /** A quantity in the list. */
    public record Listed(String name, Markup figure, String state, boolean settling, String href, boolean current) {}

    /** A number with its name. */
    public record Sounding(String name, Markup figure) {}

    /** A line of the table of forks. */
    public record ForkLine(String words, String dose, Markup level, String inRange) {}

    /** A line of the table of readings, the newest first. */
    public record ReadingLine(String at, String value, String doubt, String method, String off, String href) {}

    /** A line of the table of what the probe said, the newest first. */
    public record ProbeLine(String days, String least, String mean, String most) {}

    /**
     * A page of the table of readings.
     *
     * @param words which of how many they are
     * @param newer address of the page before; null for none
     * @param older of the one after; null for none
     */
    public record Readings(
            List<ReadingLine> lines,
            String words,
            @Nullable String newer,
            @Nullable String older,
            boolean open) {}

    /** A line of the table of steadiness. */
    public record SteadyLine(String days, String inRange, String variation) {}

    /**
     * Everything of the quantity shown.
     *
     * @param moveHref where the move it advises is written down; null where it advises none
     */
    public record Shown(
            String title,
            Markup lead,
            List<Markup> remarks,
            @Nullable String moveHref,
            List<String> cautions,
            List<Sounding> soundings,
            Markup chart,
            String lastWords,
            List<ForkLine> forks,
            String forksWhen,
            List<SteadyLine> steady,
            Readings readings,
            List<ProbeLine> probe,
            String probeWords,
            SpanForm form,
            List<SpanForm.Way> spans,
            List<SpanForm.Way> ways,
            String address,
            List<Source> sources) {
        /** The days the chart shows, for the script, as addresses write them. */
        public String firstDay() {
            return form.span().from().toString();
        }

        /** The day after its last. */
        public String endDay() {
            return form.span().to().plusDays(1L + form.span().ahead()).toString();
        }

        /** The last day that may be asked for. */
        public String lastDay() {
            return form.span().today().plusDays(ChartSpan.MOST_AHEAD).toString();
        }
    }

    private static final int LINES = 40;

    /** Whether days were asked for that cannot be shown. */
    public boolean refused() {
        return shown != null && shown.form().refused();
    }

    static QuantityPage of(
            Desk desk, SystemView view, @Nullable WaterQuantity asked, Levers.Query query, UnitSystem units) {
        WaterStudy study = desk.water(view);
        String href = Reader.href(view.entry()) + "/water";
        QuantityStudy shown = study.quantities().stream()
                .filter(each -> each.quantity() == asked)
                .findFirst()
                .orElse(study.of(WaterQuantity.ALKALINITY)
                        .orElse(
                                study.quantities().isEmpty()
                                        ? null
                                        : study.quantities().get(0)));
        SpanForm form = shown == null ? null : form(desk, view, shown, query);
        String kept = form == null ? "" : form.kept();
        List<Listed> listed = study.quantities().stream()
                .map(each -> new Listed(
                        capital(each.quantity().words()),
                        SentenceMarkup.of(Told.level(each.quantity(), each.now()), units),
                        each.state(),
                        each.state().startsWith("settling"),
                        href + "/" + each.quantity().key() + kept,
                        shown != null && each.quantity() == shown.quantity()))
                .toList();
        return new QuantityPage(
                href,
                Reader.href(view.entry()) + "/log",
                listed,
                shown == null || form == null ? null : shown(desk, view, shown, form, units),
                study.notes());
    }

    private static SpanForm form(Desk desk, SystemView view, QuantityStudy study, Levers.Query query) {
        ZoneId zone = desk.clock().getZone();
        LocalDate known = LocalDate.ofInstant(study.course().from(), zone);
        LocalDate first = ProbeBand.first(desk.probes(), view.entry().id(), study.watch(), zone)
                .filter(known::isAfter)
                .orElse(known);
        return SpanForm.read(query, LocalDate.ofInstant(study.course().now(), zone), first);
    }

    private static Shown shown(Desk desk, SystemView view, QuantityStudy study, SpanForm form, UnitSystem units) {
        ZoneId zone = desk.clock().getZone();
        String href = Reader.href(view.entry());
        String address = href + "/water/" + study.quantity().key();
        ProbeBand probe = ProbeBand.of(desk.probes(), view.entry().id(), study.watch(), form.span(), zone);
        return new Shown(
                capital(study.quantity().words()),
                SentenceMarkup.of(study.advice().lead(), units),
                study.advice().remarks().stream()
                        .map(remark -> SentenceMarkup.of(remark, units))
                        .toList(),
                study.move() == null ? null : LogForm.address(href, study.move(), units),
                study.advice().cautions(),
                soundings(study, units),
                new Markup(ReadingsChart.of(QuantityChart.of(study, probe, form.span(), zone, units))),
                lastWords(study, probe, form.span(), zone, units),
                study.forks().stream().map(fork -> fork(fork, study, units)).toList(),
                QuantityChart.day(study.forksAt(), zone),
                study.stability().stream()
                        .map(each -> steady(each, study, units))
                        .toList(),
                readings(study, form, href + "/log", address, zone, units),
                probe.table(study.quantity(), zone, units),
                probe.words(),
                form,
                form.named(address),
                form.ways(address),
                address,
                study.advice().sources());
    }

    private static String lastWords(
            QuantityStudy study, ProbeBand probe, ChartSpan span, ZoneId zone, UnitSystem units) {
        List<QuantityCourse.Dot> dots =
                study.course().within(span.start(zone), span.end(zone)).readings();
        if (!dots.isEmpty()) {
            return QuantityChart.words(dots.get(dots.size() - 1), study.quantity(), zone, units);
        }
        List<ReadingsChart.Told> told = probe.told(study.quantity(), zone, units);
        return told.isEmpty()
                ? "Nothing was read in these days."
                : told.get(told.size() - 1).words();
    }

    private static List<Sounding> soundings(QuantityStudy study, UnitSystem units) {
        List<Sounding> soundings = new ArrayList<>();
        soundings.add(
                new Sounding("Now, estimated", SentenceMarkup.of(Told.level(study.quantity(), study.now()), units)));
        if (study.use() != null) {
            soundings.add(
                    new Sounding("Used a day", SentenceMarkup.of(Told.use(study.quantity(), study.use()), units)));
        }
        List<QuantityCourse.Step> doses = study.course().doses();
        if (!doses.isEmpty()) {
            QuantityCourse.Step now = doses.get(doses.size() - 1);
            soundings.add(new Sounding(
                    "All doses bring", SentenceMarkup.of(Told.use(study.quantity(), now.brings()), units)));
        }
        if (study.change() != null) {
            soundings.add(new Sounding(
                    "Changes a day", SentenceMarkup.of(Told.use(study.quantity(), study.change()), units)));
        }
        if (study.range() != null) {
            soundings.add(new Sounding(
                    study.range().basis() == Basis.YOUR_PLAN ? "Your range" : "Held by keepers",
                    new Markup(QuantityChart.range(study, units))));
        }
        return soundings;
    }

    private static ForkLine fork(Fork fork, QuantityStudy study, UnitSystem units) {
        return new ForkLine(
                fork.words(),
                FigureText.of(fork.dose(), units).line(),
                SentenceMarkup.of(Told.level(study.quantity(), fork.level()), units),
                percent(fork.inRange()));
    }

    private static SteadyLine steady(Stability stability, QuantityStudy study, UnitSystem units) {
        Figure share = Figure.about(
                Measure.SHARE, stability.inRange().value(), stability.inRange().standardError());
        return new SteadyLine(
                stability.days() + " days" + (stability.probed() ? ", by the probe" : ""),
                FigureText.of(share, units).line(),
                FigureText.of(Told.level(study.quantity(), stability.variation()), units)
                        .line());
    }

    private static Readings readings(
            QuantityStudy study, SpanForm form, String logHref, String address, ZoneId zone, UnitSystem units) {
        List<QuantityCourse.Dot> dots = new ArrayList<>(study.course()
                .within(form.span().start(zone), form.span().end(zone))
                .readings());
        Collections.reverse(dots);
        int pages = Math.max(1, (dots.size() + LINES - 1) / LINES);
        int page = Math.min(pages, form.page());
        int from = (page - 1) * LINES;
        int to = Math.min(dots.size(), from + LINES);
        String query = address + "?" + form.span().query() + "&page=";
        return new Readings(
                dots.subList(from, to).stream()
                        .map(dot -> reading(dot, study.quantity(), logHref, zone, units))
                        .toList(),
                pages == 1 ? "" : "Readings " + (from + 1) + " to " + to + " of " + dots.size() + ", the newest first.",
                page == 1 ? null : query + (page - 1) + "#readings-table",
                page == pages ? null : query + (page + 1) + "#readings-table",
                form.paged());
    }

    private static ReadingLine reading(
            QuantityCourse.Dot dot, WaterQuantity quantity, String logHref, ZoneId zone, UnitSystem units) {
        FigureText text = FigureText.of(Figure.about(Told.level(quantity), dot.value(), dot.error()), units);
        return new ReadingLine(
                QuantityChart.time(dot.at(), zone),
                text.value() + " " + text.unit(),
                text.doubt(),
                dot.method().name(),
                dot.setAside() ? String.format(Locale.ROOT, "set aside, %.1f errors off", Math.abs(dot.off())) : "",
                logHref + "/" + dot.line());
    }

    private static String percent(double share) {
        return Math.round(100 * share) + "\u00a0%";
    }

    private static String capital(String words) {
        // pH stays pH.
        return words.equals("pH") ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
