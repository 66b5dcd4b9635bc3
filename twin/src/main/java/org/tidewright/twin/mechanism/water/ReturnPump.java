package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PumpCurve;

/**
 * One branch of the return pump: from the sump's last section to a vessel. The pump gulps air when the level comes near
 * its intake and passes nothing at it.
 */
public final class ReturnPump implements WaterWay {
    /** Event that the pump begins to draw air. */
    public static final String DRAWS_AIR = "the return pump draws air";

    private static final double GULPING_DEPTH = 0.01;

    private final Body from;
    private final Body to;
    private final int branch;
    private final PumpCurve curve;
    private final List<Outlet> outlets;
    private final Lines lines;
    private final double intakeLevel;
    private final double viscosity;
    private final Setting running;

    /**
     * Where a branch ends.
     *
     * @param vessel it feeds
     * @param mouthHeight of its mouth above the finished floor: it pumps up to that height or to the surface over it
     */
    public record Outlet(Body vessel, @Unit("m") double mouthHeight) {
        double height(View now) {
            return Math.max(mouthHeight, now.height(vessel));
        }
    }

    /** The pipes from the pump, as a manifold over given outlet heights. */
    @FunctionalInterface
    public interface Lines {
        /** The manifold when the branches end at these heights over the water the pump draws from. */
        Manifold to(double[] outletHeights);
    }

    /**
     * A branch of the return.
     *
     * @param branch which of the outlets this way leads to
     * @param intakeLevel in the last section at which the pump passes nothing
     * @param running setting: 1 while it runs
     */
    public ReturnPump(
            Body from,
            int branch,
            List<Outlet> outlets,
            PumpCurve curve,
            Lines lines,
            @Unit("m") double intakeLevel,
            @Unit("m^2/s") double viscosity,
            Setting running) {
        this.from = from;
        this.to = outlets.get(branch).vessel();
        this.branch = branch;
        this.outlets = List.copyOf(outlets);
        this.curve = curve;
        this.lines = lines;
        this.intakeLevel = intakeLevel;
        this.viscosity = viscosity;
        this.running = running;
    }

    @Override
    public Kind kind() {
        return Kind.RETURN;
    }

    @Override
    public Body from() {
        return from;
    }

    @Override
    public Body to() {
        return to;
    }

    @Override
    public double flow(View now) {
        double drawn = now.value(running) * WaterWay.fading(now.level(from) - intakeLevel, GULPING_DEPTH);
        if (drawn == 0) {
            return 0;
        }
        double[] heights = new double[outlets.size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = outlets.get(i).height(now) - now.height(from);
        }
        return drawn * lines.to(heights).divide(curve, viscosity).branchFlows().get(branch);
    }

    @Override
    public List<Watch> watches() {
        return branch > 0
                ? List.of()
                : List.of(Watch.noting(
                        DRAWS_AIR, Watch.Crossing.FALLING, now -> now.level(from) - intakeLevel - GULPING_DEPTH));
    }
}
