package org.tidewright.web.page;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.reef.Captivity;
import org.tidewright.husbandry.reef.CatalogueLore;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.CoralCautions;
import org.tidewright.husbandry.reef.CoralLore;
import org.tidewright.husbandry.reef.Cuttings;
import org.tidewright.husbandry.reef.Growth;
import org.tidewright.husbandry.reef.Place;
import org.tidewright.husbandry.reef.Placement;
import org.tidewright.husbandry.reef.ReefReport;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.husbandry.solution.DailyUse;
import org.tidewright.husbandry.solution.OwnDosing;
import org.tidewright.husbandry.solution.Supply;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.ReefDrawing;

/**
 * Where a system's corals stand, where another could, and what they will take.
 *
 * @param refused whether something typed cannot be, so that no place was tried
 * @param acts what else to do about those that are there
 * @param trial what became of the place that was tried; null for none
 * @param doses names of the plan's solutions that the demand is told in
 * @param cuttings pieces that left, the latest first
 */
public record CoralsPage(
        String href,
        String planHref,
        String logHref,
        String note,
        Markup lead,
        List<Markup> acts,
        List<String> cautions,
        List<Aspect> pictures,
        String caption,
        QuestionForm form,
        boolean refused,
        @Nullable Trial trial,
        List<CoralRow> rows,
        Markup growing,
        List<Markup> growingMore,
        List<String> doses,
        List<DemandRow> demand,
        List<Piece> cuttings,
        List<String> cutting,
        List<Source> sources) {
    private static final double DAY = 86_400;
    private static final double STEP = 0.05;
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** One view of the display. */
    public record Aspect(String title, Markup svg, String classes) {}

    /** The answer about a candidate. */
    public record Trial(Markup lead, List<Markup> working, List<Suggestion> suggestions, List<String> cautions) {}

    /** A place that would do. */
    public record Suggestion(Markup words, String href) {}

    /** Pieces that left at one time. */
    public record Piece(String when, String words, String remark) {}

    /** The page for a query. */
    public static CoralsPage of(
            Levers.Query query,
            SystemView view,
            WaterStudy study,
            List<Line> animals,
            Catalogue catalogue,
            UnitSystem units) {
        Plan plan = view.plan();
        CoralLore lore = new CatalogueLore(catalogue);
        ReefSite site = new ReefSite(plan, lore);
        double volume = view.entry().water();
        Growth growth = growth(plan, lore, study, volume);
        PlaceForm form = PlaceForm.read(query, site, catalogue, units);
        ReefReport report = ReefReport.of(site, growth, volume, form.trial());
        String href = Reader.href(view.entry()) + "/corals";
        boolean refused = form.form().faults() > 0;
        Colony tried = report.tried() == null ? null : report.tried().colony();
        double height = plane(site);
        return new CoralsPage(
                href,
                Reader.href(view.entry()) + "/plan",
                Reader.href(view.entry()) + "/log",
                "From plan revision " + view.entry().revision() + " and the log; a place that is tried is not kept",
                SentenceMarkup.of(report.placing().lead(), units),
                sentences(report.placing().remarks(), units),
                report.placing().cautions(),
                pictures(site, growth, tried, height, units),
                caption(site, height, units),
                form.form(),
                refused,
                trial(report, form.coral(), href, units),
                CoralRow.all(site, report, units),
                SentenceMarkup.of(report.growing().lead(), units),
                sentences(report.growing().remarks(), units),
                DemandRow.doses(report.demand()),
                DemandRow.all(report.demand(), units),
                pieces(plan, animals, units),
                CoralCautions.cutting(),
                report.sources());
    }

    /** By the use the log shows, else the plan states, else by the usual guess. */
    private static Growth growth(Plan plan, CoralLore lore, WaterStudy study, double volume) {
        Growth usual = Growth.of(plan, lore, Captivity.USUAL);
        double computed = usual.demand(0).alkalinity();
        for (DailyUse use : OwnDosing.uses(plan, study)) {
            if (use.supply() == Supply.ALKALINITY && computed > 0) {
                double error = use.standardError() > 0 ? use.standardError() : 0.1 * use.value();
                return usual.by(Captivity.fitted(
                        use.value() * volume / DAY, Math.abs(error) * volume / DAY, computed, use.basis()));
            }
        }
        return usual;
    }

    // ── pictures ──

    /** Height at which light is drawn from above: the mean of the corals', in steps of 5 cm. */
    private static double plane(ReefSite site) {
        double mean = site.placed().stream()
                .map(Colony::place)
                .mapToDouble(place -> place == null ? 0 : place.height())
                .average()
                .orElse(site.rockTop() / 2);
        return STEP * Math.max(1, Math.rint(mean / STEP));
    }

    private static List<Aspect> pictures(
            ReefSite site, Growth growth, @Nullable Colony tried, double height, UnitSystem units) {
        int placed = site.placed().size();
        String corals = placed == 1 ? "one coral" : placed + " corals";
        ReefDrawing front = ReefDrawing.front(
                site,
                growth,
                tried,
                units,
                "The display from the front with " + corals + ", listed in the table below");
        ReefDrawing above = ReefDrawing.above(
                site,
                growth,
                tried,
                units,
                height,
                "The display from above with " + corals
                        + ", listed in the table below; its front pane is at the bottom");
        return List.of(
                new Aspect("From the front", new Markup(front.svg()), front.classes()),
                new Aspect("From above", new Markup(above.svg()), above.classes()));
    }

    private static String caption(ReefSite site, double height, UnitSystem units) {
        boolean points = !site.plan().display().lightPoints().isEmpty();
        return "Corals, panes and water to scale, rock only as high as the plan says. A disc is a coral today, dashed in three"
                + " years if nothing stops it; a red ring is how far one stings that reaches a neighbour. Thin lines are light in"
                + " µmol/m²/s at full power: from the front through the middle of the tank, from above at "
                + FigureText.of(Figure.exact(Measure.LENGTH, height), units).line() + " over the bottom."
                + (points ? " + light was measured, > flow was measured." : "");
    }

    // ── words ──

    private static List<Markup> sentences(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream()
                .map(sentence -> SentenceMarkup.of(sentence, units))
                .toList();
    }

    private static @Nullable Trial trial(ReefReport report, String coral, String href, UnitSystem units) {
        Advice advice = report.trial();
        if (advice == null) {
            return null;
        }
        List<Suggestion> suggestions = new ArrayList<>();
        for (int i = 0; i < advice.remarks().size(); i++) {
            Placement place = report.suggested().get(i);
            suggestions.add(new Suggestion(
                    SentenceMarkup.of(advice.remarks().get(i), units), href + "?" + query(coral, place.place())));
        }
        return new Trial(
                SentenceMarkup.of(advice.lead(), units),
                working(advice.working(), units),
                suggestions,
                advice.cautions());
    }

    private static List<Markup> working(List<Sentence> told, UnitSystem units) {
        List<String> heads = List.of("Light: ", "Flow: ", "Neighbours: ");
        List<Markup> lines = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            lines.add(SentenceMarkup.of(Sentence.of(heads.get(i), told.get(i), "."), units));
        }
        return lines;
    }

    private static String query(String coral, Place place) {
        return coral + "&x=" + PlaceForm.inAddress(place.x()) + "&y=" + PlaceForm.inAddress(place.y()) + "&height="
                + PlaceForm.inAddress(place.height()) + "#try";
    }

    private static List<Piece> pieces(Plan plan, List<Line> animals, UnitSystem units) {
        return Cuttings.of(plan, animals).stream()
                .map(cutting -> new Piece(
                        DATE.format(cutting.at()),
                        cutting.count() + " " + cutting.what()
                                + (cutting.size() == null
                                        ? ""
                                        : " of "
                                                + FigureText.of(Figure.exact(Measure.LENGTH, cutting.size()), units)
                                                        .line()),
                        cutting.remark()))
                .toList();
    }
}
