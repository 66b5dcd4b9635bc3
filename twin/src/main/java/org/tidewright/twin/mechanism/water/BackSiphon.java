package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.hydraulic.ReturnSiphon;

/**
 * The return line running backward once its pump has stopped, until air enters: through the outlet at once, through an
 * air hole over some seconds. It does not start again before the pump has run.
 */
public final class BackSiphon extends PipedWay {
    private final String name;
    private final double outletHeight;
    private final double airHeight;
    private final ReturnSiphon line;
    private final double viscosity;
    private final Setting pumpRunning;
    private final Setting sealed;
    private final Parameter fadeTime;
    private final Setting fadeStart;

    /**
     * A return line that can run backward.
     *
     * @param outletHeight height of its mouth's lower edge above the finished floor
     * @param airHeight height at which air enters: the air hole where one is counted on, else the mouth
     * @param pumpRunning setting that is 1 while the pump runs
     * @param sealed setting that is 1 while no air is in the line
     * @param fadeTime over which a hole lets in enough air
     * @param fadeStart setting that holds the time at which the hole came free; infinite before
     */
    public BackSiphon(
            String name,
            Body from,
            Body to,
            @Unit("m") double outletHeight,
            @Unit("m") double airHeight,
            ReturnSiphon line,
            @Unit("m^2/s") double viscosity,
            Setting pumpRunning,
            Setting sealed,
            Parameter fadeTime,
            Setting fadeStart) {
        super(Kind.BACK_SIPHON, from, to);
        this.name = name;
        this.outletHeight = outletHeight;
        this.airHeight = airHeight;
        this.line = line;
        this.viscosity = viscosity;
        this.pumpRunning = pumpRunning;
        this.sealed = sealed;
        this.fadeTime = fadeTime;
        this.fadeStart = fadeStart;
    }

    @Override
    public double flow(View now) {
        if (now.value(pumpRunning) > 0 || now.value(sealed) == 0) {
            return 0;
        }
        double fading = 1 - Math.max(0, now.time() - now.value(fadeStart)) / now.value(fadeTime);
        return fading <= 0 ? 0 : fading * line.flow(Math.max(0, now.height(from()) - now.height(to())), viscosity);
    }

    @Override
    public List<Watch> watches() {
        Watch mouthFree = new Watch(
                name + " siphon broken",
                Watch.Crossing.FALLING,
                now -> now.height(from()) - outletHeight,
                (now, switches) -> switches.set(sealed, 0));
        if (airHeight <= outletHeight) {
            return List.of(mouthFree);
        }
        Watch holeFree = new Watch(
                name + " air hole free",
                Watch.Crossing.FALLING,
                now -> now.height(from()) - airHeight,
                (now, switches) -> {
                    switches.set(fadeStart, now.time());
                    switches.setAt(now.time() + now.value(fadeTime), sealed, 0);
                });
        return List.of(mouthFree, holeFree);
    }
}
