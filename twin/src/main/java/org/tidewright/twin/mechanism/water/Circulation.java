package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Exchange;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Water that a running return pump carries up and that falls back over a crest. Seen over hours the crest holds the upper
 * level and the lower vessel takes every loss and gain: what falls is Q + r (V - V0). A crest answers within seconds, with
 * r = 1.5 Q / (h A); seen from afar it need not be followed so closely, and r is held to {@link #SEEN_FROM_AFAR}, which
 * leaves the level right to a tenth of a millimetre.
 *
 * @param flow of the pump
 * @param held V0, water in the upper vessel while it runs
 * @param slope r; 0 where levels are not followed
 * @param least water in the lower vessel at which the pump draws air; 0 where levels are not followed
 */
public record Circulation(
        Body upper,
        Body lower,
        @Unit("m^3/s") double flow,
        @Unit("m^3") double held,
        @Unit("1/s") double slope,
        @Unit("m^3") double least,
        Supply supply)
        implements Exchange {
    /** Half an hour. */
    private static final double SEEN_FROM_AFAR = 1.0 / 1800;

    private static final double LAST_LITRE = 1e-3;

    /** Of a weir, Q ~ h^1.5, so that dQ/dh = 1.5 Q / h. */
    private static final double WEIR_EXPONENT = 1.5;

    /**
     * Over a crest.
     *
     * @param head of the water over it
     * @param surface of the upper vessel
     * @param least water in the lower vessel at which the pump draws air
     */
    public static Circulation overCrest(
            Body upper,
            Body lower,
            @Unit("m^3/s") double flow,
            @Unit("m^3") double held,
            @Unit("m") double head,
            @Unit("m^2") double surface,
            @Unit("m^3") double least,
            Supply supply) {
        double crest = WEIR_EXPONENT * flow / (head * surface);
        return new Circulation(upper, lower, flow, held, Math.min(SEEN_FROM_AFAR, crest), least, supply);
    }

    @Override
    public String name() {
        return "circulation";
    }

    @Override
    public void act(View now, Transfers out) {
        if (supply.isOn(now)) {
            double lifted = flow(now);
            double falling = lifted + slope * (now.volume(upper) - held);
            out.water(lower, upper, lifted);
            out.water(upper, lower, Math.max(0, falling));
        }
    }

    @Override
    public double flow(View now) {
        return supply.isOn(now) ? flow * drawn(now) : 0;
    }

    /** Share of its flow that a pump lifts while it draws air, as the level falls by the last litre. */
    private double drawn(View now) {
        return least > 0 ? Math.max(0, Math.min(1, (now.volume(lower) - least) / LAST_LITRE)) : 1;
    }

    @Override
    public double relaxation(View now) {
        return supply.isOn(now) ? slope : 0;
    }
}
