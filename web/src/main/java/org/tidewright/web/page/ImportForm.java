package org.tidewright.web.page;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.spreadsheet.DateOrder;
import org.tidewright.husbandry.spreadsheet.DecimalSign;
import org.tidewright.husbandry.spreadsheet.Kept;
import org.tidewright.husbandry.spreadsheet.Mapping;
import org.tidewright.husbandry.spreadsheet.Measured;
import org.tidewright.husbandry.spreadsheet.Named;
import org.tidewright.husbandry.spreadsheet.Proposal;
import org.tidewright.husbandry.spreadsheet.RowChoice;
import org.tidewright.husbandry.spreadsheet.Times;

/**
 * What a keeper chose about a spreadsheet, over what it was taken for by itself. A choice that is still open is an empty
 * text; it stays a question of the mapping.
 *
 * @param values what stands in each field
 * @param faults what is wrong with a field, by its name
 */
public record ImportForm(Map<String, String> values, Mapping mapping, Map<String, String> faults) {
    static final String LEFT_OUT = "left_out";
    static final String DATE = "date";
    static final String TIME = "time";
    static final String REMARK = "remark";
    private static final int LONGEST_PLACE = 60;

    /** As it was proposed. */
    public static ImportForm of(Proposal proposal) {
        return read(proposal, name -> null, false);
    }

    /** As it was sent. */
    public static ImportForm read(Proposal proposal, UnaryOperator<@Nullable String> fields) {
        return read(proposal, fields, true);
    }

    private static ImportForm read(Proposal proposal, UnaryOperator<@Nullable String> fields, boolean sent) {
        Map<String, String> values = ImportDefaults.of(proposal);
        values.replaceAll((name, usual) -> {
            String typed = fields.apply(name);
            // A box without its tick is not sent at all.
            boolean box = name.equals("carried") || name.equals("leave_out");
            return typed != null ? typed.strip() : sent && box ? "" : usual;
        });
        return new Builder(proposal, values).form();
    }

    public boolean isSound() {
        return faults.isEmpty() && mapping.questions().isEmpty();
    }

    String value(String name) {
        return values.getOrDefault(name, "");
    }

    String fault(String name) {
        return faults.getOrDefault(name, "");
    }

    /** What {@code column_3} says: {@code alkalinity dkh}. */
    static String value(Measured measured) {
        return measured.quantity().key() + " " + measured.unit().key();
    }

    /** Makes the mapping of what stands in the fields. */
    private static final class Builder {
        private final Proposal proposal;
        private final Mapping base;
        private final Map<String, String> values;
        private final Map<String, String> faults = new LinkedHashMap<>();

        Builder(Proposal proposal, Map<String, String> values) {
            this.proposal = proposal;
            this.base = proposal.mapping();
            this.values = values;
        }

        ImportForm form() {
            Mapping mapping = new Mapping(
                    base.layout(),
                    times(),
                    constant("decimal", DecimalSign.values()),
                    columns(),
                    named(),
                    base.named() == null ? columnOf(REMARK) : base.remarkColumn(),
                    rows(),
                    is("leave_out", "yes"));
            return new ImportForm(Map.copyOf(values), mapping, faults);
        }

        private String value(String name) {
            return values.getOrDefault(name, "");
        }

        private boolean is(String name, String value) {
            return value(name).equals(value);
        }

        private Times times() {
            Times usual = base.times();
            Integer date = usual.dateColumn();
            Integer time = usual.timeColumn();
            if (base.named() == null) {
                date = columnOf(DATE);
                time = columnOf(TIME);
                if (date == null) {
                    faults.putIfAbsent("columns", "Found no column for the date; expected one. Choose “date” for it.");
                    date = usual.dateColumn();
                }
            }
            LocalTime timeOfDay = usual.timeOfDay();
            try {
                timeOfDay = LocalTime.parse(value("time_of_day"));
            } catch (DateTimeException unreadable) {
                faults.put("time_of_day", "Found “" + value("time_of_day") + "”; expected a time such as 12:00.");
            }
            DateOrder order = constant("order", DateOrder.values());
            return new Times(date, is("carried", "yes"), time, order, timeOfDay, usual.zone());
        }

        /** The one column that has this part; a second one is a fault. */
        private @Nullable Integer columnOf(String part) {
            Integer found = null;
            for (int column : ImportDefaults.columns(proposal)) {
                if (is("column_" + column, part)) {
                    if (found != null) {
                        faults.put(
                                "column_" + column,
                                "Column " + found + " is the " + words(part) + " already; expected one of them.");
                    }
                    found = found == null ? (Integer) column : found;
                }
            }
            return found;
        }

        private static String words(String part) {
            return part.equals(TIME) ? "time of day" : part.equals(REMARK) ? "one of your notes" : part;
        }

        private <E extends Enum<E>> @Nullable E constant(String name, E[] constants) {
            for (E constant : constants) {
                if (is(name, constant.name().toLowerCase(Locale.ROOT))) {
                    return constant;
                }
            }
            return null;
        }

        private RowChoice rows() {
            if (base.rows().column() == 0 || is("rows", "all")) {
                return RowChoice.ALL;
            }
            return value("rows").startsWith("is ")
                    ? new RowChoice(base.rows().column(), value("rows").substring(3), true)
                    : base.rows();
        }

        private SortedMap<Integer, Measured> columns() {
            SortedMap<Integer, Measured> columns = new TreeMap<>();
            if (base.named() == null) {
                for (int column : ImportDefaults.columns(proposal)) {
                    measured("column_" + column, base.columns().get(column))
                            .ifPresent(measured -> columns.put(column, measured));
                }
            }
            return columns;
        }

        private @Nullable Named named() {
            Named usual = base.named();
            if (usual == null) {
                return null;
            }
            Map<String, Optional<Measured>> names = new LinkedHashMap<>();
            List<String> all = new ArrayList<>(usual.names().keySet());
            for (int i = 0; i < all.size(); i++) {
                Measured guess =
                        usual.names().getOrDefault(all.get(i), Optional.empty()).orElse(null);
                names.put(all.get(i), measured("name_" + i, guess));
            }
            return new Named(usual.nameColumn(), usual.valueColumn(), usual.unitColumn(), names);
        }

        private Optional<Measured> measured(String field, @Nullable Measured guess) {
            String what = value(field);
            if (what.isEmpty()) {
                return Optional.ofNullable(guess);
            }
            Optional<Measured> chosenOne = ImportDefaults.measured(what);
            if (chosenOne.isEmpty() && !List.of(LEFT_OUT, DATE, TIME, REMARK).contains(what)) {
                faults.put(field, "Found “" + what + "”; expected one of the list.");
            }
            return chosenOne.map(chosen -> {
                String method = value("method_" + field);
                boolean known = ImportDefaults.methods(chosen.quantity()).contains(method);
                if (!known) {
                    // Of another quantity, chosen before this one was: its list shows that nothing is said.
                    values.put("method_" + field, "");
                }
                Kept kept = constant("kept_" + field, Kept.values());
                return new Measured(
                        chosen.quantity(),
                        chosen.unit(),
                        known ? method : null,
                        place(field),
                        kept == null ? Kept.BY_PACE : kept,
                        true);
            });
        }

        private String place(String field) {
            String place = value("place_" + field);
            if (place.isEmpty() || place.length() > LONGEST_PLACE) {
                faults.put(
                        "place_" + field,
                        "Found " + (place.isEmpty() ? "nothing" : place.length() + " characters")
                                + "; expected a short name such as sump.");
            }
            return place;
        }
    }
}
