package org.tidewright.husbandry.spreadsheet;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.seawater.unit.Unit;

/**
 * What a sheet would give under a mapping.
 *
 * @param questions what the keeper still has to say; the rest may change with the answers
 * @param rows of data, blank ones not counted
 * @param remarks rows with words of the keeper
 * @param series one for each column or name, also those without numbers
 * @param first time of all numbers; null where there are none
 * @param firstDrafts some of the first readings, in the order of the sheet
 * @param bad the first cells and rows that cannot be taken
 * @param badCount of all of them
 * @param comesTwice times that the clock showed twice that night, of which the first is taken: the first few, in words
 * @param comesTwiceCount of all of them
 */
public record Preview(
        List<String> questions,
        int rows,
        int remarks,
        List<Summary> series,
        @Nullable Instant first,
        @Nullable Instant last,
        List<Draft> firstDrafts,
        List<Fault> bad,
        int badCount,
        List<String> comesTwice,
        int comesTwiceCount) {

    /** Whether all can be taken in as it stands. */
    public boolean isSound(Mapping mapping) {
        return questions.isEmpty() && (badCount == 0 || mapping.leaveBadCellsOut());
    }

    /** How many numbers would be taken, as readings or as values of probes. */
    public int numbers() {
        return series.stream().mapToInt(Summary::count).sum();
    }

    /**
     * One column, or one name.
     *
     * @param label the column's header, or the name
     * @param probe under which its numbers are kept; null where they become readings
     * @param least of its numbers, in the unit; as the others, not a number where there are none
     * @param repeated numbers at a time that another of the series has; of a probe, the later one stands
     * @param pace from one time to the next, on average; null with less than two
     */
    public record Summary(
            String label,
            Measured measured,
            @Nullable Probe probe,
            int count,
            @Unit("*") double least,
            @Unit("*") double median,
            @Unit("*") double most,
            int repeated,
            @Nullable Instant firstRepeated,
            @Nullable Duration pace) {
        /** What the numbers are in. */
        public QuantityUnit unit() {
            return measured.unit();
        }
    }
}
