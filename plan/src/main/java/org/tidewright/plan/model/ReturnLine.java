package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** How water comes back from the sump's last section to the display. */
public record ReturnLine(
        @Entry("the return pump") Pump pump,

        @Entry("the pipe from pump to display") PipeLine pipe,

        @Entry("a check valve in it; never counted on") CheckValve checkValve,

        @Entry(value = "where it ends in the display", least = 1, most = 8)
        List<Outlet> outlets) {

    /** A pump described by its curve. */
    public record Pump(
            @Entry(value = "points of its curve, flow rising, the first at no flow", least = 2, most = 50)
            List<CurvePoint> curve,

            @Entry(value = "electrical power it draws", unit = "W", least = 0.5, most = 5000)
            Amount power,

            @Entry(value = "speed it is set to", unit = "1", least = 0.1, most = 1) @Nullable
            Amount speed,

            @Entry(value = "height above the sump's bottom at which it begins to draw air", unit = "m", least = 0)
            Amount intake) {}

    /** One point of a pump curve. */
    public record CurvePoint(
            @Entry(value = "flow", unit = "m^3/s", least = 0, most = 0.1)
            Amount flow,

            @Entry(value = "head", unit = "m", least = 0, most = 100)
            Amount head) {}

    /**
     * Kinds of check valve and what each costs the flow when open.
     *
     * @source as for {@link Fitting}
     */
    public enum CheckValve {
        /** None in the line. */
        NONE(0, 0, 0),
        /** With a hanging flap. */
        SWING(2.2, 0.9, 3.1),
        /** Held open by the flow against a spring. */
        SPRING(7, 5, 10);

        private final LossCoefficient loss;

        CheckValve(double usual, double least, double most) {
            this.loss = new LossCoefficient(usual, least, most);
        }

        /** What it costs the flow. */
        public LossCoefficient loss() {
            return loss;
        }
    }

    /** An end of the return line, heights above the display's inside bottom. */
    public record Outlet(
            @Entry("its name") String name,

            @Entry(value = "height of its lower edge", unit = "m", least = 0, most = 6)
            Amount lowerEdge,

            @Entry(value = "inner diameter of its mouth", unit = "m", least = 0.002, most = 0.3)
            Amount bore,

            @Entry("a hole that lets air in when the level falls to it") @Nullable
            AirHole airHole) {}

    /** A siphon-break hole. */
    public record AirHole(
            @Entry(value = "height of the hole", unit = "m", least = 0, most = 6)
            Amount height,

            @Entry(value = "its diameter", unit = "m", least = 0.0005, most = 0.1)
            Amount bore) {}
}
