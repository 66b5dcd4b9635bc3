package org.tidewright.husbandry.mixing;

import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;

/** How the desk tells its quantities, and the sources that more than one answer rests on. */
final class Telling {
    /** Where mains stand beside water. */
    static final String ELECTRICITY =
            "Switch heaters and pumps off at the wall before the level falls and before hands go"
                    + " in: a heater run dry cracks, and then the water carries its current. Keep plugs above a drip loop and behind"
                    + " a residual-current device.";

    /** Where water is lifted out. */
    static final String SIPHON = "Start a siphon with a pump or a bulb, never by mouth; keep cuts out of the water.";

    /** Where dry mix is handled. */
    static final String DRY_MIX =
            "Stir the salt into moving water, never water onto salt, and never in the system itself:"
                    + " let it run warm and in motion until it is clear, a day where the label says nothing else. Keep the dust"
                    + " from eyes and lungs; the label comes before this page.";

    private Telling() {}

    private static Measure measure(WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> Measure.TEMPERATURE;
            case SALINITY -> Measure.SALINITY;
            case ALKALINITY -> Measure.ALKALINITY;
            case CALCIUM, MAGNESIUM, NITRATE, PHOSPHATE -> Measure.TRACE;
            default -> throw new IllegalArgumentException("no measure tells " + quantity.words());
        };
    }

    /** A value. */
    static Figure value(WaterQuantity quantity, double value) {
        return Figure.exact(measure(quantity), value);
    }

    /** A value with one standard error; 0 for none stated. */
    static Figure value(WaterQuantity quantity, double value, double standardError) {
        return standardError > 0 ? Figure.about(measure(quantity), value, standardError) : value(quantity, value);
    }

    /** A difference, told without its sign. */
    static Figure step(WaterQuantity quantity, double step) {
        Measure measure = quantity == WaterQuantity.TEMPERATURE ? Measure.TEMPERATURE_DIFFERENCE : measure(quantity);
        return Figure.exact(measure, Math.abs(step));
    }

    static Figure volume(double cubicMetres) {
        return Figure.exact(Measure.VOLUME, cubicMetres);
    }

    static Figure salinity(double practical) {
        return Figure.exact(Measure.SALINITY, practical);
    }

    static Figure time(double seconds) {
        return Figure.exact(Measure.DURATION, seconds);
    }

    /** “a day”, “an hour”. */
    static String per(double span) {
        return span == SafeRate.DAY ? "a day" : "an hour";
    }

    /** What water weighs and how much heat it holds. */
    static String mixing(Sources sources) {
        return sources.key(
                "Mass, salt and heat of waters that are poured together",
                Basis.PUBLISHED,
                "density: Millero and Poisson 1981; specific heat: Millero, Perron and Desnoyers 1973");
    }

    /** How fast a quantity may be moved. */
    static String rates(Sources sources) {
        return sources.key(
                "How fast water may be changed on purpose, comfortably and at most",
                Basis.COMMON_PRACTICE,
                "careful figures among keepers; no trial stands behind them");
    }

    /** What the answer began with. */
    static String given(Sources sources, String what, Origin origin) {
        return sources.key(what, origin.basis(), origin.detail());
    }

    /** What was supposed of waters whose salinity or temperature is not known; empty where both are. */
    static Optional<Sentence> assumed(WaterChange change) {
        boolean known = List.of(change.system().water(), change.newWater()).stream()
                .allMatch(water -> water.value(WaterQuantity.SALINITY).isPresent()
                        && water.value(WaterQuantity.TEMPERATURE).isPresent());
        return known
                ? Optional.empty()
                : Optional.of(Sentence.of(
                        "Weighed as if of salinity ",
                        salinity(KnownWater.ASSUMED_SALINITY),
                        " and ",
                        Figure.exact(Measure.TEMPERATURE, KnownWater.ASSUMED_TEMPERATURE),
                        " where these are not known: the share that is changed may be off by 3 % of itself."));
    }
}
