package org.tidewright.husbandry.mixing;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
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

    /** What the keeper told. */
    static String log(Sources sources, String what) {
        return sources.key(what, Basis.YOUR_LOG, "as you gave it");
    }
}
