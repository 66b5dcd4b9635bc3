package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.newtank.NewTankStudy;
import org.tidewright.husbandry.newtank.NewTankWords;
import org.tidewright.husbandry.newtank.Peak;
import org.tidewright.husbandry.newtank.Stocking;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.NewTank;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.web.chart.CourseChart;
import org.tidewright.web.chart.CourseScale;
import org.tidewright.web.chart.Curve;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * A new tank's first sixty days, and its first fish.
 *
 * @param tried what the curves are of
 * @param beside what the dotted lines are of
 */
public record NewTankPage(
        String href,
        String note,
        NewTankForm form,
        String lead,
        String range,
        String dosing,
        String tried,
        String beside,
        Markup scale,
        List<CoursePanel> panels,
        List<MilestoneLine> milestones,
        String stockingWords,
        List<StockingLine> stockings,
        Markup stockingScale,
        List<CoursePanel> stockingPanels,
        List<String> cautions,
        List<Source> sources) {
    private static final double DAY = 86_400;

    /** A day on the way, as a line of the table. */
    public record MilestoneLine(String words, String day, String beside, String practice) {}

    /** A way to bring the fish in, as a line of the table. */
    public record StockingLine(
            String words,
            String ammonia,
            String freeAmmonia,
            String nitrite,
            String clear,
            String verdict,
            boolean harm) {}

    static NewTankPage of(Desk desk, SystemView view, NewTankForm form, Reader reader) {
        Plan plan = view.plan();
        UnitSystem units = reader.units(view.entry());
        NewTankStudy study = desk.newTank(plan, form.order());
        CourseScale scale = CourseScale.ofDays(NewTankStudy.DAYS);
        String tried = capital(NewTankWords.seed(study.order().seed()));
        String beside = capital(NewTankWords.seed(study.besideSeed()));
        Stocking once = study.stocking(true, false);
        Stocking staged = study.stocking(false, false);
        int stockingDays = once == null ? NewTankStudy.DAYS : (int) Math.round(last(once.course()) / DAY);
        CourseScale stockingScale = CourseScale.ofDays(stockingDays);
        return new NewTankPage(
                Reader.href(view.entry()),
                "Worked out from plan revision " + view.entry().revision() + ", as if it were filled today",
                form,
                study.lead(),
                study.range(),
                study.dosing(),
                tried,
                beside,
                new Markup(scale.svg()),
                panels(study, scale, units, tried, beside),
                study.milestones().stream()
                        .map(milestone -> new MilestoneLine(
                                milestone.words(),
                                when(milestone.day()),
                                when(milestone.beside()),
                                milestone.practice()))
                        .toList(),
                study.stockingWords(),
                study.stockings().stream().map(NewTankPage::line).toList(),
                new Markup(stockingScale.svg()),
                once == null ? List.of() : stockingPanels(once, staged, stockingScale, units),
                study.cautions(),
                study.sources());
    }

    private static double last(Course course) {
        return course.time()[course.time().length - 1];
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String when(double day) {
        return Double.isFinite(day) ? FigureText.number(Math.ceil(day - 1e-9), 0) : "later";
    }

    private static StockingLine line(Stocking stocking) {
        return new StockingLine(
                stocking.words(),
                peak(stocking.ammonia(), NewTankWords.amount(stocking.ammonia().value())),
                peak(
                        stocking.freeAmmonia(),
                        NewTankWords.free(stocking.freeAmmonia().value())),
                peak(stocking.nitrite(), NewTankWords.amount(stocking.nitrite().value())),
                stocking.clear() == 0
                        ? "stays clear"
                        : Double.isFinite(stocking.clear())
                                ? "day " + FigureText.number(Math.ceil(stocking.clear()), 0)
                                : "later",
                stocking.verdict().words(),
                stocking.verdict() == Stocking.Verdict.HARM);
    }

    private static String peak(Peak peak, String value) {
        return value + ", day " + FigureText.number(Math.ceil(peak.day()), 0);
    }

    private static List<CoursePanel> panels(
            NewTankStudy study, CourseScale scale, UnitSystem units, String tried, String beside) {
        Course one = study.beginning().course();
        Course other = study.beside().course();
        List<CoursePanel> panels = new ArrayList<>();
        for (Quantity quantity : List.of(Quantity.AMMONIA, Quantity.NITRITE, Quantity.NITRATE)) {
            boolean nitrate = quantity == Quantity.NITRATE;
            List<CourseChart.Mark> marks = new ArrayList<>();
            if (quantity == Quantity.AMMONIA) {
                for (int day : study.beginning().doses()) {
                    marks.add(new CourseChart.Mark((double) day / NewTankStudy.DAYS, ""));
                }
                if (Double.isFinite(study.beginning().ready())) {
                    double at = study.beginning().ready() / NewTankStudy.DAYS;
                    marks.add(new CourseChart.Mark(
                            at,
                            (study.order().withFish() ? "clear, " : "ready, ")
                                    + NewTankWords.day(study.beginning().ready())));
                }
            }
            CourseChart chart = new CourseChart(
                    quantity.name().toLowerCase(Locale.ROOT),
                    nitrate ? "Nitrate" : quantity == Quantity.AMMONIA ? "Ammonia" : "Nitrite",
                    nitrate ? "mg/L" : "mg/L N",
                    nitrate ? 0 : 2,
                    one.time(),
                    one.of(quantity),
                    other.of(quantity),
                    List.of(),
                    List.of(),
                    marks);
            Peak peak = highest(one, quantity);
            panels.add(CoursePanel.of(
                    chart,
                    scale,
                    units,
                    FigureText.number(peak.value(), nitrate ? 0 : 2),
                    "highest, on day " + FigureText.number(Math.ceil(peak.day()), 0),
                    tried,
                    beside,
                    5 * NewTank.SAMPLES,
                    time -> "day " + Math.round(time / DAY)));
        }
        return panels;
    }

    private static Peak highest(Course course, Quantity quantity) {
        double[] values = course.of(quantity);
        double most = Arrays.stream(values).max().orElseThrow();
        int at = 0;
        while (values[at] < most) {
            at++;
        }
        return new Peak(most, course.time()[at] / DAY);
    }

    private static List<CoursePanel> stockingPanels(
            Stocking once, @Nullable Stocking staged, CourseScale scale, UnitSystem units) {
        // The two stand too close together for both: the one that matters is drawn.
        boolean harmful = highest(once.course(), Quantity.FREE_AMMONIA).value() >= Stocking.HARM;
        List<Curve.Bound> limits = List.of(
                harmful
                        ? new Curve.Bound("harm", Stocking.HARM, false, null)
                        : new Curve.Bound("watch", Stocking.WATCH, false, null));
        List<CoursePanel> panels = new ArrayList<>();
        for (Quantity quantity : List.of(Quantity.FREE_AMMONIA, Quantity.NITRITE)) {
            boolean free = quantity == Quantity.FREE_AMMONIA;
            CourseChart chart = new CourseChart(
                    free ? "free" : "stocked-nitrite",
                    free ? "Free ammonia" : "Nitrite",
                    "mg/L N",
                    free ? 3 : 2,
                    once.course().time(),
                    once.course().of(quantity),
                    staged == null ? null : staged.course().of(quantity),
                    free ? limits : List.of(new Curve.Bound("watch", Stocking.NITRITE_WATCH, false, null)),
                    List.of(),
                    List.of());
            Peak peak = highest(once.course(), quantity);
            panels.add(CoursePanel.of(
                    chart,
                    scale,
                    units,
                    FigureText.number(peak.value(), free ? 3 : 2),
                    "highest with all at once, day " + FigureText.number(Math.ceil(peak.day()), 0),
                    "All at once",
                    "One a fortnight",
                    5 * NewTank.SAMPLES,
                    time -> "day " + Math.round(time / DAY)));
        }
        return panels;
    }
}
