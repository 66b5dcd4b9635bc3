package org.tidewright.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.spreadsheet.Preview;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.model.UnitSystem;

/**
 * What would be kept of a sheet, told before it is.
 *
 * @param words how much there is, and of what time
 * @param tally what of it is new; empty while something stands against taking it
 * @param first some of the first lines as the log would show them
 * @param last some of the last ones; empty where the first are all
 * @param ahead a caution where a time is yet to come; empty for none
 */
public record ImportPreview(
        String words,
        String tally,
        List<Series> series,
        List<Told> first,
        List<Told> last,
        List<String> bad,
        int badCount,
        List<String> comesTwice,
        int comesTwiceCount,
        String ahead) {
    private static final int SHOWN = 3;
    private static final int BAD_SHOWN = 20;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.ENGLISH);

    /** One column or one name. */
    public record Series(String label, String what, String count, String range, String middle, String repeated) {}

    /** One line. */
    public record Told(String at, String words) {}

    static ImportPreview of(
            Preview preview, @Nullable Taking taking, String tally, Instant now, ZoneId zone, UnitSystem units) {
        List<Told> first = new ArrayList<>();
        List<Told> last = new ArrayList<>();
        if (taking instanceof Taking.Taken taken) {
            lines(taken.drafts(), first, last, units);
            for (Preview.Summary summary : preview.series()) {
                List<Value> values = taken.values().getOrDefault(summary.probe(), List.of());
                if (summary.probe() != null && !values.isEmpty()) {
                    first.add(told(values.get(0), summary, zone));
                    last.add(told(values.get(values.size() - 1), summary, zone));
                }
            }
        } else {
            lines(preview.firstDrafts(), first, last, units);
            last.clear();
        }
        return new ImportPreview(
                words(preview, zone),
                tally,
                preview.series().stream().map(ImportPreview::series).toList(),
                first,
                last,
                preview.bad().stream()
                        .limit(BAD_SHOWN)
                        .map(fault -> "Line " + fault.line() + ", " + fault.sentence())
                        .toList(),
                preview.badCount(),
                preview.comesTwice().stream().limit(BAD_SHOWN).toList(),
                preview.comesTwiceCount(),
                ahead(preview.last(), now, zone));
    }

    private static void lines(List<Draft> drafts, List<Told> first, List<Told> last, UnitSystem units) {
        drafts.stream().limit(SHOWN).map(draft -> told(draft, units)).forEach(first::add);
        int rest = Math.min(SHOWN, drafts.size() - first.size());
        drafts.subList(drafts.size() - rest, drafts.size()).forEach(draft -> last.add(told(draft, units)));
    }

    private static Told told(Draft draft, UnitSystem units) {
        String remark = draft.remark().isEmpty() ? "" : " (" + draft.remark() + ")";
        return new Told(AT.format(draft.at()), NoteWords.of(draft.event(), units) + remark);
    }

    private static Told told(Value value, Preview.Summary summary, ZoneId zone) {
        String number = number(summary.unit().fromHeld(value.value()));
        return new Told(
                AT.format(value.at().atZone(zone)),
                summary.measured().quantity().words() + " " + number + " "
                        + ImportDefaults.name(summary.unit()) + " by the probe “"
                        + summary.measured().place() + "”");
    }

    private static String words(Preview preview, ZoneId zone) {
        Instant first = preview.first();
        Instant last = preview.last();
        String span = first == null || last == null
                ? ""
                : ", from " + DAY.format(first.atZone(zone)) + " to " + DAY.format(last.atZone(zone));
        return ImportTally.count(preview.rows(), "row", "rows") + ", "
                + ImportTally.count(preview.numbers(), "number", "numbers")
                + (preview.remarks() == 0 ? "" : ", " + ImportTally.count(preview.remarks(), "note", "notes")) + span
                + ".";
    }

    private static Series series(Preview.Summary summary) {
        String unit = ImportDefaults.name(summary.unit());
        String method = summary.measured().method() == null
                ? "the method not said"
                : "by "
                        + TestMethods.find(
                                        summary.measured().quantity(),
                                        summary.measured().method())
                                .map(TestMethod::name)
                                .orElse("a method that is not known");
        String what = summary.measured().quantity().words() + ", " + method
                + (summary.probe() == null ? "" : ", at “" + summary.probe().place() + "”");
        String count = summary.probe() == null
                ? ImportTally.count(summary.count(), "reading", "readings")
                : ImportTally.count(summary.count(), "value of a probe", "values of a probe");
        boolean any = summary.count() > 0;
        String repeated = summary.repeated() == 0
                ? ""
                : ImportTally.count(summary.repeated(), "stands", "stand") + " at a time that another has"
                        + (summary.probe() == null ? "" : "; the later one is kept");
        return new Series(
                summary.label(),
                what,
                count,
                any ? number(summary.least()) + " to " + number(summary.most()) + " " + unit : "–",
                any ? number(summary.median()) : "–",
                repeated);
    }

    private static String ahead(@Nullable Instant last, Instant now, ZoneId zone) {
        return last == null || !last.isAfter(now)
                ? ""
                : "The last date, " + DAY.format(last.atZone(zone)) + ", is yet to come. Are day and month the right"
                        + " way round?";
    }

    /** Five digits that count: a specific gravity needs them. */
    private static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }
}
