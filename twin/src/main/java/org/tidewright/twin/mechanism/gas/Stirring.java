package org.tidewright.twin.mechanism.gas;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * What moves a water's surface: the pumps in it, and the one that feeds it. The small eddies that renew a surface carry gas
 * by the fourth root of the power that is spent on them, k ~ (e nu)^(1/4) (Lamont and Scott 1970, AIChE J. 16, 513-519).
 * How much of a pump's power comes to the surface nobody knows; that each gives the same share of what it draws is ours.
 */
public final class Stirring {
    /** Of the small eddies. */
    private static final double EXPONENT = 0.25;

    private final Stirrer[] stirrers;
    private final double all;

    /** One of them, with the power it draws. */
    public record Stirrer(Supply supply, @Unit("W") double power) {}

    public Stirring(List<Stirrer> stirrers) {
        this.stirrers = stirrers.toArray(Stirrer[]::new);
        all = stirrers.stream().mapToDouble(Stirrer::power).sum();
    }

    /** How well a moved surface is renewed, over how it is while all of them run; 0 for a still one. */
    public @Unit("1") double strength(View now) {
        double running = 0;
        for (Stirrer stirrer : stirrers) {
            running += stirrer.supply().isOn(now) ? stirrer.power() : 0;
        }
        return running <= 0 ? 0 : running == all ? 1 : Math.pow(running / all, EXPONENT);
    }

    /** Whether any of them runs. */
    public boolean moves(View now) {
        for (Stirrer stirrer : stirrers) {
            if (stirrer.supply().isOn(now)) {
                return true;
            }
        }
        return false;
    }
}
