package org.tidewright.twin.law.nutrient;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;

/**
 * A tank of a cubic metre in which ammonia is oxidised, run by the classical method of Runge and Kutta. Given and told
 * in mg/L of nitrogen and days, as the worked examples are: 26 degC unless said, pH 8.1 (NBS), S 35, oxygen 6.4 mg/L,
 * room for 4 mg/(L day).
 */
final class StartUp {
    private static final double STEP = 0.01; // day
    private static final double DAY = 86_400;
    private static final double MILLIGRAM = 1e-3 / ElementMass.NITROGEN; // mol/m^3 in mg/L
    private static final double OXYGEN = 6.4e-3 / 31.9988e-3;
    private static final double MOST = 4 * MILLIGRAM / DAY;
    private static final double SALINITY = 35;
    private static final double PH = 8.1;

    private final double warmth;
    private final double freeShare;
    private final DoubleUnaryOperator load;
    private double day;
    private double[] state;

    /** Load in mg/(L day), by the day; capacities in mg/(L day). */
    StartUp(
            double temperature,
            double ammonia,
            double ammoniaOxidisers,
            double nitriteOxidisers,
            DoubleUnaryOperator load) {
        warmth = Nitrification.warmth(temperature, Nitrification.PER_KELVIN.usual());
        freeShare = freeShare(temperature);
        this.load = load;
        state = new double[] {
            ammonia * MILLIGRAM, 0, 0, ammoniaOxidisers * MILLIGRAM / DAY, nitriteOxidisers * MILLIGRAM / DAY
        };
    }

    /** Hampson 1977 as the US EPA's saltwater criteria of 1989 use it, the law of the worked examples. */
    static double freeShare(double temperature) {
        return freeShare(temperature, PH);
    }

    static double freeShare(double temperature, double ph) {
        double ionicStrength = 19.9273 * SALINITY / (1000 - 1.005109 * SALINITY);
        double pk = 9.245 + 0.116 * ionicStrength + 0.0324 * (298 - (temperature + 273.15));
        return 1 / (1 + Math.pow(10, pk - ph));
    }

    double day() {
        return day;
    }

    double ammonia() {
        return state[0] / MILLIGRAM;
    }

    double nitrite() {
        return state[1] / MILLIGRAM;
    }

    double nitrate() {
        return state[2] / MILLIGRAM;
    }

    double ammoniaCapacity() {
        return state[3] * DAY / MILLIGRAM;
    }

    double nitriteCapacity() {
        return state[4] * DAY / MILLIGRAM;
    }

    /** Day at which it first is so, at the end of a step. */
    double until(Predicate<StartUp> reached) {
        while (!reached.test(this)) {
            if (day > 400) {
                throw new AssertionError("not reached within 400 days");
            }
            step();
        }
        return day;
    }

    /** Runs a number of days on and finds the highest ammonia and nitrite, each with its day: four numbers. */
    double[] peaks(double days) {
        double[] peaks = {ammonia(), day, nitrite(), day};
        for (double end = day + days; day < end; ) {
            step();
            if (ammonia() > peaks[0]) {
                peaks[0] = ammonia();
                peaks[1] = day;
            }
            if (nitrite() > peaks[2]) {
                peaks[2] = nitrite();
                peaks[3] = day;
            }
        }
        return peaks;
    }

    private void step() {
        double h = STEP * DAY;
        double added = load.applyAsDouble(day) * MILLIGRAM / DAY;
        double[] k1 = slopes(state, added);
        double[] k2 = slopes(moved(state, k1, h / 2), added);
        double[] k3 = slopes(moved(state, k2, h / 2), added);
        double[] k4 = slopes(moved(state, k3, h), added);
        for (int i = 0; i < state.length; i++) {
            state[i] += h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        }
        day += STEP;
    }

    private static double[] moved(double[] from, double[] slopes, double h) {
        double[] to = from.clone();
        for (int i = 0; i < to.length; i++) {
            to[i] += h * slopes[i];
        }
        return to;
    }

    /** Nitrogen that goes into cells, 2 %, is left out as in the worked examples. */
    private double[] slopes(double[] y, double added) {
        Nitrifiers first = Nitrifiers.AMMONIA_OXIDISERS;
        Nitrifiers second = Nitrifiers.NITRITE_OXIDISERS;
        double free = freeShare * y[0];
        double firstActivity = first.activity(y[0], OXYGEN, free);
        double secondActivity = second.activity(y[1], OXYGEN, free);
        double ammoniaOxidised = first.oxidised(y[3], warmth, firstActivity);
        double nitriteOxidised = second.oxidised(y[4], warmth, secondActivity);
        return new double[] {
            added - ammoniaOxidised,
            ammoniaOxidised - nitriteOxidised,
            nitriteOxidised,
            first.capacityChange(y[3], MOST, warmth, firstActivity),
            second.capacityChange(y[4], MOST, warmth, secondActivity)
        };
    }
}
