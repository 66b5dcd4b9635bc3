package org.tidewright.husbandry.ph;

import org.tidewright.seawater.unit.Unit;

/**
 * Carbon dioxide in a water, found from its pH and alkalinity, and how sure it is. The errors of what was measured are
 * propagated to first order, through the logarithm, since they move it by shares and not by amounts:
 *
 * <pre>s^2(ln p) = sum over the readings x of (d ln p / d x s_x)^2, and the constants' 2 %</pre>
 *
 * @param pressure partial pressure
 * @param ofPh what the electrode alone leaves of doubt in its logarithm, one standard error
 * @param logError all doubt in its logarithm, one standard error
 */
public record WaterCarbonDioxide(
        @Unit("atm") double pressure,
        @Unit("1") double ofPh,
        @Unit("1") double logError) {
    /** 90 of 100 draws lie within so many standard errors. */
    static final double NINETY_PER_CENT = 1.645;

    /**
     * Constants of the carbon dioxide system. 0.0075 in pK1, 0.015 in pK2, 0.002 in pK0, 0.01 in pKB: Orr et al. 2018, Mar.
     * Chem. 207, 84-107; at pH 8 on the total scale they move the pressure by 1.7, 0.6, 0.5 and under 0.1 %.
     */
    private static final double CONSTANTS = 0.02;

    private interface LogPressure {
        double at(double alkalinity, double salinity, double temperature, double ph);
    }

    static WaterCarbonDioxide of(PhReading r) {
        LogPressure log = (alkalinity, salinity, temperature, ph) -> Math.log(
                AiredWater.of(temperature, salinity).reading(alkalinity, ph).partialPressure());
        double a = r.alkalinity();
        double s = r.salinity();
        double t = r.temperature();
        double ph = r.ph();
        double step = 1e-4;
        double ofAlkalinity = slope(log.at(a * (1 + step), s, t, ph), log.at(a * (1 - step), s, t, ph), a * step);
        double ofSalinity = slope(log.at(a, s + step, t, ph), log.at(a, s - step, t, ph), step);
        double ofTemperature = slope(log.at(a, s, t + step, ph), log.at(a, s, t - step, ph), step);
        double ofPh = slope(log.at(a, s, t, ph + step), log.at(a, s, t, ph - step), step) * r.phError();
        double variance = square(ofAlkalinity * r.alkalinityError())
                + square(ofSalinity * r.salinityError())
                + square(ofTemperature * r.temperatureError())
                + square(ofPh)
                + square(CONSTANTS);
        return new WaterCarbonDioxide(Math.exp(log.at(a, s, t, ph)), Math.abs(ofPh), Math.sqrt(variance));
    }

    private static double slope(double above, double below, double step) {
        return (above - below) / (2 * step);
    }

    private static double square(double x) {
        return x * x;
    }

    /** 5th of 100 draws. */
    public @Unit("atm") double low() {
        return pressure * Math.exp(-NINETY_PER_CENT * logError);
    }

    /** 95th of 100 draws. */
    public @Unit("atm") double high() {
        return pressure * Math.exp(NINETY_PER_CENT * logError);
    }

    /**
     * Whether it is more or less than an air's.
     *
     * @param air partial pressure in it
     * @param airLogError one standard error of its logarithm
     */
    public Side against(@Unit("atm") double air, @Unit("1") double airLogError) {
        return Side.of(Math.log(pressure / air), NINETY_PER_CENT * Math.hypot(logError, airLogError));
    }
}
