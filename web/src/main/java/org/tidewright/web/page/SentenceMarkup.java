package org.tidewright.web.page;

import static org.tidewright.web.drawing.SvgWriter.escaped;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.UnitSystem;

/** Sentences and figures as HTML: the doubt smaller beside its value, the source a letter that leads to its note. */
final class SentenceMarkup {
    private static final String NO_BREAK = "\u00a0";

    private SentenceMarkup() {}

    static Markup of(Sentence sentence, UnitSystem units) {
        return of(sentence, List.of(), units);
    }

    /** A sentence, and after it the letters of sources it rests on but does not name. */
    static Markup of(Sentence sentence, List<String> sources, UnitSystem units) {
        StringBuilder html = new StringBuilder();
        Set<String> unnamed = new LinkedHashSet<>(sources);
        for (Sentence.Part part : sentence.parts()) {
            if (part instanceof Sentence.Part.Words words) {
                html.append(escaped(words.text()));
            } else if (part instanceof Sentence.Part.Alarm alarm) {
                html.append("<span class=\"alarm\">")
                        .append(escaped(alarm.text()))
                        .append("</span>");
            } else if (part instanceof Sentence.Part.Sounding number) {
                html.append(sounding(number.figure(), units));
                if (!number.source().isEmpty()) {
                    html.append(source(number.source()));
                    unnamed.remove(number.source());
                }
            } else if (part instanceof Sentence.Part.Reference reference) {
                html.append(source(reference.source()));
            }
        }
        unnamed.forEach(key -> html.append(source(key)));
        return new Markup(html.toString());
    }

    /** A figure as plain text. */
    static String plain(Figure figure, UnitSystem units) {
        return FigureText.of(figure, units).line();
    }

    /** A figure on its own. */
    static Markup of(Figure figure, UnitSystem units) {
        return new Markup(sounding(figure, units));
    }

    private static String sounding(Figure figure, UnitSystem units) {
        FigureText text = FigureText.of(figure, units);
        StringBuilder html = new StringBuilder("<span class=\"sounding\">").append(escaped(text.value()));
        boolean range = text.doubt().startsWith("(");
        String doubt =
                text.doubt().isEmpty() ? "" : NO_BREAK + "<span class=\"pm\">" + escaped(text.doubt()) + "</span>";
        String unit = text.unit().isEmpty() ? "" : "<span class=\"u\">" + escaped(text.unit()) + "</span>";
        html.append(range ? unit + doubt : doubt + unit);
        return html.append("</span>").toString();
    }

    private static String source(String key) {
        String letter = escaped(key);
        return "<a class=\"src\" href=\"#source-" + letter + "\" aria-label=\"source " + letter + "\">" + letter
                + "</a>";
    }
}
