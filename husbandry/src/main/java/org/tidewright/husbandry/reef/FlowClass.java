package org.tidewright.husbandry.reef;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.tidewright.seawater.unit.Unit;

/**
 * Flow a coral does well in, as keepers and sellers name it. The speeds are common practice, wide and overlapping: nobody
 * has agreed on them.
 */
public enum FlowClass {
    LOW("low flow", 0.01, 0.06),
    LOW_MEDIUM("low to medium flow", 0.03, 0.10),
    MEDIUM("medium flow", 0.05, 0.18),
    MEDIUM_HIGH("medium to high flow", 0.08, 0.30),
    HIGH("high flow", 0.12, 0.50),
    ANY("any flow", 0, Double.POSITIVE_INFINITY);

    private final String words;
    private final double least;
    private final double most;

    FlowClass(String words, double least, double most) {
        this.words = words;
        this.least = least;
        this.most = most;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }

    public @Unit("m/s") double least() {
        return least;
    }

    public @Unit("m/s") double most() {
        return most;
    }

    /** The class a catalogue calls {@code low_medium}. */
    public static Optional<FlowClass> ofKey(String key) {
        return Arrays.stream(values())
                .filter(flow -> flow.name().toLowerCase(Locale.ROOT).equals(key))
                .findFirst();
    }
}
