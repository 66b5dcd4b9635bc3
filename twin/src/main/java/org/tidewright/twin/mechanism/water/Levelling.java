package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.hydraulic.DrownedWeir;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Flow over a crest between two bodies, free or drowned, in either direction.
 *
 * <p>Near equal levels the drowned weir's law would level two bodies out in milliseconds. They do so no faster than a
 * wave crosses them, so the flow is bounded by the water that would level them over {@link #LEVELLING_TIME}.
 */
final class Levelling {
    /** About the time a long wave takes over 0.5 m of water 0.2 m deep, L/sqrt(g D). */
    private static final double LEVELLING_TIME = 0.4;

    private Levelling() {}

    static @Unit("m^3/s") double over(@Unit("m") double crestHeight, Weir law, Body from, Body to, View now) {
        double levelFrom = now.height(from);
        double levelTo = now.height(to);
        double upper = levelFrom - crestHeight;
        double lower = levelTo - crestHeight;
        if (upper <= 0 && lower <= 0) {
            return 0;
        } else if (upper <= 0 || lower <= 0) {
            return DrownedWeir.flow(law, upper, lower);
        }
        double passed = DrownedWeir.flow(law, upper, lower);
        double areaFrom = from.shape().surface(now.level(from));
        double areaTo = to.shape().surface(now.level(to));
        double levelling = Math.abs(levelFrom - levelTo) * areaFrom * areaTo / (areaFrom + areaTo) / LEVELLING_TIME;
        return Math.copySign(Math.min(Math.abs(passed), levelling), passed);
    }
}
