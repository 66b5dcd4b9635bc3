package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.day.DayFigures;
import org.tidewright.husbandry.day.DayStudy;
import org.tidewright.husbandry.day.DayWords;
import org.tidewright.husbandry.day.Extreme;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.web.chart.CourseChart;
import org.tidewright.web.chart.CourseScale;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * A day of a system: pH, oxygen, temperature and carbon dioxide from midnight to midnight.
 *
 * @param changes whether other habits than the plan's are tried
 */
public record DayPage(
        String href,
        String note,
        DayForm form,
        String lead,
        boolean changes,
        Markup scale,
        List<CoursePanel> panels,
        List<FigureLine> figures,
        List<String> remarks,
        String buffers,
        List<String> cautions,
        List<Source> sources) {
    private static final double DAY = 86_400;

    /** A figure of the day, as a line of the table. */
    public record FigureLine(String words, String planned, String changed) {}

    static DayPage of(Desk desk, SystemView view, DayForm form, Reader reader) {
        UnitSystem units = reader.units(view.entry());
        DayStudy study = desk.day(view.plan(), form.habits(), form.tried());
        CourseScale scale = CourseScale.ofDay();
        return new DayPage(
                Reader.href(view.entry()),
                "Worked out from plan revision " + view.entry().revision() + ": the last day of a week like it",
                form,
                study.lead(),
                study.changed() != null,
                new Markup(scale.svg()),
                panels(study, scale, units),
                figures(study, units),
                study.remarks(),
                study.buffers(),
                study.cautions(),
                study.sources());
    }

    private static List<CoursePanel> panels(DayStudy study, CourseScale scale, UnitSystem units) {
        DayFigures planned = study.planned();
        DayFigures shown = study.changed() == null ? planned : study.changed();
        Measure.Unit degree = Measure.TEMPERATURE.unit(units);
        List<CoursePanel> panels = new ArrayList<>();
        panels.add(panel(
                study,
                scale,
                units,
                Quantity.PH,
                "pH, total scale",
                new Measure.Unit("", "", 1, 0, 2),
                range(shown.ph(), 2),
                "on a meter about " + DayWords.ph(shown.ph().low() + DayStudy.METER) + "–"
                        + DayWords.ph(shown.ph().high() + DayStudy.METER)));
        panels.add(panel(
                study,
                scale,
                units,
                Quantity.OXYGEN,
                "Oxygen",
                new Measure.Unit("mg/L", "", 1, 0, 1),
                range(shown.oxygen(), 1),
                "lowest " + FigureText.number(shown.saturation().low(), 0) + " % of saturation, "
                        + DayWords.clock(shown.saturation().lowAt())));
        panels.add(panel(
                study,
                scale,
                units,
                Quantity.TEMPERATURE,
                "Temperature",
                new Measure.Unit(degree.symbol(), "", degree.factor(), degree.zero(), 1),
                FigureText.number(degree.shown(shown.temperature().low()), 1) + "–"
                        + FigureText.number(degree.shown(shown.temperature().high()), 1),
                ""));
        panels.add(panel(
                study,
                scale,
                units,
                Quantity.CARBON_DIOXIDE,
                "Carbon dioxide of the water",
                new Measure.Unit("µatm", "", 1, 0, 0),
                gases(shown.water()),
                ""));
        panels.add(panel(
                study,
                scale,
                units,
                Quantity.CARBON_DIOXIDE_OF_ROOM,
                "Carbon dioxide of the room",
                new Measure.Unit("µatm", "", 1, 0, 0),
                gases(shown.room()),
                "outdoors " + FigureText.number(study.outdoors(), 0)));
        return panels;
    }

    private static String range(Extreme extreme, int decimals) {
        return FigureText.number(extreme.low(), decimals) + "–" + FigureText.number(extreme.high(), decimals);
    }

    private static String gases(Extreme extreme) {
        return DayWords.gas(extreme.low()) + "–" + DayWords.gas(extreme.high());
    }

    private static CoursePanel panel(
            DayStudy study,
            CourseScale scale,
            UnitSystem units,
            Quantity quantity,
            String title,
            Measure.Unit unit,
            String value,
            String note) {
        DayFigures changed = study.changed();
        UsualDay.Day shown = changed == null ? study.planned().day() : changed.day();
        double[] beside = changed == null
                ? null
                : shown(unit, study.planned().day().course().of(quantity));
        List<CourseChart.Shade> lit = shown.lit().stream()
                .map(span -> new CourseChart.Shade(span.from() / DAY, span.to() / DAY))
                .toList();
        CourseChart chart = new CourseChart(
                quantity.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                title,
                unit.symbol(),
                unit.decimals(),
                shown.course().time(),
                shown(unit, shown.course().of(quantity)),
                beside,
                List.of(),
                lit,
                List.of());
        return CoursePanel.of(
                chart,
                scale,
                units,
                value,
                note,
                changed == null ? "As planned" : "Tried",
                changed == null ? null : "As planned",
                (UsualDay.SAMPLES - 1) / 12,
                DayPage::hour);
    }

    private static String hour(double seconds) {
        return Math.round(seconds / 3600) + " h";
    }

    private static double[] shown(Measure.Unit unit, double[] values) {
        double[] shown = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            shown[i] = unit.shown(values[i]);
        }
        return shown;
    }

    private static List<FigureLine> figures(DayStudy study, UnitSystem units) {
        Measure.Unit degree = Measure.TEMPERATURE.unit(units);
        List<FigureLine> lines = new ArrayList<>();
        lines.add(line(
                study,
                "pH at its lowest, total scale and on a meter",
                figures -> figures.ph().low()));
        lines.add(line(
                study,
                "pH at its highest, total scale and on a meter",
                figures -> figures.ph().high()));
        lines.add(told(
                study, "Swing of the pH", figures -> DayWords.ph(figures.ph().swing())));
        lines.add(told(
                study,
                "Oxygen at its lowest",
                figures -> FigureText.number(figures.oxygen().low(), 1) + "\u00a0mg/L, "
                        + FigureText.number(figures.saturation().low(), 0) + "\u00a0% of saturation, at "
                        + DayWords.clock(figures.saturation().lowAt())));
        lines.add(told(
                study,
                "Temperature",
                figures -> FigureText.number(degree.shown(figures.temperature().low()), 1) + "–"
                        + FigureText.number(degree.shown(figures.temperature().high()), 1) + "\u00a0"
                        + degree.symbol()));
        lines.add(told(
                study,
                "Carbon dioxide of the water, mean",
                figures -> DayWords.gas(figures.water().mean()) + "\u00a0µatm"));
        lines.add(told(
                study,
                "Carbon dioxide of the room, mean and highest",
                figures -> DayWords.gas(figures.room().mean()) + "\u00a0and "
                        + DayWords.gas(figures.room().high()) + "\u00a0µatm"));
        lines.add(told(study, "Alkalinity", figures -> FigureText.number(figures.alkalinity(), 1) + "\u00a0dKH"));
        return lines;
    }

    private static FigureLine line(DayStudy study, String words, ToDoubleFunction<DayFigures> ph) {
        return told(study, words, figures -> {
            double value = ph.applyAsDouble(figures);
            return DayWords.ph(value) + " and " + DayWords.ph(value + DayStudy.METER);
        });
    }

    private static FigureLine told(DayStudy study, String words, Function<DayFigures, String> figure) {
        DayFigures changed = study.changed();
        return new FigureLine(words, figure.apply(study.planned()), changed == null ? "" : figure.apply(changed));
    }
}
