package org.tidewright.husbandry.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.tidewright.plan.model.UnitSystem;

/** Words with figures among them, told in the reader's units at the very end. */
public record Sentence(List<Part> parts) {
    /** A piece of a sentence. */
    public sealed interface Part {
        /** Plain words. */
        record Words(String text) implements Part {}

        /** Words that say a limit is broken or a hand is wanted now. */
        record Alarm(String text) implements Part {}

        /** A number; {@code source} is the key of its source, empty where the sentence names it. */
        record Sounding(Figure figure, String source) implements Part {}

        /** The letter of a source for what was just said in words. */
        record Reference(String source) implements Part {}
    }

    public Sentence {
        parts = List.copyOf(parts);
    }

    /** From words, figures and parts in the order they are spoken. */
    public static Sentence of(Object... pieces) {
        List<Part> parts = new ArrayList<>();
        for (Object piece : pieces) {
            if (piece instanceof Part part) {
                parts.add(part);
            } else if (piece instanceof Figure figure) {
                parts.add(new Part.Sounding(figure, ""));
            } else if (piece instanceof Sentence sentence) {
                parts.addAll(sentence.parts());
            } else {
                parts.add(new Part.Words(piece.toString()));
            }
        }
        return new Sentence(parts);
    }

    public static Part alarm(String text) {
        return new Part.Alarm(text);
    }

    /** A figure that points to the source with this key. */
    public static Part figure(Figure figure, String source) {
        return new Part.Sounding(figure, source);
    }

    /** This sentence and another after it. */
    public Sentence then(Sentence next) {
        return Sentence.of(this, " ", next);
    }

    /** The same without its sources, for a place that lists none. */
    public Sentence withoutSources() {
        return new Sentence(parts.stream()
                .filter(part -> !(part instanceof Part.Reference))
                .map(part -> part instanceof Part.Sounding number ? new Part.Sounding(number.figure(), "") : part)
                .toList());
    }

    /** The same with other letters for its sources, where several lists of sources stand on one page. */
    public Sentence withSources(UnaryOperator<String> renamed) {
        return new Sentence(parts.stream()
                .map(part -> part instanceof Part.Reference reference
                        ? new Part.Reference(renamed.apply(reference.source()))
                        : part instanceof Part.Sounding number
                                        && !number.source().isEmpty()
                                ? new Part.Sounding(number.figure(), renamed.apply(number.source()))
                                : part)
                .toList());
    }

    /** The letters of its sources, as they are spoken, each once. */
    public List<String> sources() {
        return parts.stream()
                .map(part -> part instanceof Part.Reference reference
                        ? reference.source()
                        : part instanceof Part.Sounding number ? number.source() : "")
                .filter(key -> !key.isEmpty())
                .distinct()
                .toList();
    }

    /** As plain text, for a terminal or JSON. */
    public String text(UnitSystem system) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Part.Words words) {
                text.append(words.text());
            } else if (part instanceof Part.Alarm alarm) {
                text.append(alarm.text());
            } else if (part instanceof Part.Sounding number) {
                text.append(FigureText.of(number.figure(), system).line());
            }
        }
        return text.toString();
    }
}
