package org.tidewright.husbandry.note;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.NewWater;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.quantity.Amount;

/** Lines about what went into the water. */
final class WaterNotes {
    private WaterNotes() {}

    /** {@code dose vinegar 20 mL}, {@code dose sodium bicarbonate 12 g}. */
    static Event dose(String rest, Note note) throws UnreadableNote {
        List<String> known = new ArrayList<>();
        for (Dosing solution : note.plan().dosing()) {
            Optional<String> told = after(solution.name(), rest);
            if (told.isPresent()) {
                return solution(solution, told.get(), note);
            }
            known.add(solution.name());
        }
        for (Salt salt : Salt.values()) {
            String name = salt.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            Optional<String> told = after(name, rest);
            if (told.isPresent() && note.isAmount(told.get(), "kg")) {
                return new Event.Dose(name, salt, note.amount(told.get(), "kg"), null);
            }
            known.add(name);
        }
        throw note.wrong(
                rest.isEmpty() ? "nothing after “dose”" : "“" + rest + "”",
                "a solution of the plan and its volume, or a salt and its mass: dose vinegar 20 mL",
                Spelling.suggestion(rest.replaceAll("\\s*[-+0-9.].*", ""), known));
    }

    private static Event solution(Dosing solution, String told, Note note) throws UnreadableNote {
        double volume = note.amount(told, "m^3");
        Amount strength = solution.strength();
        return new Event.Dose(
                solution.name(), solution.salt(), strength == null ? null : strength.in("kg/m^3") * volume, volume);
    }

    /** {@code changed 40 L}: with the water that the plan mixes. */
    static Event changed(String rest, Note note) throws UnreadableNote {
        return new Event.WaterChanged(
                note.amount(rest, "m^3"), newWater(note.plan().newWater()));
    }

    private static Map<WaterQuantity, Double> newWater(@Nullable NewWater mixed) {
        Map<WaterQuantity, Double> known = new EnumMap<>(WaterQuantity.class);
        if (mixed != null) {
            put(known, WaterQuantity.SALINITY, mixed.salinity());
            put(known, WaterQuantity.TEMPERATURE, mixed.temperature());
            put(known, WaterQuantity.ALKALINITY, mixed.alkalinity());
            put(known, WaterQuantity.CALCIUM, mixed.calcium());
            put(known, WaterQuantity.MAGNESIUM, mixed.magnesium());
            put(known, WaterQuantity.NITRATE, mixed.nitrate());
            put(known, WaterQuantity.PHOSPHATE, mixed.phosphate());
        }
        return known;
    }

    private static void put(Map<WaterQuantity, Double> known, WaterQuantity quantity, @Nullable Amount stated) {
        if (stated != null) {
            known.put(quantity, stated.in(quantity.held()));
        }
    }

    /** What follows a name at the beginning of a text, where that is how it begins. */
    private static Optional<String> after(String name, String text) {
        return text.regionMatches(true, 0, name, 0, name.length())
                        && Arrays.asList("", " ")
                                .contains(
                                        text.length() == name.length()
                                                ? ""
                                                : text.substring(name.length(), name.length() + 1))
                ? Optional.of(text.substring(name.length()).strip())
                : Optional.empty();
    }
}
