package org.tidewright.plan.species;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;

/**
 * One row of a file of species, cell by cell. What a cell of the file leaves empty is taken from a row underneath, where there is
 * one; what is wrong becomes a fault, and reading goes on so that all faults are told at once.
 */
final class SpeciesRow {
    private final NamedCsvRecord record;
    private final Map<String, String> beneath;
    private final Map<String, SpeciesSource> sources;
    private final Consumer<Fault> faults;

    /**
     * A row.
     *
     * @param beneath cells of the catalogue's own row of the same species, by column; empty for a new species
     * @param sources by key
     */
    SpeciesRow(
            NamedCsvRecord record,
            Map<String, String> beneath,
            Map<String, SpeciesSource> sources,
            Consumer<Fault> faults) {
        this.record = record;
        this.beneath = beneath;
        this.sources = sources;
        this.faults = faults;
    }

    /** Text of a cell; empty where neither this row nor the one beneath says anything. */
    String text(String column) {
        String own = own(column);
        return own.isEmpty() ? beneath.getOrDefault(column, "") : own;
    }

    private String own(String column) {
        return record.findField(column).map(String::strip).orElse("");
    }

    /** Text that must be there. */
    String needed(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            fault(column, "nothing", "a value", "A new species needs this column.");
        }
        return text;
    }

    boolean isEmpty(String column) {
        return text(column).isEmpty();
    }

    /** A number between two bounds, both included. */
    double number(String column, double least, double most) {
        String text = needed(column);
        if (text.isEmpty()) {
            return least;
        }
        try {
            double number = Double.parseDouble(text);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // Told below, with what is expected.
        }
        fault(column, "“" + text + "”", "a number from " + plain(least) + " to " + plain(most), "");
        return least;
    }

    @Nullable
    Double numberOrNone(String column, double least, double most) {
        return isEmpty(column) ? null : number(column, least, most);
    }

    int whole(String column, int least, int most) {
        double number = number(column, least, most);
        if (number != Math.rint(number)) {
            fault(column, "“" + text(column) + "”", "a whole number", "");
        }
        return (int) number;
    }

    boolean yes(String column) {
        String text = needed(column);
        if (!text.isEmpty() && !text.equals("yes") && !text.equals("no")) {
            fault(column, "“" + text + "”", "yes or no", "");
        }
        return text.equals("yes");
    }

    List<String> list(String column) {
        return Arrays.stream(text(column).split(";"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    <E extends Enum<E>> E word(String column, Class<E> words) {
        String text = needed(column);
        E[] all = words.getEnumConstants();
        return text.isEmpty() ? all[0] : known(column, text, all, all[0]);
    }

    <E extends Enum<E>> @Nullable E wordOrNone(String column, Class<E> words) {
        return isEmpty(column) ? null : word(column, words);
    }

    <E extends Enum<E>> Set<E> words(String column, Class<E> words) {
        E[] all = words.getEnumConstants();
        Set<E> found = new LinkedHashSet<>();
        list(column).forEach(text -> found.add(known(column, text, all, all[0])));
        return found;
    }

    private <E extends Enum<E>> E known(String column, String text, E[] all, E instead) {
        for (E word : all) {
            if (key(word).equals(text)) {
                return word;
            }
        }
        List<String> keys = Arrays.stream(all).map(SpeciesRow::key).toList();
        fault(column, "“" + text + "”", "one of " + String.join(", ", keys), Spelling.suggestion(text, keys));
        return instead;
    }

    /** The source of the columns before it; of what a keeper states without naming one, their own word. */
    SpeciesSource source(String column, String... columns) {
        boolean states = Arrays.stream(columns).anyMatch(each -> !own(each).isEmpty());
        String key = states ? own(column) : text(column);
        if (key.isEmpty()) {
            return SpeciesSource.OWN;
        }
        SpeciesSource source = sources.get(key);
        if (source == null) {
            fault(column, "“" + key + "”", "the key of a source", Spelling.suggestion(key, sources.keySet()));
            return SpeciesSource.OWN;
        }
        return source;
    }

    /** A fault of this row. */
    void fault(String column, String found, String expected, String mend) {
        String name = text("scientific_name");
        String where = name.isEmpty() ? column : name + ", " + column;
        int place = Math.max(0, record.getHeader().indexOf(column)) + 1;
        faults.accept(new Fault((int) record.getStartingLineNumber(), place, where, found, expected, mend));
    }

    /** All cells by column, the ones beneath where this row is empty. */
    Map<String, String> cells() {
        Map<String, String> cells = new java.util.HashMap<>(beneath);
        record.getFieldsAsMap().forEach((column, cell) -> {
            if (!cell.isBlank()) {
                cells.put(column, cell.strip());
            }
        });
        return Map.copyOf(cells);
    }

    private static <E extends Enum<E>> String key(E word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
