package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.hydraulic.DrainMouth;
import org.tidewright.twin.law.hydraulic.FullSiphon;
import org.tidewright.twin.law.hydraulic.PipeRun;
import org.tidewright.twin.law.hydraulic.VentedDrain;

/**
 * A drain from the overflow box to the sump: the least of what its mouth takes and what its pipe passes. Primed, the pipe
 * runs full of water; unprimed, it takes air along and passes only the annular flow until its mouth is under water long
 * enough to purge.
 */
public final class DrainLine extends PipedWay {
    /** Water over the mouth, in bores, below which a siphon draws air and above which it can purge; common practice. */
    private static final double SEALING_BORES = 1.0;

    private static final double LOSING_HEAD = 2e-3;

    private final String name;
    private final double inletHeight;
    private final PipeRun pipe;
    private final DrainMouth mouth;
    private final double annular;
    private final double viscosity;
    private final @Nullable Setting primed;
    private final Setting open;
    private final Parameter purgeTime;

    /**
     * A drain.
     *
     * @param inletHeight of its mouth above the finished floor
     * @param pipe with the loss its valve adds
     * @param primed setting that is 1 while the pipe runs full; null for a drain that takes air by design
     * @param open setting that is 0 while it is blocked
     * @param purgeTime from sealing its mouth to running full
     */
    public DrainLine(
            String name,
            Body from,
            Body to,
            @Unit("m") double inletHeight,
            PipeRun pipe,
            @Unit("m^2/s") double viscosity,
            @Nullable Setting primed,
            Setting open,
            Parameter purgeTime) {
        super(Kind.DRAIN, from, to);
        this.name = name;
        this.inletHeight = inletHeight;
        this.pipe = pipe;
        this.mouth = new DrainMouth(pipe.bore());
        this.annular = VentedDrain.annularLimit(pipe.bore());
        this.viscosity = viscosity;
        this.primed = primed;
        this.open = open;
        this.purgeTime = purgeTime;
    }

    @Override
    public double flow(View now) {
        double height = now.height(from());
        double head = height - inletHeight;
        if (head <= 0) {
            return 0;
        }
        double passed = primed == null || now.value(primed) > 0
                ? FullSiphon.capacity(pipe, Math.max(0, height - now.height(to())), viscosity)
                : annular;
        return now.value(open) * Math.min(mouth.flow(head), passed);
    }

    @Override
    public List<Watch> watches() {
        if (primed == null) {
            return List.of();
        }
        return List.of(
                new Watch(
                        name + " draws air",
                        Watch.Crossing.FALLING,
                        now -> now.height(from()) - inletHeight - LOSING_HEAD,
                        (now, switches) -> switches.set(primed, 0)),
                new Watch(
                        name + " begins to purge",
                        Watch.Crossing.RISING,
                        now -> now.height(from()) - inletHeight - SEALING_BORES * pipe.bore(),
                        (now, switches) -> {
                            if (now.value(primed) == 0) {
                                switches.setAt(now.time() + now.value(purgeTime), primed, 1);
                            }
                        }));
    }
}
