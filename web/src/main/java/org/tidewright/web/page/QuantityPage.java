package org.tidewright.web.page;

import java.time.ZoneId;
import java.util.ArrayList;
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
import org.tidewright.web.desk.SystemView;

/**
 * The water by one quantity: what to do, what is known, the readings over time, what other doses would do, how steady it was.
 *
 * @param quantities every one that was ever read
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

    /** A line of the table of steadiness. */
    public record SteadyLine(String days, String inRange, String variation) {}

    /** Everything of the quantity shown. */
    public record Shown(
            String title,
            Markup lead,
            List<Markup> remarks,
            List<String> cautions,
            List<Sounding> soundings,
            Markup chart,
            String lastWords,
            List<ForkLine> forks,
            String forksWhen,
            List<SteadyLine> steady,
            List<ReadingLine> readings,
            List<Source> sources) {}

    static QuantityPage of(
            SystemView view, WaterStudy study, @Nullable WaterQuantity asked, ZoneId zone, UnitSystem units) {
        String href = Reader.href(view.entry()) + "/water";
        QuantityStudy shown = study.quantities().stream()
                .filter(each -> each.quantity() == asked)
                .findFirst()
                .orElse(study.of(WaterQuantity.ALKALINITY)
                        .orElse(
                                study.quantities().isEmpty()
                                        ? null
                                        : study.quantities().get(0)));
        List<Listed> listed = study.quantities().stream()
                .map(each -> new Listed(
                        capital(each.quantity().words()),
                        SentenceMarkup.of(Told.level(each.quantity(), each.now()), units),
                        each.state(),
                        each.state().startsWith("settling"),
                        href + "/" + each.quantity().key(),
                        shown != null && each.quantity() == shown.quantity()))
                .toList();
        return new QuantityPage(
                href,
                Reader.href(view.entry()) + "/log",
                listed,
                shown == null ? null : shown(shown, Reader.href(view.entry()) + "/log", zone, units),
                study.notes());
    }

    private static Shown shown(QuantityStudy study, String logHref, ZoneId zone, UnitSystem units) {
        List<ReadingLine> readings = readings(study, logHref, zone, units);
        return new Shown(
                capital(study.quantity().words()),
                SentenceMarkup.of(study.advice().lead(), units),
                study.advice().remarks().stream()
                        .map(remark -> SentenceMarkup.of(remark, units))
                        .toList(),
                study.advice().cautions(),
                soundings(study, units),
                new Markup(ReadingsChart.of(QuantityChart.of(study, zone, units))),
                QuantityChart.words(last(study.course()), study.quantity(), zone, units),
                study.forks().stream().map(fork -> fork(fork, study, units)).toList(),
                QuantityChart.day(study.forksAt(), zone),
                study.stability().stream()
                        .map(each -> steady(each, study, units))
                        .toList(),
                readings,
                study.advice().sources());
    }

    private static QuantityCourse.Dot last(QuantityCourse course) {
        return course.readings().get(course.readings().size() - 1);
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
            double brings = doses.get(doses.size() - 1).brings();
            soundings.add(
                    new Sounding("All doses bring", SentenceMarkup.of(Told.use(study.quantity(), brings), units)));
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
                stability.days() + " days",
                FigureText.of(share, units).line(),
                FigureText.of(Told.level(study.quantity(), stability.variation()), units)
                        .line());
    }

    private static List<ReadingLine> readings(QuantityStudy study, String logHref, ZoneId zone, UnitSystem units) {
        List<ReadingLine> lines = new ArrayList<>();
        for (QuantityCourse.Dot dot : study.course().readings()) {
            FigureText text =
                    FigureText.of(Figure.about(Told.level(study.quantity()), dot.value(), dot.error()), units);
            lines.add(
                    0,
                    new ReadingLine(
                            QuantityChart.time(dot.at(), zone),
                            text.value() + " " + text.unit(),
                            text.doubt(),
                            dot.method().name(),
                            dot.setAside()
                                    ? String.format(Locale.ROOT, "set aside, %.1f errors off", Math.abs(dot.off()))
                                    : "",
                            logHref + "/" + dot.line()));
        }
        return lines;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + "\u00a0%";
    }

    private static String capital(String words) {
        // pH stays pH.
        return words.equals("pH") ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
