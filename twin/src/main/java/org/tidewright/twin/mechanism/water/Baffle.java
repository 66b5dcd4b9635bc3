package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.hydraulic.DrownedWeir;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Water over a baffle between two sections of a sump, drowned or free, in either direction.
 *
 * <p>Near equal levels the drowned weir's law would level two sections out in milliseconds. No faster than a wave crosses
 * them, so the flow is bounded by their difference over {@link #LEVELLING_TIME}.
 *
 * @param crestHeight above the finished floor
 */
public record Baffle(Body from, Body to, @Unit("m") double crestHeight, Weir law) implements WaterWay {
    /** About the time a long wave takes over 0.5 m of water 0.2 m deep, L/sqrt(g D). */
    private static final double LEVELLING_TIME = 0.4;

    @Override
    public Kind kind() {
        return Kind.BAFFLE;
    }

    @Override
    public double flow(View now) {
        double levelFrom = now.height(from);
        double levelTo = now.height(to);
        double upper = levelFrom - crestHeight;
        double lower = levelTo - crestHeight;
        if (upper <= 0 && lower <= 0) {
            return 0;
        }
        double free = DrownedWeir.flow(law, upper, lower);
        double areaFrom = from.shape().surface(now.level(from));
        double areaTo = to.shape().surface(now.level(to));
        double levelling = Math.abs(levelFrom - levelTo) * areaFrom * areaTo / (areaFrom + areaTo) / LEVELLING_TIME;
        return Math.copySign(Math.min(Math.abs(free), levelling), free);
    }
}
