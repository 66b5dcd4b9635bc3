package org.tidewright.twin;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The system the worked examples are computed for. */
public final class WorkedExample {
    private WorkedExample() {}

    public static Plan plan() {
        return read(text());
    }

    public static String text() {
        try (InputStream in = WorkedExample.class.getResourceAsStream("worked-example.yaml")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public static Plan read(String text) {
        PlanReading reading = PlanText.read(text);
        if (reading instanceof PlanReading.Sound sound) {
            return sound.plan();
        }
        throw new AssertionError(reading);
    }
}
