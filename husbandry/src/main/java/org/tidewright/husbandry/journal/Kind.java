package org.tidewright.husbandry.journal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of lines a journal holds, one for each record of {@link Event}. */
public enum Kind {
    READING(Event.Reading.class),
    METHOD_CHECK(Event.MethodChecked.class),
    DOSE(Event.Dose.class),
    WATER_CHANGE(Event.WaterChanged.class),
    FEEDING(Event.Fed.class),
    ANIMAL(Event.AnimalMoved.class),
    WORK(Event.WorkDone.class),
    OBSERVATION(Event.Observation.class),
    LEVER(Event.LeverMoved.class),
    ANIMAL_CHECK(Event.AnimalsChecked.class),
    TREATMENT(Event.Treated.class),
    FALLOW(Event.Fallow.class);

    private final Class<? extends Event> record;

    Kind(Class<? extends Event> record) {
        this.record = record;
    }

    /** Name in files and addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Kind of(Event event) {
        return Arrays.stream(values())
                .filter(kind -> kind.record.isInstance(event))
                .findFirst()
                .orElseThrow();
    }

    public static Optional<Kind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }
}
