package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Particles held back by a sock, a fleece, floss or a cartridge. */
public final class Straining {
    /**
     * Share of the particles in the water that one pass leaves behind: microscreens of 60 to 200 um hold 30 to 80 % of the
     * suspended solids of fish farms (Timmons and Ebeling, Recirculating Aquaculture; from memory).
     */
    @Unit("1")
    public static final Spread HELD_BACK = new Spread(0.3, 0.6, 0.85);

    /**
     * Share of the day's organic waste that a filter with plenty of flow catches before it rots. The rest is dissolved or
     * finer than its mesh: most particles of recirculated water are under 30 um, half of their mass (after Chen, Timmons,
     * Aneshansley and Bisogni 1993, Aquaculture 112, 143; from memory). An estimate.
     */
    @Unit("1")
    public static final Spread WASTE_CAUGHT = new Spread(0.15, 0.35, 0.6);

    private Straining() {}

    /**
     * Specific rate at which matter is caught once the water passes often: what competes with rot for a share of it.
     *
     * <pre>k w / (1 - w)</pre>
     *
     * @param rots k, {@link Remineralisation#LABILE}
     * @param caught w, {@link #WASTE_CAUGHT}
     * @return share of the matter per time
     * @source two losses of first order share what is wasted in proportion to their rates
     * @validity everywhere
     */
    @Unit("1/s")
    public static double most(@Unit("1/s") double rots, @Unit("1") double caught) {
        Bounds.notNegative(rots, "1/s", "rate of breakdown");
        return rots * caught / (1 - Bounds.within(caught, "1", 0, 0.99, "share caught"));
    }

    /**
     * Specific rate of catching: how often the water passes and how fast matter becomes what the mesh holds stand in its
     * way one after the other.
     *
     * <pre>1 / (V/(F e w) + 1/k_most) = b k w / (b (1 - w) + k w), b = F e w/V</pre>
     *
     * <p>What can be caught whole, w = 1, is caught as often as the water passes.
     *
     * @param flow F through the filter
     * @param heldBack e, {@link #HELD_BACK}
     * @param caught w, {@link #WASTE_CAUGHT}: that share of the matter is particles it could hold
     * @param rots k, {@link Remineralisation#LABILE}; k_most is {@link #most}
     * @param volume V of the system
     * @return share of the matter per time
     * @source two resistances in a row; first order in the flow where the water seldom passes
     * @validity a clean mesh
     */
    @Unit("1/s")
    public static double rate(
            @Unit("m^3/s") double flow,
            @Unit("1") double heldBack,
            @Unit("1") double caught,
            @Unit("1/s") double rots,
            @Unit("m^3") double volume) {
        Bounds.within(flow, "m^3/s", 0, 10, "flow");
        Bounds.within(heldBack, "1", 0, 1, "share held back");
        Bounds.within(caught, "1", 0, 1, "share caught");
        Bounds.notNegative(rots, "1/s", "rate of breakdown");
        Bounds.within(volume, "m^3", 1e-6, 1e6, "volume");
        double byFlow = flow * heldBack * caught / volume;
        double rest = byFlow * (1 - caught) + rots * caught;
        return rest > 0 ? byFlow * (rots * caught / rest) : 0;
    }
}
