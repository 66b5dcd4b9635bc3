package org.tidewright.store.journal;

import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.store.database.Row;

/** The table of each kind of event: its columns, how a record fills them, and how it is made of them again. */
final class EventTables {
    private static final EventTable<Event.Reading> READINGS = new EventTable<>(
            Kind.READING,
            Event.Reading.class,
            List.of("quantity", "value", "unit", "method"),
            reading -> EventTable.row(
                    reading.quantity().key(), reading.written(), reading.unit().key(), reading.method()),
            row -> new Event.Reading(quantity(row), row.number("value"), unit(row), row.textOrNone("method")));

    private static final EventTable<Event.MethodChecked> METHOD_CHECKS = new EventTable<>(
            Kind.METHOD_CHECK,
            Event.MethodChecked.class,
            List.of("quantity", "method", "unit", "shown", "standard", "standard_error"),
            check -> EventTable.row(
                    check.quantity().key(),
                    check.method(),
                    check.unit().key(),
                    check.shown(),
                    check.standard(),
                    check.standardError()),
            row -> new Event.MethodChecked(
                    quantity(row),
                    row.text("method"),
                    unit(row),
                    row.number("shown"),
                    row.number("standard"),
                    row.number("standard_error")));

    private static final EventTable<Event.Dose> DOSES = new EventTable<>(
            Kind.DOSE,
            Event.Dose.class,
            List.of("solution", "salt", "salt_mass_kg", "volume_m3"),
            dose -> EventTable.row(dose.solution(), key(dose.salt()), dose.saltMass(), dose.volume()),
            row -> new Event.Dose(
                    row.text("solution"),
                    constant(Salt.class, row.textOrNone("salt")),
                    row.numberOrNone("salt_mass_kg"),
                    row.numberOrNone("volume_m3")));

    private static final EventTable<Event.WaterChanged> WATER_CHANGES = new WaterChangeTable();

    private static final EventTable<Event.Fed> FEEDINGS = new EventTable<>(
            Kind.FEEDING,
            Event.Fed.class,
            List.of("food", "mass_kg"),
            fed -> EventTable.row(fed.food(), fed.mass()),
            row -> new Event.Fed(row.text("food"), row.number("mass_kg")));

    private static final EventTable<Event.AnimalMoved> ANIMALS = new EventTable<>(
            Kind.ANIMAL,
            Event.AnimalMoved.class,
            List.of("animal", "head_count", "move", "length_m"),
            moved -> EventTable.row(moved.animal(), moved.count(), key(moved.move()), moved.length()),
            row -> new Event.AnimalMoved(
                    row.text("animal"),
                    (int) row.whole("head_count"),
                    Enum.valueOf(Event.Move.class, row.text("move").toUpperCase(Locale.ROOT)),
                    row.numberOrNone("length_m")));

    private static final EventTable<Event.WorkDone> WORK = new EventTable<>(
            Kind.WORK,
            Event.WorkDone.class,
            List.of("work", "took_s", "took_ns"),
            done -> EventTable.row(done.work(), seconds(done.took()), nanoseconds(done.took())),
            row -> new Event.WorkDone(row.text("work"), duration(row)));

    private static final EventTable<Event.Observation> OBSERVATIONS = new EventTable<>(
            Kind.OBSERVATION,
            Event.Observation.class,
            List.of("seen", "photo"),
            observation -> EventTable.row(observation.seen(), observation.photo()),
            row -> new Event.Observation(row.text("seen"), row.textOrNone("photo")));

    private static final EventTable<Event.LeverMoved> LEVERS = new EventTable<>(
            Kind.LEVER,
            Event.LeverMoved.class,
            List.of("lever", "unit", "before_value", "after_value"),
            moved -> EventTable.row(moved.lever(), moved.unit(), moved.before(), moved.after()),
            row -> new Event.LeverMoved(
                    row.text("lever"), row.text("unit"), row.numberOrNone("before_value"), row.number("after_value")));

    private static final EventTable<Event.AnimalsChecked> ANIMAL_CHECKS = new AnimalCheckTable();

    private static final EventTable<Event.Treated> TREATMENTS = new EventTable<>(
            Kind.TREATMENT,
            Event.Treated.class,
            List.of("treatment", "word", "water_m3", "said"),
            treated -> EventTable.row(treated.what(), key(treated.word()), treated.volume(), treated.said()),
            row -> new Event.Treated(
                    row.text("treatment"),
                    Enum.valueOf(Event.Word.class, row.text("word").toUpperCase(Locale.ROOT)),
                    row.numberOrNone("water_m3"),
                    row.textOrNone("said")));

    private static final EventTable<Event.Fallow> FALLOWS = new EventTable<>(
            Kind.FALLOW,
            Event.Fallow.class,
            List.of("parasite", "turn"),
            fallow -> EventTable.row(key(fallow.parasite()), key(fallow.turn())),
            row -> new Event.Fallow(
                    Enum.valueOf(Parasite.class, row.text("parasite").toUpperCase(Locale.ROOT)),
                    Enum.valueOf(Event.Turn.class, row.text("turn").toUpperCase(Locale.ROOT))));

    private EventTables() {}

    static EventTable<?> of(Kind kind) {
        return switch (kind) {
            case READING -> READINGS;
            case METHOD_CHECK -> METHOD_CHECKS;
            case DOSE -> DOSES;
            case WATER_CHANGE -> WATER_CHANGES;
            case FEEDING -> FEEDINGS;
            case ANIMAL -> ANIMALS;
            case WORK -> WORK;
            case OBSERVATION -> OBSERVATIONS;
            case LEVER -> LEVERS;
            case ANIMAL_CHECK -> ANIMAL_CHECKS;
            case TREATMENT -> TREATMENTS;
            case FALLOW -> FALLOWS;
        };
    }

    static WaterQuantity quantity(Row row) throws SQLException {
        String key = row.text("quantity");
        return WaterQuantity.ofKey(key)
                .orElseThrow(() -> new IllegalArgumentException("no quantity is called “" + key + "”"));
    }

    private static QuantityUnit unit(Row row) throws SQLException {
        WaterQuantity quantity = quantity(row);
        String key = row.text("unit");
        return quantity.unitOfKey(key)
                .orElseThrow(() ->
                        new IllegalArgumentException("no unit of " + quantity.words() + " is called “" + key + "”"));
    }

    private static @Nullable String key(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name().toLowerCase(Locale.ROOT);
    }

    private static <C extends Enum<C>> @Nullable C constant(Class<C> type, @Nullable String key) {
        return key == null ? null : Enum.valueOf(type, key.toUpperCase(Locale.ROOT));
    }

    private static @Nullable Long seconds(@Nullable Duration took) {
        return took == null ? null : took.toSeconds();
    }

    private static @Nullable Integer nanoseconds(@Nullable Duration took) {
        return took == null ? null : took.toNanosPart();
    }

    private static @Nullable Duration duration(Row row) throws SQLException {
        Long seconds = row.wholeOrNone("took_s");
        return seconds == null ? null : Duration.ofSeconds(seconds, row.whole("took_ns"));
    }
}
