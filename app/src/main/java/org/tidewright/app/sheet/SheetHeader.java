package org.tidewright.app.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.seawater.carbonate.BoronRatio;

/** The columns of a file: those given, which of them a sheet can be computed from, and those to be added. */
final class SheetHeader {
    /** What a computed column is called whose name is taken. */
    private static final String SUFFIX = "_computed";

    /** Some water, to try out what can be computed from what. */
    private static final Map<SheetColumn, Double> SOME_WATER = new EnumMap<>(Map.of(
            SheetColumn.TEMPERATURE, 25.0,
            SheetColumn.PRACTICAL_SALINITY, 35.0,
            SheetColumn.CONDUCTIVITY, 53.0,
            SheetColumn.TOTAL_ALKALINITY, 2300.0,
            SheetColumn.INORGANIC_CARBON, 2000.0,
            SheetColumn.PH_TOTAL, 8.05,
            SheetColumn.PARTIAL_PRESSURE, 400.0,
            SheetColumn.TOTAL_PHOSPHATE, 0.0,
            SheetColumn.TOTAL_SILICATE, 0.0,
            SheetColumn.TOTAL_AMMONIA, 0.0));

    private final List<String> names;
    private final Map<SheetColumn, Integer> places = new EnumMap<>(SheetColumn.class);

    private SheetHeader(List<String> names) {
        this.names = List.copyOf(names);
    }

    /** Reads a header line. */
    static SheetHeader of(List<String> names, String where) throws UnusableCsv {
        SheetHeader header = new SheetHeader(names);
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).strip();
            if (!name.isEmpty() && !seen.add(name)) {
                throw new UnusableCsv(where + ": the column name " + name + " stands twice; give one another name");
            }
            for (SheetColumn column : WaterSheet.KNOWABLE) {
                if (column.key().equals(name)) {
                    header.places.put(column, i);
                }
            }
        }
        if (header.places.isEmpty()) {
            throw new UnusableCsv(where + ": found no column to compute from; expected some of "
                    + WaterSheet.KNOWABLE.stream().map(SheetColumn::key).collect(Collectors.joining(", ")));
        }
        return header;
    }

    /** How many columns are given. */
    int size() {
        return names.size();
    }

    /** The names given, as they stand. */
    List<String> names() {
        return names;
    }

    /** Where a column to compute from stands. */
    Map<SheetColumn, Integer> places() {
        return places;
    }

    /** What can be computed from a row in which these stand. */
    static Set<SheetColumn> computable(Set<SheetColumn> given) {
        Map<SheetColumn, Double> some = new EnumMap<>(SOME_WATER);
        some.keySet().retainAll(given);
        Set<SheetColumn> computable = EnumSet.noneOf(SheetColumn.class);
        computable.addAll(
                WaterSheet.of(some, BoronRatio.UPPSTROM_1974, null).computed().keySet());
        return computable;
    }

    /** The names of all columns of the result. */
    List<String> with(Set<SheetColumn> added, String where) throws UnusableCsv {
        List<String> all = new ArrayList<>(names);
        Set<String> taken = names.stream().map(String::strip).collect(Collectors.toSet());
        for (SheetColumn column : added) {
            String name = taken.contains(column.key()) ? column.key() + SUFFIX : column.key();
            if (taken.contains(name)) {
                throw new UnusableCsv(where + ": the columns " + column.key() + " and " + name
                        + " are both taken; give one another name, so that the computed one has a place");
            }
            all.add(name);
        }
        return all;
    }
}
