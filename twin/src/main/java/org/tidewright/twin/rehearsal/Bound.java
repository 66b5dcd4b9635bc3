package org.tidewright.twin.rehearsal;

import org.tidewright.seawater.unit.Unit;

/**
 * A bound on a quantity of the display, for a run to note when it is first met.
 *
 * @param name unique in its rehearsal
 * @param value °C for temperature, mol/m³ for oxygen
 * @param below whether the forbidden side lies below
 */
public record Bound(
        String name, Quantity quantity, @Unit("*") double value, boolean below) {
    /** What is bounded. */
    public enum Quantity {
        TEMPERATURE,
        OXYGEN
    }
}
