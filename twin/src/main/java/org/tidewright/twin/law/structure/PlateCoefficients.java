package org.tidewright.twin.law.structure;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What a plate's shape and edges make of a load.
 *
 * <pre>
 * sigma_max = beta q0 b^2 / t^2,   w_max = alpha q0 b^4 / (E t^3)
 * </pre>
 *
 * <p>q0 is the greatest pressure, b the height (of a bottom pane: the shorter side), t the thickness. beta takes the
 * greatest principal stress anywhere on the plate, which on a long rimless pane sits off the middle.
 *
 * @param stress beta
 * @param deflection alpha
 * @param stressAtLength where the greatest stress is, share of the length from a side (the plate is symmetric)
 * @param stressAtHeight where it is, share of the height from the foot
 * @source Kirchhoff's plate theory by Levy's series, see {@link LevyPlate}
 * @validity deflection up to half the thickness
 */
public record PlateCoefficients(
        @Unit("1") double stress,
        @Unit("1") double deflection,
        @Unit("1") double stressAtLength,
        @Unit("1") double stressAtHeight) {
    private static final int GRID = 40;
    private static final int REFINEMENTS = 6;

    /**
     * An upright pane under water that stands to its top: pressure from q0 at the foot to none at the top.
     *
     * @param aspect length over height
     * @param poisson Poisson's ratio
     * @param top how its upper edge is held
     * @checkvalue a/b = 2, nu = 0.3, held: 0.32; a/b = 1, nu = 0.3, free: 0.20 (Roark's Formulas, table 11.4)
     */
    public static PlateCoefficients underWater(@Unit("1") double aspect, @Unit("1") double poisson, TopEdge top) {
        return of(new LevyPlate(aspect, poisson, top, 1, 0), poisson);
    }

    /**
     * A pane held along all four edges under one pressure q0 everywhere: a bottom pane on a rim.
     *
     * @param aspect longer side over shorter side, 1 or more
     * @param poisson Poisson's ratio
     * @checkvalue nu = 0.3: 0.2874 at 1.0, 0.4530 at 1.4, 0.6102 at 2.0 (Roark's Formulas, table 11.4 case 1a)
     */
    public static PlateCoefficients underUniformLoad(@Unit("1") double aspect, @Unit("1") double poisson) {
        Bounds.within(aspect, "1", 1, 20, "longer side over shorter side");
        return of(new LevyPlate(aspect, poisson, TopEdge.HELD, 1, 1), poisson);
    }

    private static PlateCoefficients of(LevyPlate plate, double poisson) {
        Peak moment = Peak.of(plate, LevyPlate.Line::principalMomentAt);
        Peak deflection = Peak.of(plate, LevyPlate.Line::deflectionAt);
        // D = E t^3 / (12 (1 - nu^2)) turns w D / (q0 b^4) into w E t^3 / (q0 b^4).
        double alpha = 12 * (1 - poisson * poisson) * deflection.value;
        return new PlateCoefficients(6 * moment.value, alpha, moment.x, moment.y);
    }

    /** What is looked for along one line of the plate. */
    private interface Quantity {
        double at(LevyPlate.Line line, double xShare);
    }

    /** The greatest value over half the plate: a grid, then ever finer grids round its best point. */
    private record Peak(double value, double x, double y) {
        static Peak of(LevyPlate plate, Quantity quantity) {
            Peak best = new Peak(Double.NEGATIVE_INFINITY, 0, 0);
            best = best.or(searched(plate, quantity, 0, 0.5, 0, 1, GRID));
            double reachX = 0.5 / GRID;
            double reachY = 1.0 / GRID;
            for (int i = 0; i < REFINEMENTS; i++) {
                best = best.or(searched(
                        plate,
                        quantity,
                        Math.max(0, best.x - reachX),
                        Math.min(0.5, best.x + reachX),
                        Math.max(0, best.y - reachY),
                        Math.min(1, best.y + reachY),
                        8));
                reachX /= 4;
                reachY /= 4;
            }
            return best;
        }

        private static Peak searched(
                LevyPlate plate, Quantity quantity, double x0, double x1, double y0, double y1, int steps) {
            Peak best = new Peak(Double.NEGATIVE_INFINITY, 0, 0);
            for (int j = 0; j <= steps; j++) {
                double y = y0 + (y1 - y0) * j / steps;
                LevyPlate.Line line = plate.lineAt(y);
                for (int i = 0; i <= steps; i++) {
                    double x = x0 + (x1 - x0) * i / steps;
                    best = best.or(new Peak(quantity.at(line, x), x, y));
                }
            }
            return best;
        }

        private Peak or(Peak other) {
            return other.value > value ? other : this;
        }
    }
}
