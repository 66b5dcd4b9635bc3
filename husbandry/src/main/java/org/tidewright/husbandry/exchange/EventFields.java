package org.tidewright.husbandry.exchange;

import static java.util.stream.Collectors.joining;
import static org.tidewright.husbandry.exchange.JournalFormat.key;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;

/** The names and values of what happened, in the order of the file; the same in JSON and CSV. */
final class EventFields {
    private static final int NANOS = 9;

    private EventFields() {}

    static List<String> names(Kind kind) {
        return switch (kind) {
            case READING -> List.of("quantity", "written", "unit", "method");
            case METHOD_CHECK -> List.of("quantity", "method", "unit", "shown", "standard", "standard_error");
            case DOSE -> List.of("solution", "salt", "salt_mass_kg", "volume_m3");
            case WATER_CHANGE -> waterChange();
            case FEEDING -> List.of("food", "mass_kg");
            case ANIMAL -> List.of("animal", "count", "move", "length_m");
            case WORK -> List.of("work", "took_s");
            case OBSERVATION -> List.of("seen", "photo");
            case LEVER -> List.of("lever", "unit", "before", "after");
            case ANIMAL_CHECK -> List.of("animal", "ate", "breaths_per_minute", "signs");
            case TREATMENT -> List.of("treatment", "word", "water_m3", "said");
            case FALLOW -> List.of("parasite", "turn");
        };
    }

    private static List<String> waterChange() {
        List<String> names = new ArrayList<>(List.of("volume_m3"));
        for (WaterQuantity quantity : WaterQuantity.values()) {
            names.add(newWater(quantity));
        }
        return names;
    }

    private static String newWater(WaterQuantity quantity) {
        return "new_" + quantity.key() + "_" + JournalFormat.heldUnit(quantity);
    }

    /** A text, a number or null for each of the names. */
    static List<@Nullable Object> values(Event event) {
        return switch (Kind.of(event)) {
            case READING -> {
                var it = (Event.Reading) event;
                yield list(it.quantity().key(), it.written(), it.unit().key(), it.method());
            }
            case METHOD_CHECK -> {
                var it = (Event.MethodChecked) event;
                yield list(
                        it.quantity().key(),
                        it.method(),
                        it.unit().key(),
                        it.shown(),
                        it.standard(),
                        it.standardError());
            }
            case DOSE -> {
                var it = (Event.Dose) event;
                yield list(it.solution(), it.salt() == null ? null : key(it.salt()), it.saltMass(), it.volume());
            }
            case WATER_CHANGE -> {
                var it = (Event.WaterChanged) event;
                List<@Nullable Object> values = new ArrayList<>(List.of(it.volume()));
                for (WaterQuantity quantity : WaterQuantity.values()) {
                    values.add(it.newWater().get(quantity));
                }
                yield values;
            }
            case FEEDING -> {
                var it = (Event.Fed) event;
                yield list(it.food(), it.mass());
            }
            case ANIMAL -> {
                var it = (Event.AnimalMoved) event;
                yield list(it.animal(), it.count(), key(it.move()), it.length());
            }
            case WORK -> {
                var it = (Event.WorkDone) event;
                yield list(it.work(), it.took() == null ? null : seconds(it.took()));
            }
            case OBSERVATION -> {
                var it = (Event.Observation) event;
                yield list(it.seen().isEmpty() ? null : it.seen(), it.photo());
            }
            case LEVER -> {
                var it = (Event.LeverMoved) event;
                yield list(it.lever(), it.unit(), it.before(), it.after());
            }
            case ANIMAL_CHECK -> {
                var it = (Event.AnimalsChecked) event;
                String signs = it.signs().stream().map(Sign::key).collect(joining(" "));
                yield list(it.animal(), key(it.appetite()), it.breathsPerMinute(), signs.isEmpty() ? null : signs);
            }
            case TREATMENT -> {
                var it = (Event.Treated) event;
                yield list(it.what(), key(it.word()), it.volume(), it.said());
            }
            case FALLOW -> {
                var it = (Event.Fallow) event;
                yield list(key(it.parasite()), key(it.turn()));
            }
        };
    }

    private static List<@Nullable Object> list(@Nullable Object... values) {
        return Arrays.asList(values);
    }

