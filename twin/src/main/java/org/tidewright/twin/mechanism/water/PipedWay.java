package org.tidewright.twin.mechanism.water;

import org.tidewright.twin.contract.Body;

/** A way through a pipe, whose ends and kind never change. */
abstract class PipedWay implements WaterWay {
    private final Kind kind;
    private final Body from;
    private final Body to;

    PipedWay(Kind kind, Body from, Body to) {
        this.kind = kind;
        this.from = from;
        this.to = to;
    }

    @Override
    public final Kind kind() {
        return kind;
    }

    @Override
    public final Body from() {
        return from;
    }

    @Override
    public final Body to() {
        return to;
    }
}
