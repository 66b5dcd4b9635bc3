package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;

/**
 * The mixing desk: one question at a time, its fields, and the answer.
 *
 * @param key of the question
 * @param refused whether something typed cannot be, so that nothing was worked out
 * @param lead what to do, or what is wanting
 */
public record MixingPage(
        String href,
        String key,
        String title,
        List<Link> tasks,
        List<Link> quantities,
        @Nullable String of,
        List<MixingItem.Group> groups,
        boolean refused,
        Markup lead,
        List<Line> figures,
        List<Markup> remarks,
        List<Markup> working,
        List<String> cautions,
        List<Source> sources) {

    /** Another question, or another quantity to ask about. */
    public record Link(String words, String href, boolean current) {}

    /** A number of the answer. */
    public record Line(String name, Markup value) {}

    /**
     * The page for what was typed.
     *
     * @param href of the system
     */
    public static MixingPage of(String href, MixingTask task, Levers.Query query, KnownSystem known, UnitSystem units) {
        MixingFields fields = new MixingFields(query, units);
        Advice advice = task.ask(fields, known);
        String desk = href + "/mixing?task=";
        List<Link> tasks = new ArrayList<>();
        for (MixingTask each : MixingTask.values()) {
            tasks.add(new Link(each.words(), desk + each.key(), each == task));
        }
        WaterQuantity of = task == MixingTask.SERIES ? MixingChanges.carried(query.get(MixingChanges.OF)) : null;
        List<Link> quantities = of == null
                ? List.of()
                : MixingChanges.CARRIED.stream()
                        .map(each -> new Link(
                                MixingChanges.capital(each),
                                desk + task.key() + "&" + MixingChanges.OF + "=" + each.key(),
                                each == of))
                        .toList();
        return new MixingPage(
                href,
                task.key(),
                task.about(),
                tasks,
                quantities,
                of == null ? null : of.key(),
                fields.groups(),
                fields.faults() > 0,
                advice == null ? Markup.words(missing(fields)) : SentenceMarkup.of(advice.lead(), units),
                advice == null ? List.of() : lines(advice, units),
                advice == null ? List.of() : markup(advice.remarks(), units),
                advice == null ? List.of() : markup(advice.working(), units),
                advice == null ? List.of() : advice.cautions(),
                advice == null ? List.of() : advice.sources());
    }

    private static String missing(MixingFields fields) {
        if (fields.faults() > 0) {
            return "Mend the marked " + (fields.faults() == 1 ? "field" : "fields")
                    + ": nothing is worked out before every number can be read.";
        }
        return "Type what neither your log nor your plan tells: " + String.join("; ", fields.wanting()) + ".";
    }

    private static List<Line> lines(Advice advice, UnitSystem units) {
        return advice.figures().stream()
                .map(told -> {
                    Sentence figure = Sentence.of(
                            told.source().isEmpty() ? told.figure() : Sentence.figure(told.figure(), told.source()));
                    return new Line(MixingChanges.capital(told.name()), SentenceMarkup.of(figure, units));
                })
                .toList();
    }

    private static List<Markup> markup(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream()
                .map(sentence -> SentenceMarkup.of(sentence, units))
                .toList();
    }
}
