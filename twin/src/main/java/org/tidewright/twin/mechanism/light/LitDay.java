package org.tidewright.twin.mechanism.light;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.Limitation;

/**
 * How far the plan's lamps let production go in the mean of a whole day, 0 to 1, as a function of the light at which it
 * bends over: worked out once over a range of that light, because it is asked for at every moment.
 */
public final class LitDay {
    /** Values in the table lie 2 % apart; a parabola through three of them tells the mean to a millionth. */
    private static final double STEP = 0.02;

    private static final int PARTS_OF_DAY = 288;
    private static final double DAY = 86_400;

    private final double least;
    private final double[] shares;

    /**
     * A day of some lamps by the clocks they begin with.
     *
     * @param least lowest saturation that may be asked for
     * @param most highest
     */
    public LitDay(Lamps lamps, @Unit("mol/(m^2*s)") double least, @Unit("mol/(m^2*s)") double most) {
        double[] light = new double[PARTS_OF_DAY];
        for (int i = 0; i < PARTS_OF_DAY; i++) {
            light[i] = lamps.fullLightAt(DAY * (i + 0.5) / PARTS_OF_DAY);
        }
        this.least = least;
        shares = new double[(int) Math.ceil(Math.log(most / least) / STEP) + 2];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = mean(light, least * Math.exp(STEP * i));
        }
    }

    private static double mean(double[] lights, double saturation) {
        double sum = 0;
        for (double light : lights) {
            sum += Limitation.light(light, saturation);
        }
        return sum / lights.length;
    }

    /** The mean at a saturation; that of the nearest end beyond the range. */
    public @Unit("1") double share(@Unit("mol/(m^2*s)") double saturation) {
        double at = Math.max(0, Math.min(shares.length - 1, Math.log(saturation / least) / STEP));
        int nearest = (int) Math.max(1, Math.min(shares.length - 2, Math.rint(at)));
        double off = at - nearest;
        double before = shares[nearest - 1];
        double here = shares[nearest];
        double after = shares[nearest + 1];
        return here + off * ((after - before) / 2 + off * ((after + before) / 2 - here));
    }
}
