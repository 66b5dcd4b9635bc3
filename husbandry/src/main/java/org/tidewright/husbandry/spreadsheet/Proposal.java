package org.tidewright.husbandry.spreadsheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a sheet is taken for by itself.
 *
 * @param mapping with what must be confirmed marked so
 * @param labels headers of the columns, by number; without those that have none
 * @param findings how each part of the mapping came about, and why columns were left out
 */
public record Proposal(Mapping mapping, Map<Integer, String> labels, List<Finding> findings) {
    /** What was found out about a column; empty where nothing was, since it holds nothing. */
    public Optional<Finding> ofColumn(int column) {
        String subject = "column " + column;
        return first(finding ->
                finding.subject().equals(subject) || finding.subject().startsWith(subject + " “"));
    }

    /** What was found out about a name beside which values stand. */
    public Optional<Finding> ofName(String name) {
        return first(finding -> finding.subject().equals("name “" + name + "”"));
    }

    /** What was found out about an entry of the mapping: {@code date-order}. */
    public Optional<Finding> about(String entry) {
        return first(finding -> finding.subject().equals(entry));
    }

    private Optional<Finding> first(Predicate<Finding> predicate) {
        return findings.stream().filter(predicate).findFirst();
    }

    /** The mapping as text, which the keeper may change, with the findings as remarks in it. */
    public String text() {
        return MappingText.write(mapping, findings);
    }
}
