package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Exchange;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Water that a running return pump carries up and that falls back over a crest. Seen over hours the crest holds the upper
 * level: what falls follows the weir's law near the running head, Q + dQ/dV (V - V0), and the lower vessel takes every
 * loss and gain.
 *
 * @param flow of the pump
 * @param held V0, water in the upper vessel while it runs
 * @param slope dQ/dV of the crest at that flow; 0 where levels are not followed
 */
public record Circulation(
        Body upper,
        Body lower,
        @Unit("m^3/s") double flow,
        @Unit("m^3") double held,
        @Unit("1/s") double slope,
        Supply supply)
        implements Exchange {
    /** Of a weir, Q ~ h^1.5, so that dQ/dh = 1.5 Q / h. */
    private static final double WEIR_EXPONENT = 1.5;

    /** As much up as down: levels stay as they are. */
    public static Circulation level(Body upper, Body lower, @Unit("m^3/s") double flow, Supply supply) {
        return new Circulation(upper, lower, flow, 0, 0, supply);
    }

    /**
     * Over a crest.
     *
     * @param head of the water over it
     * @param surface of the upper vessel
     */
    public static Circulation overCrest(
            Body upper,
            Body lower,
            @Unit("m^3/s") double flow,
            @Unit("m^3") double held,
            @Unit("m") double head,
            @Unit("m^2") double surface,
            Supply supply) {
        return new Circulation(upper, lower, flow, held, WEIR_EXPONENT * flow / (head * surface), supply);
    }

    @Override
    public String name() {
        return "circulation";
    }

    @Override
    public void act(View now, Transfers out) {
        if (supply.isOn(now)) {
            double falling = flow + slope * (now.volume(upper) - held);
            out.water(lower, upper, flow);
            out.water(upper, lower, Math.max(0, falling));
        }
    }

    @Override
    public double flow(View now) {
        return supply.isOn(now) ? flow : 0;
    }

    @Override
    public double relaxation(View now) {
        return supply.isOn(now) ? slope : 0;
    }
}
