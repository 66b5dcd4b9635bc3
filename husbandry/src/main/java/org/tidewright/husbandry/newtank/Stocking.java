package org.tidewright.husbandry.newtank;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.NewTank;
import org.tidewright.twin.forecast.Quantity;

/**
 * What comes of a way to bring the fish in.
 *
 * @param words what is done, at the start of a sentence
 * @param atOnce whether all come on one day
 * @param ripe whether they wait for the ready test
 * @param clear first day from which ammonia and nitrite stay clear; infinite for not yet
 */
public record Stocking(
        String words,
        boolean atOnce,
        boolean ripe,
        Course course,
        Peak ammonia,
        Peak freeAmmonia,
        Peak nitrite,
        @Unit("d") double clear) {
    /** Free ammonia to watch from, as nitrogen. */
    @Unit("mg/L")
    public static final double WATCH = 0.02;

    /** Free ammonia that harms, as nitrogen. */
    @Unit("mg/L")
    public static final double HARM = 0.03;

    /** Nitrite to watch from, as nitrogen: the sea's chloride shields fish from it, and not every animal is a fish. */
    @Unit("mg/L")
    public static final double NITRITE_WATCH = 0.5;

    /** How it ends for the animals. */
    public enum Verdict {
        CALM("calm"),
        WATCH("watch closely"),
        HARM("harm");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static Stocking of(String words, boolean atOnce, boolean ripe, Course course) {
        return new Stocking(
                words,
                atOnce,
                ripe,
                course,
                Peak.of(course, Quantity.AMMONIA),
                Peak.of(course, Quantity.FREE_AMMONIA),
                Peak.of(course, Quantity.NITRITE),
                NewTank.clearFrom(course, 0));
    }

    public Verdict verdict() {
        return verdict(freeAmmonia.value(), nitrite.value());
    }

    static Verdict verdict(@Unit("mg/L") double freeAmmonia, @Unit("mg/L") double nitrite) {
        if (freeAmmonia >= HARM) {
            return Verdict.HARM;
        }
        return freeAmmonia >= WATCH || nitrite >= NITRITE_WATCH ? Verdict.WATCH : Verdict.CALM;
    }
}
