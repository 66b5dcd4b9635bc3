package org.tidewright.twin.law.hydraulic;

import java.util.function.DoubleUnaryOperator;
import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * Where a pump's curve meets what it pumps through.
 *
 * @param flow through the pump
 * @param head the pump gives there; with no flow, its shut-off head
 */
public record OperatingPoint(
        @Unit("m^3/s") double flow, @Unit("m") double head) {
    /**
     * A pump against one line.
     *
     * <pre>H_pump(Q) = H_static + (f L/d + sum K) v^2 / (2g)</pre>
     *
     * @param pump running
     * @param staticHead height of the water surface or free outlet it feeds over the surface it draws from
     * @param line with all its fittings, exit included
     * @param kinematicViscosity of the water
     * @return no flow where the pump cannot lift the static head
     */
    public static OperatingPoint of(
            PumpCurve pump, @Unit("m") double staticHead, PipeRun line, @Unit("m^2/s") double kinematicViscosity) {
        Bounds.finite(staticHead, "m", "static head");
        return of(pump, flow -> staticHead + line.headLoss(flow, kinematicViscosity));
    }

    /**
     * A pump against any system whose head rises with flow.
     *
     * @param pump running
     * @param systemHead head the system asks for at a flow, metres of cubic metres per second
     */
    public static OperatingPoint of(PumpCurve pump, DoubleUnaryOperator systemHead) {
        DoubleUnaryOperator surplus = flow -> pump.head(flow) - systemHead.applyAsDouble(flow);
        if (surplus.applyAsDouble(0) <= 0) {
            return new OperatingPoint(0, pump.shutOffHead());
        }
        double enough = Math.max(pump.freeFlow(), Double.MIN_NORMAL);
        // A system that runs downhill can draw more than the free flow through a pump that then gives no head.
        while (surplus.applyAsDouble(enough) > 0) {
            enough *= 2;
        }
        double flow = Bracketed.root(surplus, 0, enough);
        return new OperatingPoint(flow, pump.head(flow));
    }

    /**
     * Power the water takes up: rho g Q H.
     *
     * @source definition
     */
    @Unit("W")
    public double hydraulicPower(@Unit("kg/m^3") double density) {
        return Bounds.positive(density, "kg/m^3", "density") * Gravity.STANDARD * flow * head;
    }

    /**
     * Wire-to-water efficiency: hydraulic power over electrical input.
     *
     * @source definition
     */
    @Unit("1")
    public double efficiency(@Unit("kg/m^3") double density, @Unit("W") double electricalPower) {
        return hydraulicPower(density) / Bounds.positive(electricalPower, "W", "electrical power");
    }
}
