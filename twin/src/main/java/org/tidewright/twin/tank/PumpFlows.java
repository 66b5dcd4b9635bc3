package org.tidewright.twin.tank;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PumpCurve;

/**
 * What a pump brings to each of its outlets, by the heights it must lift to: read between the points of a grid, since a
 * run asks for it thousands of times and the pipes' equations take a tenth of a millisecond to solve. A point is solved
 * when it is first needed: a run visits few of them.
 *
 * <p>Heights range from 0 to the pump's shut-off head; the grid is fine enough to read flows to 0.2 % of the free flow, to
 * 1 % in the last hundredth under the shut-off head, where the flow ends like a square root. Not for several threads.
 */
public final class PumpFlows {
    private static final int POINTS_OF_ONE = 401;
    private static final int POINTS_OF_TWO = 121;

    private final PumpCurve pump;
    private final Function<List<Double>, Manifold> lines;
    private final int outlets;
    private final double viscosity;
    private final double highest;
    private final int points;
    /** By outlet, row and column; NaN where not yet solved. */
    private final double[][] flows;

    /**
     * A pump and its pipes.
     *
     * @param lines the pipes as a manifold over given outlet heights
     * @param outlets one or two
     */
    public PumpFlows(
            PumpCurve pump, Function<List<Double>, Manifold> lines, int outlets, @Unit("m^2/s") double viscosity) {
        if (outlets < 1 || outlets > 2) {
            throw new IllegalArgumentException("a pump's flows are tabulated for 1 or 2 outlets, not " + outlets);
        }
        this.pump = pump;
        this.lines = lines;
        this.outlets = outlets;
        this.viscosity = viscosity;
        this.highest = pump.shutOffHead();
        this.points = outlets == 1 ? POINTS_OF_ONE : POINTS_OF_TWO;
        flows = new double[outlets][(outlets == 1 ? 1 : points) * points];
        for (double[] table : flows) {
            Arrays.fill(table, Double.NaN);
        }
    }

    /**
     * Flow to one outlet.
     *
     * @param outlet 0 or 1
     * @param first height the first outlet stands over the water the pump draws from
     * @param second the same of the second, ignored where there is one
     */
    public @Unit("m^3/s") double to(int outlet, @Unit("m") double first, @Unit("m") double second) {
        if (outlets == 1) {
            return along(outlet, 0, place(first));
        }
        double row = place(first);
        int below = Math.min(points - 2, (int) row);
        double share = row - below;
        double column = place(second);
        return (1 - share) * along(outlet, below, column) + share * along(outlet, below + 1, column);
    }

    private double along(int outlet, int row, double column) {
        int left = Math.min(points - 2, (int) column);
        double share = column - left;
        return (1 - share) * at(outlet, row, left) + share * at(outlet, row, left + 1);
    }

    private double at(int outlet, int row, int column) {
        int place = row * points + column;
        if (Double.isNaN(flows[outlet][place])) {
            List<Double> heights = outlets == 1 ? List.of(height(column)) : List.of(height(row), height(column));
            List<Double> divided = lines.apply(heights).divide(pump, viscosity).branchFlows();
            for (int each = 0; each < outlets; each++) {
                flows[each][place] = Math.max(0, divided.get(each));
            }
        }
        return flows[outlet][place];
    }

    private double height(int point) {
        return highest * point / (points - 1);
    }

    private double place(double height) {
        return Math.max(0, Math.min(1, height / highest)) * (points - 1);
    }
}
