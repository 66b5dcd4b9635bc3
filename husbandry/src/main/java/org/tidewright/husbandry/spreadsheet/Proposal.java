package org.tidewright.husbandry.spreadsheet;

import java.util.List;
import java.util.Map;

/**
 * What a sheet is taken for by itself.
 *
 * @param mapping with what must be confirmed marked so
 * @param labels headers of the columns, by number; without those that have none
 * @param findings how each part of the mapping came about, and why columns were left out
 */
public record Proposal(Mapping mapping, Map<Integer, String> labels, List<Finding> findings) {
    /** The mapping as text, which the keeper may change, with the findings as remarks in it. */
    public String text() {
        return MappingText.write(mapping, findings);
    }
}
