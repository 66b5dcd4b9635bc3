package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The return line running backward after its pump has stopped, as long as its outlet is under water.
 *
 * <pre>Q = A sqrt(2 g dz / (1 + f L/d + sum K))</pre>
 *
 * <p>It breaks when the outlet or an open break hole comes out of the water, and does not start again by itself.
 */
public final class ReturnSiphon {
    /** Loss of a standing impeller, on the pipe's speed; from memory, order of magnitude. */
    @Unit("1")
    public static final double STOPPED_IMPELLER = 3;

    /** Least loss of a standing impeller; from memory. */
    @Unit("1")
    public static final double STOPPED_IMPELLER_LEAST = 2;

    /** Greatest loss of a standing impeller; from memory. */
    @Unit("1")
    public static final double STOPPED_IMPELLER_MOST = 6;

    private static final double EXIT = 1;

    private final PipeRun path;

    /**
     * A return line seen from the display.
     *
     * @param line with the losses of its fittings, but without impeller and exit
     * @param impellerLoss of the standing pump, on the line's speed
     */
    public ReturnSiphon(PipeRun line, @Unit("1") double impellerLoss) {
        this.path = line.withExtraLoss(Bounds.notNegative(impellerLoss, "1", "loss of the standing impeller"))
                .withExtraLoss(EXIT);
    }

    /**
     * Flow back into the sump.
     *
     * @param drop dz, display surface over sump surface
     * @param kinematicViscosity of the water
     * @return none for a drop of 0 or less
     * @source Darcy and Weisbach's equation; exit loss 1
     * @checkvalue 25 mm, 2.2 m, fittings and impeller 7.1, drop 1.30 m, seawater of 25.5 degC: 2820 L/h
     */
    @Unit("m^3/s")
    public double flow(@Unit("m") double drop, @Unit("m^2/s") double kinematicViscosity) {
        return drop > 0 ? path.flow(drop, kinematicViscosity) : Dry.noFlow(drop);
    }
}
