package org.tidewright.twin.law.hydraulic;

/** A pump whose curve is another's, stretched along both axes; factors of 0 make a pump that gives nothing. */
record ScaledPump(PumpCurve base, double flowFactor, double headFactor) implements PumpCurve {
    @Override
    public double head(double flow) {
        return headFactor == 0 ? 0 : headFactor * base.head(flow / flowFactor);
    }

    @Override
    public double flow(double head) {
        return headFactor == 0 ? 0 : flowFactor * base.flow(head / headFactor);
    }

    @Override
    public double shutOffHead() {
        return headFactor * base.shutOffHead();
    }

    @Override
    public double freeFlow() {
        return flowFactor * base.freeFlow();
    }
}
