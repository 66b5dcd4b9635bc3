package org.tidewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One of a few, to be chosen by a form's radio buttons.
 *
 * @param name in the query
 * @param fault what is wrong with what was asked for; null for nothing
 */
public record Choice(
        String name,
        String legend,
        List<Option> options,
        @Nullable String fault) {
    /** One of them. */
    public record Option(String value, String words, boolean chosen) {}

    /** What a query chooses; the usual where it chooses nothing, and with a fault where it chooses what is not offered. */
    static Choice read(Levers.Query query, String name, String legend, String usual, List<String> valuesAndWords) {
        String asked = query.get(name);
        String chosen = usual;
        for (int i = 0; i < valuesAndWords.size(); i += 2) {
            chosen = valuesAndWords.get(i).equals(asked) ? valuesAndWords.get(i) : chosen;
        }
        boolean unknown = asked != null && !asked.isBlank() && !chosen.equals(asked);
        Option[] options = new Option[valuesAndWords.size() / 2];
        for (int i = 0; i < options.length; i++) {
            String value = valuesAndWords.get(2 * i);
            options[i] = new Option(value, valuesAndWords.get(2 * i + 1), value.equals(chosen));
        }
        return new Choice(name, legend, List.of(options), unknown ? fault(asked, options) : null);
    }

    private static String fault(@Nullable String asked, Option[] options) {
        List<Option> offered = List.of(options);
        String usual = offered.stream()
                .filter(Option::chosen)
                .map(Option::words)
                .findFirst()
                .orElse("");
        return "“" + Entry.shortened(asked) + "” is none of "
                + String.join(", ", offered.stream().map(Option::value).toList()) + "; reckoned with " + usual;
    }

    /** The value that is chosen. */
    String chosen() {
        return options.stream()
                .filter(Option::chosen)
                .map(Option::value)
                .findFirst()
                .orElse("");
    }

    /** Whether that value is chosen; not where there is no such choice. */
    static boolean is(@Nullable Choice choice, String value) {
        return choice != null && choice.chosen().equals(value);
    }
}
