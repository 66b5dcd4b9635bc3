package org.tidewright.twin.mechanism.gas;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.SmallEddies;

/**
 * What moves a water's surface: the pumps in it, its air stones, and the pump that feeds it. How much of what each spends in
 * the water comes to the surface nobody knows; that it is the same share of each is ours.
 */
public final class Stirring {
    private final Stirrer[] stirrers;
    private final double all;

    public Stirring(List<Stirrer> stirrers) {
        this.stirrers = stirrers.toArray(Stirrer[]::new);
        all = stirrers.stream().mapToDouble(Stirrer::full).sum();
    }

    /** How well a moved surface is renewed, over how it is while all of them run at full speed; 0 for a still one. */
    public @Unit("1") double strength(View now) {
        return all > 0 ? SmallEddies.share(power(now) / all) : 0;
    }

    /** Whether any of them runs. */
    public boolean moves(View now) {
        return power(now) > 0;
    }

    private double power(View now) {
        double power = 0;
        for (Stirrer stirrer : stirrers) {
            power += stirrer.power(now);
        }
        return power;
    }
}
