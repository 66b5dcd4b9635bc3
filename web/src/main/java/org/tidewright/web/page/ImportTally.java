package org.tidewright.web.page;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.web.desk.Desk;

/**
 * What of a sheet is new to a system's log.
 *
 * @param newLines lines that are not in the log, nor were taken back from it
 * @param linesThere lines that are
 * @param newValues values of probes at times without one
 * @param valuesThere values that a probe has already
 * @param valuesChanged values at a time at which the probe has another one, whose place they take
 */
public record ImportTally(int newLines, int linesThere, int newValues, int valuesThere, int valuesChanged) {

    public static ImportTally of(Desk desk, String system, Taking.Taken taken) {
        Set<UUID> there = new HashSet<>();
        if (!taken.drafts().isEmpty()) {
            desk.journal().everything(system).forEach(line -> there.add(line.id()));
        }
        int known = (int) taken.drafts().stream()
                .filter(draft -> there.contains(draft.id()))
                .count();
        int[] values = new int[3];
        taken.values().forEach((probe, said) -> count(desk, system, probe, said, values));
        return new ImportTally(taken.drafts().size() - known, known, values[0], values[1], values[2]);
    }

    /** Times of probes are kept to the millisecond; of one time the last value of the sheet stands. */
    private static void count(Desk desk, String system, Probe probe, List<Value> said, int[] counts) {
        Map<Long, Double> sheet = new HashMap<>();
        Instant first = Instant.MAX;
        Instant last = Instant.MIN;
        for (Value value : said) {
            sheet.put(value.at().toEpochMilli(), value.value());
            first = value.at().isBefore(first) ? value.at() : first;
            last = value.at().isAfter(last) ? value.at() : last;
        }
        Map<Long, Double> kept = new HashMap<>();
        Span span = new Span(Instant.ofEpochMilli(first.toEpochMilli()), last.plusMillis(1));
        desk.probes()
                .values(system, probe, span)
                .forEach(value -> kept.put(value.at().toEpochMilli(), value.value()));
        sheet.forEach((at, value) -> {
            Double before = kept.get(at);
            counts[before == null ? 0 : before.equals(value) ? 1 : 2]++;
        });
    }

    /** What is told once a sheet was kept. The numbers come from an address, so that they are texts of digits only. */
    public static String kept(String newLines, String linesThere, String newValues) {
        if (newLines.equals("0") && newValues.equals("0")) {
            return "All of it was there already, so nothing was added.";
        }
        boolean lines = !newLines.equals("0") || !linesThere.equals("0");
        String told = lines
                ? newLines + (newLines.equals("1") ? " line is" : " lines are") + " new in the log"
                        + (linesThere.equals("0") ? "" : ", " + linesThere + " were there already")
                : "";
        String values = newValues.equals("0")
                ? ""
                : newValues + (newValues.equals("1") ? " value of a probe" : " values of probes");
        return "Kept: " + told + (told.isEmpty() || values.isEmpty() ? "" : "; ") + values + ".";
    }

    /** {@code 412 lines are new, 3 are in the log already}. */
    String words() {
        String lines = newLines + linesThere == 0
                ? ""
                : count(newLines, "line is new", "lines are new")
                        + (linesThere == 0 ? "" : ", " + count(linesThere, "is", "are") + " in the log already");
        int values = newValues + valuesThere + valuesChanged;
        String probes = values == 0
                ? ""
                : count(newValues, "value of a probe is new", "values of probes are new")
                        + (valuesThere == 0 ? "" : ", " + count(valuesThere, "is", "are") + " kept already")
                        + (valuesChanged == 0
                                ? ""
                                : ", " + count(valuesChanged, "takes", "take") + " the place of another value");
        return lines.isEmpty() || probes.isEmpty() ? lines + probes : lines + "; " + probes;
    }

    static String count(int count, String one, String more) {
        return count == 1 ? "1 " + one : String.format(Locale.ROOT, "%,d ", count) + more;
    }
}
