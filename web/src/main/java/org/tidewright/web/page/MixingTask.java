package org.tidewright.web.page;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.mixing.KnownSystem;

/** A question of the mixing desk. */
public enum MixingTask {
    CHANGE("change", "Water change", "What one change does, and how fast it may be", MixingChanges::change),
    SERIES("series", "Series", "How many changes a target takes", MixingChanges::series),
    SALT("salt", "Salt", "Salt for a batch of new water", MixingSalt::batch),
    SALINITY("salinity", "Salinity", "Salinity brought where it belongs", MixingSalinity::salinity),
    TEMPERATURE("temperature", "Temperature", "How warm new water has to be", MixingWarmth::match),
    HEATING("heating", "Heating", "How long a heater takes for a batch", MixingWarmth::heating),
    RESERVE("reserve", "Reserve", "Water and salt to keep in hand", MixingSalinity::reserve);

    private final String key;
    private final String words;
    private final String about;
    private final Question question;

    MixingTask(String key, String words, String about, Question question) {
        this.key = key;
        this.words = words;
        this.about = about;
        this.question = question;
    }

    /** Reads its fields and answers; null where not all of them can be read. */
    @FunctionalInterface
    interface Question {
        @Nullable
        Advice ask(MixingFields fields, KnownSystem known);
    }

    /** In addresses. */
    public String key() {
        return key;
    }

    /** In the row of links. */
    public String words() {
        return words;
    }

    /** As a heading. */
    public String about() {
        return about;
    }

    @Nullable
    Advice ask(MixingFields fields, KnownSystem known) {
        return question.ask(fields, known);
    }

    /** The one with this key. */
    public static Optional<MixingTask> ofKey(String key) {
        return Arrays.stream(values()).filter(task -> task.key.equals(key)).findFirst();
    }
}
