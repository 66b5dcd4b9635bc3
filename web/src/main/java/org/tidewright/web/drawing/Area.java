package org.tidewright.web.drawing;

import org.tidewright.plan.quantity.Amount;

/** An upright rectangle of the drawing, in millimetres, y up from the finished floor. */
public record Area(double left, double bottom, double width, double height) {
    public double right() {
        return left + width;
    }

    public double top() {
        return bottom + height;
    }

    public double middle() {
        return left + width / 2;
    }

    /** The area grown on every side. */
    public Area around(double sides, double below) {
        return new Area(left - sides, bottom - below, width + 2 * sides, height + below);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Area other) {
        double slack = 1e-6;
        return left < other.right() - slack
                && other.left < right() - slack
                && bottom < other.top() - slack
                && other.bottom < top() - slack;
    }

    /** A length of the plan as the drawing takes it. */
    static double mm(Amount length) {
        return length.in("m") * 1000;
    }
}
