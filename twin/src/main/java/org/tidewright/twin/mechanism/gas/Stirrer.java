package org.tidewright.twin.mechanism.gas;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.mechanism.water.WaveProgramme;

/**
 * A pump that keeps a water's surface moving.
 *
 * @param full power it spends in that water at full speed
 * @param programme how fast it runs; null for always at full speed
 */
public record Stirrer(
        Supply supply, @Unit("W") double full, @Nullable WaveProgramme programme) {
    /** Power it spends in the water now. */
    public @Unit("W") double power(View now) {
        if (!supply.isOn(now)) {
            return 0;
        }
        return programme == null ? full : full * programme.power(now);
    }
}
