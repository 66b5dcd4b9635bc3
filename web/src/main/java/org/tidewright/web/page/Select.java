package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A list of a form, one of which is chosen.
 *
 * @param fault what is wrong with the choice, or what is asked; empty for nothing
 */
public record Select(String name, String label, List<Group> groups, String fault) {
    /** Choices that belong together; those without words stand by themselves. */
    public record Group(String words, List<Option> options) {}

    /** One of them. */
    public record Option(String value, String words, boolean chosen) {}

    /**
     * Without groups.
     *
     * @param pairs value and words of each choice, in turn
     */
    static Select of(String name, String label, String chosen, String fault, List<String> pairs) {
        return new Select(name, label, List.of(group("", chosen, pairs)), fault);
    }

    static Group group(String words, String chosen, List<String> pairs) {
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i += 2) {
            options.add(new Option(pairs.get(i), pairs.get(i + 1), pairs.get(i).equals(chosen)));
        }
        return new Group(words, options);
    }
}
