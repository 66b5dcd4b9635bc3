package org.tidewright.husbandry.mixing;

import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How cold and how warm new water may be.
 *
 * @param change whose system's temperature is known
 * @param limit by which the system may move at once
 */
public record TemperatureMatch(
        WaterChange change, @Unit("K") double limit) {
    private static final double FREEZES = 0;
    private static final double HOTTEST = Bounds.HOTTEST_WATER;
    private static final int HALVINGS = 50;

    /** Refuses what cannot be meant. */
    public TemperatureMatch {
        Bounds.positive(limit, "K", "limit of the change of temperature");
        if (change.system().water().value(WaterQuantity.TEMPERATURE).isEmpty()) {
            throw new IllegalArgumentException("the temperature of the system is not known; measure it first");
        }
    }

    private double now() {
        return change.system().water().value(WaterQuantity.TEMPERATURE).orElseThrow();
    }

    /** What the system comes to with new water of a temperature. */
    public @Unit("degC") double after(@Unit("degC") double newTemperature) {
        KnownWater water = change.newWater().with(WaterQuantity.TEMPERATURE, newTemperature);
        return new WaterChange(change.system(), change.volume(), water)
                .after()
                .water()
                .value(WaterQuantity.TEMPERATURE)
                .orElseThrow();
    }

    /** The coldest that moves the system no more than the limit, not below 0 °C. */
    public @Unit("degC") double coldest() {
        return newWater(now() - limit);
    }

    /** The warmest that moves the system no more than the limit, not above 60 °C. */
    public @Unit("degC") double warmest() {
        return newWater(now() + limit);
    }

    /** By halving: what the system comes to rises with the new water's temperature. */
    private double newWater(double wanted) {
        double low = FREEZES;
        double high = HOTTEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (after(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Between which temperatures to bring it. */
    public Advice advice() {
        Sources sources = new Sources();
        String mixing = Telling.mixing(sources);
        Figure coldest = Figure.exact(Measure.TEMPERATURE, coldest());
        Figure warmest = Figure.exact(Measure.TEMPERATURE, warmest());
        Sentence lead = Sentence.of(
                "Bring the new water to between ",
                Sentence.figure(coldest, mixing),
                " and ",
                Sentence.figure(warmest, mixing),
                ": ",
                Telling.volume(change.volume()),
                " of it then move the system by no more than ",
                Figure.exact(Measure.TEMPERATURE_DIFFERENCE, limit),
                ".");
        Sentence rock = Sentence.of(
                "Reckoned with the water alone: rock and glass hold heat too and soften it within the hour,"
                        + " so the animals feel the most of it where the new water falls in. Pour slowly, into strong flow.");
        return new Advice(
                lead,
                List.of(rock),
                List.of(
                        new Advice.Told("coldest new water", coldest, mixing),
                        new Advice.Told("warmest new water", warmest, mixing)),
                List.of(),
                List.of(Telling.ELECTRICITY),
                sources.all());
    }
}
