package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * A mechanism that carries water between two bodies and back so fast that a run may take it implicitly. What it says here
 * is the linear part of what it does in {@link #act}.
 */
public interface Exchange extends Mechanism {
    Body upper();

    Body lower();

    /** Water that goes each way now. */
    @Unit("m^3/s")
    double flow(View now);

    /** How much more falls back for each volume that the upper body holds beyond its own. */
    @Unit("1/s")
    double relaxation(View now);
}
