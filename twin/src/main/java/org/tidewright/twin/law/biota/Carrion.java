package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.Spread;

/** A dead animal that nobody takes out; what it held is in {@link BodyComposition}. */
public final class Carrion {
    /**
     * Time after which half is gone, at 25 degC with scavengers. Carcasses in the shallows of cool lakes took 40 to 230
     * h (Chidami and Amyot 2008, Limnol. Oceanogr. 53, 1988); a small fish in a warm tank from memory.
     */
    @Unit("s")
    public static final Spread HALF_TIME = Spread.of(0.8, 1.7, 5, 86_400);

    /** Factor for ten kelvin; the usual meets the trout of Minshall, Hitchcock and Barnes 1991 at 8.6 degC. */
    @Unit("1")
    public static final Spread WARMTH = new Spread(2, 3, 4);

    private static final double REFERENCE = 25; // degC

    private Carrion() {}

    /**
     * What a carcass loses to the water; the same for nitrogen, phosphorus and carbon, each as organic matter that rots
     * soon.
     *
     * <pre>J = ln 2 / t_half A q^((T - 25 degC)/10 K)</pre>
     *
     * @param left A still in the carcass
     * @param halfTime t_half, {@link #HALF_TIME}
     * @param warmth q, {@link #WARMTH}
     * @param temperature T, ITS-90
     * @return amount per time
     * @source first order; Chidami and Amyot 2008
     * @validity a small fish; that bones are slow and that large fishes are slower (Nobre et al. 2019, Front. Ecol.
     *     Evol. 7, 340) is left out
     */
    @Unit("mol/s")
    public static double released(
            @Unit("mol") double left,
            @Unit("s") double halfTime,
            @Unit("1") double warmth,
            @Unit("degC") double temperature) {
        Bounds.finite(left, "mol", "amount left");
        Bounds.within(halfTime, "s", 1, 1e10, "half-time");
        return Math.max(0, left) * Math.log(2) / halfTime * Q10.factor(warmth, temperature, REFERENCE);
    }
}
