package org.tidewright.web.page;

import java.util.List;

/**
 * One of many, to be chosen from a list.
 *
 * @param name in the query
 * @param fault what is wrong with what was asked for; empty for nothing
 */
public record Select(String name, String label, List<Group> groups, String fault) {
    /** Options that belong together. */
    public record Group(String label, List<Choice.Option> options) {}

    public boolean faulty() {
        return !fault.isEmpty();
    }

    /** Whether its options stand in groups with names. */
    public boolean grouped() {
        return groups.size() > 1;
    }

    /** The options of one group without a name. */
    static Select of(String name, String label, List<Choice.Option> options, String fault) {
        return new Select(name, label, List.of(new Group("", options)), fault);
    }

    /** Why what was asked for is none of the list. */
    static String none(String asked, List<String> values) {
        return "“" + Entry.shortened(asked) + "” is none of " + String.join(", ", values) + ".";
    }
}
