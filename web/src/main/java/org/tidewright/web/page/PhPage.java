package org.tidewright.web.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.ph.AiredWater;
import org.tidewright.husbandry.ph.CupTest;
import org.tidewright.husbandry.ph.Lever;
import org.tidewright.husbandry.ph.PhCase;
import org.tidewright.husbandry.ph.PhReading;
import org.tidewright.husbandry.ph.PhReport;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.sheet.PhAdvice;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.WaterInAir;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.web.chart.AirChart;
import org.tidewright.web.chart.AirCurves;
import org.tidewright.web.desk.SystemView;

/**
 * What holds a system's pH where it is, and what each lever would do.
 *
 * @param refused whether something typed cannot be, so that nothing was worked out
 * @param told null where nothing was worked out
 * @param cupsTold what the two cups say; null before all three were read
 */
public record PhPage(
        String href,
        String dayHref,
        String note,
        QuestionForm form,
        List<AmountField> cups,
        boolean refused,
        Markup lead,
        @Nullable Told told,
        @Nullable Markup cupsTold,
        List<Source> sources) {

    /** A lever, and what to mind with it. */
    public record LeverLine(Markup sentence, List<String> cautions) {}

    /**
     * All that was worked out.
     *
     * @param chasing why pH is not chased, in numbers
     */
    public record Told(
            List<Markup> remarks,
            List<ToldLine> figures,
            Markup chart,
            AirCurves curves,
            String caption,
            List<LeverLine> levers,
            Markup chasing,
            Markup balances,
            Markup cupLead,
            List<Markup> cupRemarks,
            List<ToldLine> cupFigures,
            List<String> cupCautions,
            List<Markup> working) {}

    /** The page for a query. */
    public static PhPage of(Levers.Query query, SystemView view, WaterStudy study, ZoneId zone, UnitSystem units) {
        PhForm form = PhForm.read(query, view, study, zone, units);
        PhCase solved = form.solved();
        boolean refused = form.form().faults() > 0 || form.cups().stream().anyMatch(AmountField::faulty);
        PhReport report = solved == null ? null : solved.report(form.levers());
        return new PhPage(
                Reader.href(view.entry()) + "/ph",
                Reader.href(view.entry()) + "/day",
                "Filled in from plan revision " + view.entry().revision() + " and the log; nothing typed here is kept",
                form.form(),
                form.cups(),
                refused,
                report == null ? Markup.words(wanting(form, refused)) : SentenceMarkup.of(report.lead(), units),
                solved == null || report == null ? null : told(solved, report, units),
                cups(form.cups(), units),
                report == null ? List.of() : report.sources());
    }

    private static String wanting(PhForm form, boolean refused) {
        if (refused) {
            String inTheWay = form.form().inTheWay();
            return inTheWay == null
                    ? "Mend the marked field of the two cups: nothing is worked out before it can be read."
                    : inTheWay;
        }
        List<String> wanted = form.form().wanted(form.needed());
        return "Type the "
                + String.join(" and the ", wanted.stream().map(PhPage::within).toList())
                + ": with alkalinity, salinity and temperature it tells how much carbon dioxide the water holds.";
    }

    private static String within(String label) {
        return label.equals("pH") ? label : label.toLowerCase(Locale.ROOT);
    }

    private static @Nullable Markup cups(List<AmountField> cups, UnitSystem units) {
        if (!cups.stream().allMatch(AmountField::isGiven)) {
            return null;
        }
        CupTest test = new CupTest(
                cups.get(0).value(), cups.get(1).value(), cups.get(2).value());
        return SentenceMarkup.of(test.told(), units);
    }

    private static Told told(PhCase solved, PhReport report, UnitSystem units) {
        PhReading reading = solved.reading();
        PhAdvice own = mark(solved);
        WaterInAir air = new WaterInAir(
                Map.of(
                        SheetColumn.TEMPERATURE, reading.temperature(),
                        SheetColumn.PRACTICAL_SALINITY, reading.salinity()),
                BoronRatio.UPPSTROM_1974,
                reading.temperature(),
                reading.salinity());
        AirCurves curves = AirPicture.curves(air, own);
        List<LeverLine> levers = levers(report, units);
        Sentence chasing = report.levers().stream()
                .filter(told -> told.lever() instanceof Lever.MoreAlkalinity)
                .map(PhReport.LeverTold::sentence)
                .findFirst()
                .orElse(Sentence.of(""));
        return new Told(
                sentences(List.of(report.doubt(), report.atRest()), units),
                lines(report.figures(), units),
                new Markup(AirChart.of(curves)),
                curves,
                "Each curve is this water at rest with air of that much CO₂: up the curve by alkalinity, from curve to curve"
                        + " by air. pH on the NBS scale, as a meter shows it."
                        + (own.isOrdinary() ? "" : " Your water lies outside the picture."),
                levers,
                SentenceMarkup.of(chasing, units),
                SentenceMarkup.of(report.balances(), units),
                SentenceMarkup.of(report.cups().lead(), units),
                sentences(report.cups().remarks(), units),
                lines(report.cups().figures(), units),
                report.cups().cautions(),
                sentences(report.working(), units));
    }

    /** Each with its cautions, but for those that stand with the lever right above it. */
    private static List<LeverLine> levers(PhReport report, UnitSystem units) {
        List<LeverLine> lines = new ArrayList<>();
        List<String> above = List.of();
        for (PhReport.LeverTold told : report.levers()) {
            if (!(told.lever() instanceof Lever.MoreAlkalinity)) {
                lines.add(new LeverLine(
                        SentenceMarkup.of(told.sentence(), units),
                        told.cautions().equals(above) ? List.of() : told.cautions()));
                above = told.cautions();
            }
        }
        return lines;
    }

    /** The water as a point among the curves. */
    private static PhAdvice mark(PhCase solved) {
        PhReading reading = solved.reading();
        AiredWater aired = AiredWater.of(reading.temperature(), reading.salinity());
        double pressure = reading.carbonDioxide().pressure();
        double more = reading.alkalinity() + Alkalinity.GERMAN_DEGREE;
        return new PhAdvice(
                Alkalinity.toGermanDegrees(reading.alkalinity()),
                reading.ph(),
                1e6 * aired.share(pressure),
                solved.phOutdoors(),
                AiredWater.meter(aired.under(more, pressure)));
    }

    private static List<Markup> sentences(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream()
                .map(sentence -> SentenceMarkup.of(sentence, units))
                .toList();
    }

    private static List<ToldLine> lines(List<Advice.Told> told, UnitSystem units) {
        return told.stream()
                .map(each -> ToldLine.of(each.name(), each.figure(), each.source(), units))
                .toList();
    }
}
