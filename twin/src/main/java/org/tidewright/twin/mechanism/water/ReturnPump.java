package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * One branch of the return pump: from the sump's last section to a vessel. The pump gulps air when the level comes near
 * its intake and passes nothing at it.
 */
public final class ReturnPump extends PipedWay {
    /** Event that the pump begins to draw air. */
    public static final String DRAWS_AIR = "the return pump draws air";

    private static final double GULPING_DEPTH = 0.01;

    private final int branch;
    private final Outlet first;
    private final Outlet second;
    private final Lift lift;
    private final double intakeLevel;
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

    /** What the pump brings to its outlets. */
    @FunctionalInterface
    public interface Lift {
        /**
         * Flow to one outlet.
         *
         * @param first height of the first outlet over the water the pump draws from
         * @param second the same of the second; equal to the first where there is one
         */
        @Unit("m^3/s")
        double to(int outlet, @Unit("m") double first, @Unit("m") double second);
    }

    /**
     * A branch of the return.
     *
     * @param branch which of the outlets this way leads to
     * @param outlets one or two
     * @param intakeLevel in the last section at which the pump passes nothing
     * @param running setting: 1 while it runs
     */
    public ReturnPump(
            Body from, int branch, List<Outlet> outlets, Lift lift, @Unit("m") double intakeLevel, Setting running) {
        super(Kind.RETURN, from, outlets.get(branch).vessel());
        this.branch = branch;
        this.first = outlets.get(0);
        this.second = outlets.get(outlets.size() - 1);
        this.lift = lift;
        this.intakeLevel = intakeLevel;
        this.running = running;
    }

    @Override
    public double flow(View now) {
        double drawn = now.value(running) * WaterWay.fading(now.level(from()) - intakeLevel, GULPING_DEPTH);
        if (drawn == 0) {
            return 0;
        }
        double drawHeight = now.height(from());
        return drawn * lift.to(branch, first.height(now) - drawHeight, second.height(now) - drawHeight);
    }

    @Override
    public List<Watch> watches() {
        return branch > 0
                ? List.of()
                : List.of(Watch.noting(
                        DRAWS_AIR, Watch.Crossing.FALLING, now -> now.level(from()) - intakeLevel - GULPING_DEPTH));
    }
}