    private static BigDecimal seconds(Duration took) {
        BigDecimal whole = BigDecimal.valueOf(took.getSeconds());
        return took.getNano() == 0
                ? whole
                : whole.add(BigDecimal.valueOf(took.getNano(), NANOS)).stripTrailingZeros();
    }

    /** @throws IllegalArgumentException where each value may stand but not all together */
    static Event read(Kind kind, Given given) throws BadLine {
        return switch (kind) {
            case READING -> {
                WaterQuantity quantity = quantity(given);
                yield new Event.Reading(
                        quantity, given.number("written"), unit(given, quantity), given.textOrNull("method"));
            }
            case METHOD_CHECK -> {
                WaterQuantity quantity = quantity(given);
                yield new Event.MethodChecked(
                        quantity,
                        given.text("method"),
                        unit(given, quantity),
                        given.number("shown"),
                        given.number("standard"),
                        given.number("standard_error"));
            }
            case DOSE ->
                new Event.Dose(
                        given.text("solution"),
                        given.isAbsent("salt") ? null : constant(given, "salt", Salt.values()),
                        given.numberOrNull("salt_mass_kg"),
                        given.numberOrNull("volume_m3"));
            case WATER_CHANGE -> new Event.WaterChanged(given.number("volume_m3"), newWater(given));
            case FEEDING -> new Event.Fed(given.text("food"), given.number("mass_kg"));
            case ANIMAL ->
                new Event.AnimalMoved(
                        given.text("animal"),
                        given.whole("count"),
                        constant(given, "move", Event.Move.values()),
                        given.numberOrNull("length_m"));
            case WORK -> new Event.WorkDone(given.text("work"), given.secondsOrNull("took_s"));
            case OBSERVATION -> new Event.Observation(given.textOrEmpty("seen"), given.textOrNull("photo"));
            case LEVER ->
                new Event.LeverMoved(
                        given.text("lever"), given.text("unit"), given.numberOrNull("before"), given.number("after"));
            case ANIMAL_CHECK ->
                new Event.AnimalsChecked(
                        given.textOrNull("animal"),
                        constant(given, "ate", Event.Appetite.values()),
                        given.isAbsent("breaths_per_minute")
                                ? null
                                : Integer.valueOf(given.whole("breaths_per_minute")),
                        signs(given));
            case TREATMENT ->
                new Event.Treated(
                        given.text("treatment"),
                        constant(given, "word", Event.Word.values()),
                        given.numberOrNull("water_m3"),
                        given.textOrNull("said"));
            case FALLOW ->
                new Event.Fallow(
                        constant(given, "parasite", Parasite.values()), constant(given, "turn", Event.Turn.values()));
        };
    }

    /** Their keys, with blanks between. */
    private static Set<Sign> signs(Given given) throws BadLine {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        for (String key : given.textOrEmpty("signs").strip().split("\\s+", -1)) {
            if (!key.isEmpty()) {
                List<String> keys = Arrays.stream(Sign.values()).map(Sign::key).toList();
                signs.add(Sign.ofKey(key)
                        .orElseThrow(() -> given.refusal(
                                "signs",
                                "any of these with blanks between: " + String.join(" ", keys),
                                Spelling.suggestion(key, keys))));
            }
        }
        return signs;
    }

    static WaterQuantity quantity(Given given) throws BadLine {
        return constant(given, "quantity", WaterQuantity.values());
    }

    private static QuantityUnit unit(Given given, WaterQuantity quantity) throws BadLine {
        return given.oneOf(
                "unit",
                quantity::unitOfKey,
                quantity.units().stream().map(QuantityUnit::key).toList());
    }

    private static Map<WaterQuantity, Double> newWater(Given given) throws BadLine {
        Map<WaterQuantity, Double> known = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : WaterQuantity.values()) {
            Double value = given.numberOrNull(newWater(quantity));
            if (value != null) {
                known.put(quantity, value);
            }
        }
        return known;
    }

    static <E extends Enum<E>> E constant(Given given, String name, E[] constants) throws BadLine {
        return given.oneOf(
                name,
                text -> find(constants, text),
                Arrays.stream(constants).map(JournalFormat::key).toList());
    }

    private static <E extends Enum<E>> Optional<E> find(E[] constants, String text) {
        return Arrays.stream(constants)
                .filter(constant -> key(constant).equals(text))
                .findFirst();
    }
}
