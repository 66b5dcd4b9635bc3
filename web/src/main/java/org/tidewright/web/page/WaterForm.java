package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.sheet.KnownField;
import org.tidewright.husbandry.sheet.KnownText;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.BoronRatio;

/**
 * The form of the water desk: what was typed as it stands, what is wrong with it, and what was read. Where anything is
 * wrong, nothing should be computed.
 *
 * @param first what every water needs
 * @param settling of which two settle the rest
 * @param more what is seldom known
 * @param moreOpen whether {@code more} is unfolded
 * @param example whether nothing was asked and an example stands in the fields
 * @param typed what each field says, number and unit, within a sentence
 */
public record WaterForm(
        List<Field> first,
        List<Field> settling,
        List<Field> more,
        boolean moreOpen,
        BoronRatio boron,
        boolean example,
        Map<KnownField, String> typed,
        KnownText known) {

    /** Name of the choice of boron in the query. */
    public static final String BORON = "boron";

    private static final Set<KnownField> NEEDED = EnumSet.of(KnownField.TEMPERATURE, KnownField.SALINITY);
    private static final Set<KnownField> SEVERAL =
            EnumSet.of(KnownField.ALKALINITY, KnownField.CARBON, KnownField.PH, KnownField.CARBON_DIOXIDE);

    /**
     * A field and its unit.
     *
     * @param name in the query; the unit's ends in {@code _unit}
     * @param text as it was typed
     * @param fault what is wrong, empty for nothing
     */
    public record Field(String name, String label, String text, List<Unit> units, String fault) {
        public boolean faulty() {
            return !fault.isEmpty();
        }
    }

    /** A unit that can be chosen. */
    public record Unit(String name, String label, boolean chosen) {}

    private static TypedNumber entry(KnownField field, String text, @Nullable String unit, String usual) {
        return TypedNumber.of(
                text,
                unit,
                usual,
                spelt -> field.unitNames().stream()
                        .filter(spelt::equalsIgnoreCase)
                        .findFirst());
    }

    /** Reads the form from a query; without any of its fields, an example. */
    public static WaterForm read(Levers.Query query, UnitSystem units) {
        boolean example = true;
        Map<KnownField, TypedNumber> entries = new EnumMap<>(KnownField.class);
        for (KnownField field : KnownField.values()) {
            String text = query.get(name(field));
            example &= text == null;
            String unit = query.get(name(field) + "_unit");
            entries.put(field, entry(field, text == null ? "" : text, unit, usualUnit(field, units)));
        }
        if (example) {
            for (KnownField field : KnownField.values()) {
                String usual = usualUnit(field, units);
                entries.put(field, entry(field, example(field, units), usual, usual));
            }
        }
        Map<KnownField, String> faults = new EnumMap<>(KnownField.class);
        KnownText known = known(entries, faults);
        String boron = query.get(BORON);
        return new WaterForm(
                fields(NEEDED, entries, faults),
                fields(SEVERAL, entries, faults),
                fields(EnumSet.complementOf(both()), entries, faults),
                entries.entrySet().stream()
                                .anyMatch(entry -> !both().contains(entry.getKey())
                                        && !entry.getValue().read().isEmpty())
                        || "lee".equals(boron),
                "lee".equals(boron) ? BoronRatio.LEE_2010 : BoronRatio.UPPSTROM_1974,
                example,
                told(entries),
                known);
    }

    /** How many fields are to be mended. */
    public int faults() {
        return (int) List.of(first, settling, more).stream()
                .flatMap(List::stream)
                .filter(Field::faulty)
                .count();
    }

    /** The sheet of what was typed. */
    WaterSheet sheet() {
        return known.sheet(boron);
    }

    static String name(KnownField field) {
        return field.name().toLowerCase(Locale.ROOT);
    }

    /** What it is, at the start of a sentence. */
    static String capitalised(KnownField field) {
        String words = field.words();
        return field == KnownField.PH ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static EnumSet<KnownField> both() {
        EnumSet<KnownField> both = EnumSet.copyOf(NEEDED);
        both.addAll(SEVERAL);
        return both;
    }

    /** Reads every entry. One that is needed and missing is told where it is missing, not where it is needed. */
    private static KnownText known(Map<KnownField, TypedNumber> entries, Map<KnownField, String> faults) {
        Map<KnownField, String> texts = new EnumMap<>(KnownField.class);
        entries.forEach((field, entry) -> texts.put(field, entry.read()));
        boolean others = texts.entrySet().stream()
                .anyMatch(entry ->
                        !NEEDED.contains(entry.getKey()) && !entry.getValue().isEmpty());
        KnownText known = KnownText.read(texts);
        for (KnownField field : KnownField.values()) {
            if (NEEDED.contains(field) && texts.getOrDefault(field, "").isEmpty() && others) {
                faults.put(field, "Needed too: nothing else follows without it.");
            } else {
                judge(field, known, faults);
            }
        }
        if (NEEDED.stream().anyMatch(faults::containsKey)) {
            faults.entrySet().removeIf(fault -> fault.getValue().contains(" also needs the "));
        }
        return known;
    }

    private static void judge(KnownField field, KnownText known, Map<KnownField, String> faults) {
        for (KnownText.Fault fault : known.faults()) {
            if (fault.field() == field) {
                String words = fault.words();
                faults.put(
                        field,
                        words.substring(0, 1).toUpperCase(Locale.ROOT)
                                + words.substring(1)
                                + (words.endsWith("?") ? "" : "."));
            }
        }
    }

    private static List<Field> fields(
            Set<KnownField> which, Map<KnownField, TypedNumber> entries, Map<KnownField, String> faults) {
        List<Field> fields = new ArrayList<>();
        entries.forEach((field, entry) -> {
            if (which.contains(field)) {
                fields.add(new Field(
                        name(field),
                        capitalised(field),
                        entry.text(),
                        field.unitNames().stream()
                                .map(unit -> new Unit(unit, label(field, unit), unit.equals(entry.unit())))
                                .toList(),
                        faults.getOrDefault(field, "")));
            }
        });
        return fields;
    }

    private static Map<KnownField, String> told(Map<KnownField, TypedNumber> entries) {
        Map<KnownField, String> told = new EnumMap<>(KnownField.class);
        entries.forEach((field, entry) -> {
            if (!entry.read().isEmpty()) {
                told.put(field, entry.read().replace(' ', '\u00a0'));
            }
        });
        return told;
    }

    /** A unit as the list shows it. */
    private static String label(KnownField field, String unit) {
        if (field == KnownField.PH) {
            return unit.isEmpty() ? "total scale" : unit.equals("NBS") ? "NBS (probe)" : unit + " scale";
        }
        if (field == KnownField.SALINITY) {
            return unit.isEmpty() ? "PSU, ppt" : unit.startsWith("SG 60") ? unit + " °F" : unit;
        }
        return unit.replace("CaCO3", "CaCO₃")
                .replace("PO4", "PO₄")
                .replace("SiO2", "SiO₂")
                .replace("NH3", "NH₃")
                .replace("NH4", "NH₄");
    }

    /** The unit most keepers have it in: a probe is set with buffers of the NBS scale. */
    private static String usualUnit(KnownField field, UnitSystem units) {
        return switch (field) {
            case TEMPERATURE -> units == UnitSystem.US ? "°F" : "°C";
            case PH -> "NBS";
            default -> field.unitNames().get(0);
        };
    }

    private static String example(KnownField field, UnitSystem units) {
        return switch (field) {
            case TEMPERATURE -> units == UnitSystem.US ? "77" : "25";
            case SALINITY -> "35";
            case ALKALINITY -> "8";
            case PH -> "8.0";
            default -> "";
        };
    }
}
