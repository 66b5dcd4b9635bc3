package org.tidewright.husbandry.wishlist;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/** One row of a wish list's file. What is wrong becomes a fault, and reading goes on. */
final class WishRow {
    private static final int MOST_ANIMALS = 999;
    private static final int LONGEST_NOTE = 200;
    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

    private final NamedCsvRecord record;
    private final Catalogue catalogue;
    private final List<Fault> faults;

    WishRow(NamedCsvRecord record, Catalogue catalogue, List<Fault> faults) {
        this.record = record;
        this.catalogue = catalogue;
        this.faults = faults;
    }

    /** The wish; null where the row names no animal or an unknown one. */
    @Nullable
    WishLine line() {
        String name = text("animal");
        if (name.isEmpty()) {
            for (String column : List.of("count", "length_cm", "price", "not_before", "note", "kept_on", "comes")) {
                if (!text(column).isEmpty()) {
                    fault("animal", "nothing", "the name of an animal", "");
                    return null;
                }
            }
            return null;
        }
        int count = count();
        Long price = money("price");
        LocalDate notBefore = date("not_before");
        WishLine.Kept kept = kept();
        String note = text("note");
        if (note.length() > LONGEST_NOTE || note.indexOf('\n') >= 0 || note.indexOf('\r') >= 0) {
            fault("note", note.length() + " letters", "one line of at most " + LONGEST_NOTE, "");
        }
        Species species = catalogue.find(name).orElse(null);
        if (species == null) {
            fault(
                    "animal",
                    "“" + name + "”",
                    "a species of the catalogue, by its scientific name or one of the trade's",
                    catalogue.suggestion(name));
            return null;
        }
        return new WishLine(new Animals(species, count, length(species)), price, notBefore, note, kept);
    }

    private int count() {
        String text = text("count");
        if (text.isEmpty()) {
            return 1;
        }
        if (text.matches("\\d{1,3}") && Integer.parseInt(text) > 0) {
            return Integer.parseInt(text);
        }
        fault("count", "“" + text + "”", "a whole number from 1 to " + MOST_ANIMALS, "");
        return 1;
    }

    private @Unit("m") double length(Species species) {
        String text = text("length_cm");
        if (!(species instanceof FishSpecies fish)) {
            if (!text.isEmpty()) {
                fault("length_cm", "“" + text + "”", "nothing: only fish are measured", "");
            }
            return 0;
        }
        if (text.isEmpty()) {
            return Candidates.sold(fish);
        }
        if (text.matches("\\d{1,3}(\\.\\d{1,4})?")) {
            double length = Double.parseDouble(text) / 100;
            if (length >= Candidates.LEAST && length <= Candidates.most(fish)) {
                return length;
            }
        }
        fault(
                "length_cm",
                "“" + text + "”",
                "a number from " + plain(100 * Candidates.LEAST) + " to " + plain(100 * Candidates.most(fish))
                        + ", a tenth over the greatest length known of a "
                        + fish.name().common(),
                "");
        return Candidates.sold(fish);
    }

    private WishLine.@Nullable Kept kept() {
        LocalDate on = date("kept_on");
        LocalDate comes = date("comes");
        LocalDate enters = date("enters");
        if (on == null && comes == null && enters == null) {
            return null;
        }
        if (on == null || comes == null || enters == null) {
            // A date that could not be read has its fault already.
            if (text("kept_on").isEmpty()
                    || text("comes").isEmpty()
                    || text("enters").isEmpty()) {
                fault("kept_on", "some of kept_on, comes and enters", "all three or none", "");
            }
            return null;
        }
        if (enters.isBefore(comes)) {
            fault("enters", enters.toString(), "a day no earlier than comes, " + comes, "");
        }
        return new WishLine.Kept(on, comes, enters);
    }

    @Nullable
    Long money(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        OptionalLong amount = Money.read(text);
        if (amount.isEmpty()) {
            fault(column, "“" + text + "”", Money.expected(), "");
            return null;
        }
        return amount.getAsLong();
    }

    @Nullable
    LocalDate date(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        LocalDate day = day(text);
        if (day == null) {
            fault(column, "“" + text + "”", EXPECTED_DAY, "");
        }
        return day;
    }

    static final String EXPECTED_DAY = "a date such as 2026-12-20";

    /** A date as computers write it; null for anything else. */
    static @Nullable LocalDate day(String text) {
        try {
            LocalDate day = text.matches("\\d{4}-\\d{2}-\\d{2}") ? LocalDate.parse(text) : null;
            return day == null || day.isBefore(FIRST) || day.isAfter(LAST) ? null : day;
        } catch (DateTimeException noDay) {
            return null;
        }
    }

    /** What holds for the whole list: the first row that says it counts, and no other may say something else. */
    <T> @Nullable T once(String column, @Nullable T before, @Nullable T here) {
        if (before != null && here != null && !Objects.equals(before, here)) {
            fault(column, "“" + text(column) + "”", "the same as before, or nothing", "It holds for the whole list.");
        }
        return before == null ? here : before;
    }

    private String text(String column) {
        return record.findField(column).map(String::strip).orElse("");
    }

    void fault(String column, String found, String expected, String mend) {
        String name = text("animal");
        String where = name.isEmpty() || column.equals("animal") ? column : name + ", " + column;
        int place = Math.max(0, record.getHeader().indexOf(column)) + 1;
        faults.add(new Fault((int) record.getStartingLineNumber(), place, where, found, expected, mend));
    }

    /** To hundredths, without zeros at the end. */
    static String plain(double number) {
        return plain(number, 2);
    }

    static String plain(double number, int decimals) {
        return BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
