package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.solution.OwnDosing;
import org.tidewright.husbandry.solution.SolutionReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.SystemView;

/**
 * Dosing solutions from pure salts: what to weigh, what is in a bottle, what a year of them leaves behind.
 *
 * @param ask which of the three
 * @param refused whether something typed cannot be, so that nothing was worked out
 * @param leads what to do, and why; one for each bottle
 * @param urgent the caution that stands with the lead
 * @param table what each choice of salts leaves; null elsewhere
 */
public record SolutionsPage(
        String href,
        String ask,
        List<Tab> tabs,
        String note,
        QuestionForm form,
        boolean refused,
        List<Markup> leads,
        @Nullable Markup urgent,
        List<Part> parts,
        @Nullable Table table,
        List<Source> sources) {

    /** One of the questions. */
    public record Tab(String words, String href, boolean current) {}

    /**
     * What is told of a bottle, or of a year.
     *
     * @param title empty where there is one only
     * @param cautions what to mind, above the steps
     */
    public record Part(
            String title, List<Markup> cautions, List<Markup> steps, List<Markup> remarks, List<ToldLine> figures) {}

    /** A table of choices side by side. */
    public record Table(String caption, List<String> heads, List<Row> rows, String note) {}

    /** A choice with its figures. */
    public record Row(String words, List<String> figures, boolean current) {}

    /** Where the page stands, and what it knows before anything is typed. */
    record Around(SystemView view, WaterStudy study, UnitSystem units) {
        String href() {
            return Reader.href(view.entry()) + "/solutions";
        }

        /** Which both a pair and what it leaves behind hang on. */
        AmountField magnesiumShare(Levers.Query query) {
            return AmountField.read(
                    query,
                    AmountField.Asked.of(
                            "magnesium_share", "Magnesium’s share of what is laid down", Measure.SHARE, units, 0, 0.5),
                    new AmountField.Known(
                            OwnDosing.magnesiumShare(view.plan()), "%", "from the plan: by who builds skeletons"),
                    "");
        }
    }

    /** The page for a query. */
    public static SolutionsPage of(Levers.Query query, SystemView view, WaterStudy study, UnitSystem units) {
        Around around = new Around(view, study, units);
        String ask = query.get("ask");
        if ("bottle".equals(ask)) {
            return BottleQuestion.answered(query, around);
        } else if ("year".equals(ask)) {
            return YearQuestion.answered(query, around);
        }
        return MixQuestion.answered(query, around);
    }

    /** With nothing worked out, and what to do about it. */
    static SolutionsPage unanswered(Around around, String ask, QuestionForm form, String lead, boolean refused) {
        return new SolutionsPage(
                around.href(),
                ask,
                tabs(around, ask),
                note(around),
                form,
                refused,
                List.of(Markup.words(lead)),
                null,
                List.of(),
                null,
                List.of());
    }

    /**
     * Worked out.
     *
     * @param titles of the reports, as many
     * @param besides what the page has to say before a report's own remarks
     */
    static SolutionsPage answered(
            Around around,
            String ask,
            QuestionForm form,
            List<SolutionReport> reports,
            List<String> titles,
            List<Markup> besides,
            @Nullable Table table) {
        SolutionReport first = reports.get(0);
        UnitSystem units = around.units();
        boolean mixes = reports.stream().anyMatch(report -> !report.steps().isEmpty());
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < reports.size(); i++) {
            SolutionReport report = reports.get(i);
            List<Sentence> cautions = report.cautions();
            parts.add(new Part(
                    titles.get(i),
                    told(i == 0 && mixes ? cautions.subList(1, cautions.size()) : cautions, units),
                    told(report.steps(), units),
                    Stream.concat(i == 0 ? besides.stream() : Stream.empty(), told(report.remarks(), units).stream())
                            .toList(),
                    report.figures().stream()
                            .map(told -> ToldLine.of(told.name(), told.figure(), told.source(), units))
                            .toList()));
        }
        return new SolutionsPage(
                around.href(),
                ask,
                tabs(around, ask),
                note(around),
                form,
                false,
                reports.stream()
                        .map(report -> SentenceMarkup.of(report.lead(), units))
                        .toList(),
                mixes ? SentenceMarkup.of(first.cautions().get(0), units) : null,
                parts,
                table,
                reports.get(reports.size() - 1).sources());
    }

    private static List<Markup> told(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream()
                .map(sentence -> SentenceMarkup.of(sentence, units))
                .toList();
    }

    private static List<Tab> tabs(Around around, String ask) {
        return List.of(
                new Tab("Mix a solution", around.href(), ask.equals("mix")),
                new Tab("What is in a bottle", around.href() + "?ask=bottle", ask.equals("bottle")),
                new Tab("What a year leaves", around.href() + "?ask=year", ask.equals("year")));
    }

    private static String note(Around around) {
        return "Filled in from plan revision " + around.view().entry().revision()
                + " and the log; nothing typed here is kept";
    }

    /** As it stands in a query. */
    static String key(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }
}
