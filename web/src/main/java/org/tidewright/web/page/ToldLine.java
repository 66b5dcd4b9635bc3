package org.tidewright.web.page;

import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.UnitSystem;

/**
 * A number with its name, as a line of a table.
 *
 * @param name what it is, in words
 * @param value with its doubt, unit and the letter of its source
 */
public record ToldLine(String name, Markup value) {
    static ToldLine of(String name, Figure figure, String source, UnitSystem units) {
        return new ToldLine(
                name.startsWith("pH") ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1),
                SentenceMarkup.of(Sentence.of(Sentence.figure(figure, source)), units));
    }
}
