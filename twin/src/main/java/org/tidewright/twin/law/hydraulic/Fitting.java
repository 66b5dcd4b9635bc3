package org.tidewright.twin.law.hydraulic;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Kinds of fitting and their loss coefficient K: head lost = K v^2 / (2g), v in the pipe of the same bore, turbulent
 * flow. Published methods differ by tens of per cent for the same piece, so every K is a usual value in a range; below
 * a Reynolds number of about 10 000 all are larger.
 *
 * @source usual values from memory of handbook ranges; the ranges widened, where need be, to hold what the two-K method
 *     of Hooper 1981, the three-K method of Darby 1999, Technical Paper 410 (2009), Rennels and Hudson 2012, Miller 1990
 *     and Idel'chik 1966 give for bores of 20-50 mm
 */
public enum Fitting {
    /** Right-angle elbow, short, with a sharp or barely rounded inside. */
    ELBOW_90(0.9, 0.6, 1.5),
    /** Right-angle bend, swept, radius of the axis one bore or more. */
    BEND_90(0.4, 0.2, 0.6),
    /** Right-angle turn cut from straight pipe. */
    MITRE_90(1.3, 1.1, 2.3),
    /** Half-right-angle elbow. */
    ELBOW_45(0.35, 0.15, 0.45),
    /** Tee passed straight on. */
    TEE_THROUGH(0.4, 0.1, 0.6),
    /** Tee entered or left by its branch. */
    TEE_BRANCH(1.3, 1.0, 1.8),
    /** Union or coupling that can be undone. */
    UNION(0.1, 0.02, 0.15),
    /** Ball valve, full bore, open. */
    BALL_VALVE(0.08, 0.05, 0.1),
    /** Gate valve, open. */
    GATE_VALVE(0.2, 0.1, 0.25),
    /** Check valve with a hanging flap. */
    SWING_CHECK_VALVE(2.2, 0.9, 3.1),
    /** Check valve that its flow must hold open against a spring. */
    SPRING_CHECK_VALVE(7, 5, 10),
    /** Entry from a vessel, pipe flush with the wall, edge sharp. */
    SHARP_ENTRY(0.5, 0.5, 0.57),
    /** Entry from a vessel, edge well rounded (radius a tenth of the bore or more). */
    ROUNDED_ENTRY(0.1, 0.05, 0.25),
    /** Entry from a vessel, pipe standing out into the water. */
    PROJECTING_ENTRY(0.8, 0.65, 1.0),
    /** Exit into a vessel, under water or in air. */
    EXIT(1.0, 1.0, 1.0),
    /** Barbed tail of a hose: a bore of about 0.8 and its way back. */
    HOSE_TAIL(1.0, 0.3, 2.0);

    /** Where the numbers of this catalogue come from, for showing beside them. */
    public static final String SOURCE = "from memory, handbook range";

    private final double usualLoss;
    private final double leastLoss;
    private final double mostLoss;

    Fitting(double usualLoss, double leastLoss, double mostLoss) {
        this.usualLoss = usualLoss;
        this.leastLoss = leastLoss;
        this.mostLoss = mostLoss;
    }

    /** K to take when nothing better is known. */
    @Unit("1")
    public double usualLoss() {
        return usualLoss;
    }

    /** Least K of the range. */
    @Unit("1")
    public double leastLoss() {
        return leastLoss;
    }

    /** Greatest K of the range. */
    @Unit("1")
    public double mostLoss() {
        return mostLoss;
    }

    /** Name in texts: {@code elbow_90}, {@code swing_check_valve}. */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The fitting of a name in texts, or empty for a name nobody knows. */
    public static Optional<Fitting> fromText(String text) {
        return Arrays.stream(values()).filter(kind -> kind.text().equals(text)).findFirst();
    }

    /**
     * Loss of a nozzle that narrows the pipe at its end, exit included, on the pipe's speed.
     *
     * <pre>K = (d / d_n)^4</pre>
     *
     * @param bore d of the pipe
     * @param nozzleBore d_n
     * @source velocity head of the jet, without contraction (from memory)
     * @validity smooth, well-tapered nozzles
     * @checkvalue d / d_n = 2: 16
     */
    @Unit("1")
    public static double nozzleLoss(@Unit("m") double bore, @Unit("m") double nozzleBore) {
        Bounds.positive(bore, "m", "bore of the pipe");
        if (!(nozzleBore > 0 && nozzleBore <= bore)) {
            throw Bounds.refusal(nozzleBore, "m", "bore of the nozzle", "more than 0 and no more than " + bore + " m");
        }
        double ratio = bore / nozzleBore;
        return ratio * ratio * ratio * ratio;
    }

    /**
     * Loss of two pieces of pipe joined with a step in bore, on the speed in the narrow one.
     *
     * <pre>widening: K = (1 - b^2)^2;   narrowing: K = 0.5 (1 - b^2);   b = narrow bore / wide bore</pre>
     *
     * @param firstBore in the direction of flow
     * @param secondBore in the direction of flow
     * @source widening: Borda and Carnot, exact for a sudden one; narrowing: handbook form from memory, Rennels and
     *     Hudson 2012 give up to 0.12 more
     */
    @Unit("1")
    public static double stepLoss(@Unit("m") double firstBore, @Unit("m") double secondBore) {
        Bounds.positive(firstBore, "m", "first bore");
        Bounds.positive(secondBore, "m", "second bore");
        double ratio = Math.min(firstBore, secondBore) / Math.max(firstBore, secondBore);
        double areaLost = 1 - ratio * ratio;
        return secondBore > firstBore ? areaLost * areaLost : 0.5 * areaLost;
    }

    /**
     * Length of straight pipe that would lose as much as a fitting.
     *
     * <pre>L_e = K d / f</pre>
     *
     * @param loss K
     * @param bore d
     * @param frictionFactor f
     * @source definition
     */
    @Unit("m")
    public static double equivalentLength(
            @Unit("1") double loss, @Unit("m") double bore, @Unit("1") double frictionFactor) {
        Bounds.notNegative(loss, "1", "loss coefficient");
        Bounds.positive(bore, "m", "bore");
        return loss * bore / Bounds.positive(frictionFactor, "1", "friction factor");
    }
}
