package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;

/**
 * One of many, to be chosen from a list.
 *
 * @param name in the form
 * @param fault what is wrong with what was chosen, or what is asked; empty for nothing
 */
public record Select(String name, String label, List<Group> groups, String fault) {
    /** Options that belong together; those without words stand by themselves. */
    public record Group(String words, List<Choice.Option> options) {}

    public boolean faulty() {
        return !fault.isEmpty();
    }

    /** Without groups. */
    static Select of(String name, String label, List<Choice.Option> options, String fault) {
        return new Select(name, label, List.of(new Group("", options)), fault);
    }

    /**
     * Without groups.
     *
     * @param pairs value and words of each option, in turn
     */
    static Select of(String name, String label, String chosen, String fault, List<String> pairs) {
        return new Select(name, label, List.of(group("", chosen, pairs)), fault);
    }

    static Group group(String words, String chosen, List<String> pairs) {
        List<Choice.Option> options = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i += 2) {
            options.add(new Choice.Option(
                    pairs.get(i), pairs.get(i + 1), pairs.get(i).equals(chosen)));
        }
        return new Group(words, options);
    }

    /** Why what was asked for is none of the list. */
    static String none(String asked, List<String> values) {
        return "“" + Entry.shortened(asked) + "” is none of " + String.join(", ", values) + ".";
    }
}
