package org.tidewright.twin.tank;

import java.util.List;
import java.util.function.Function;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PumpCurve;

/**
 * What a pump brings to each of its outlets, by the heights it must lift to: computed once on a grid and read between its
 * points, since a run asks for it thousands of times and the manifold's equations take twenty microseconds to solve.
 *
 * <p>Heights range from 0 to the pump's shut-off head; the grid is fine enough to read flows to 0.2 %.
 */
public final class PumpFlows {
    private static final int POINTS_OF_ONE = 401;
    private static final int POINTS_OF_TWO = 61;

    private final double highest;
    private final int points;
    private final int outlets;
    private final double[][] flows;

    /**
     * Tabulates a pump.
     *
     * @param lines the pipes as a manifold over given outlet heights
     * @param outlets one or two
     */
    public PumpFlows(
            PumpCurve pump, Function<List<Double>, Manifold> lines, int outlets, @Unit("m^2/s") double viscosity) {
        if (outlets < 1 || outlets > 2) {
            throw new IllegalArgumentException("a pump's flows are tabulated for 1 or 2 outlets, not " + outlets);
        }
        this.outlets = outlets;
        this.points = outlets == 1 ? POINTS_OF_ONE : POINTS_OF_TWO;
        this.highest = pump.shutOffHead();
        int rows = outlets == 1 ? 1 : points;
        flows = new double[outlets][rows * points];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < points; column++) {
                List<Double> heights = outlets == 1 ? List.of(height(column)) : List.of(height(row), height(column));
                List<Double> divided =
                        lines.apply(heights).divide(pump, viscosity).branchFlows();
                for (int outlet = 0; outlet < outlets; outlet++) {
                    flows[outlet][row * points + column] = Math.max(0, divided.get(outlet));
                }
            }
        }
    }

    private double height(int point) {
        return highest * point / (points - 1);
    }

    /**
     * Flow to one outlet.
     *
     * @param outlet 0 or 1
     * @param first height the first outlet stands over the water the pump draws from
     * @param second the same of the second, ignored where there is one
     */
    public @Unit("m^3/s") double to(int outlet, @Unit("m") double first, @Unit("m") double second) {
        double[] table = flows[outlet];
        if (outlets == 1) {
            return along(table, 0, place(first));
        }
        double row = place(first);
        int below = Math.min(points - 2, (int) row);
        double share = row - below;
        double column = place(second);
        return (1 - share) * along(table, below * points, column) + share * along(table, (below + 1) * points, column);
    }

    private double place(double height) {
        return Math.max(0, Math.min(1, height / highest)) * (points - 1);
    }

    private double along(double[] table, int start, double column) {
        int left = Math.min(points - 2, (int) column);
        double share = column - left;
        return (1 - share) * table[start + left] + share * table[start + left + 1];
    }
}
