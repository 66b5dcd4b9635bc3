package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;

class DormandPrinceReferenceTest {
    /** Hairer, Nørsett and Wanner 1993, section II.0, eqs. 0.1-0.2: a satellite's closed orbit past the moon. */
    private static final double ARENSTORF_PERIOD = 17.065216560157964;

    private static final double[] ARENSTORF_START = {0.994, 0, 0, -2.0015851063790824};

    @Test
    void takesTheStepsOfHairersOwnCode() {
        takesTheSteps(lotkaVolterra(), Tolerance.uniform(2, 1e-8, 1e-6), "ode/dopri5_lotka_volterra.csv");
    }

    @Test
    void takesTheStepsOfHairersOwnCodeWhereManyAreRejected() {
        Equations pulses = equations(2, (t, y, dy) -> {
            dy[0] = -2 * (y[0] - y[1]);
            dy[1] = 5 * Math.pow(Math.sin(t), 40) - 0.3 * y[1];
        });
        takesTheSteps(pulses, Tolerance.uniform(2, 1e-7, 1e-5), "ode/dopri5_pulses.csv");
    }

    private static void takesTheSteps(Equations equations, Tolerance tolerance, String table) {
        List<double[]> reference =
                ReferenceTable.read(DormandPrinceReferenceTest.class, "/reference/" + table).rows().stream()
                        .map(row -> new double[] {row.number("time"), row.number("x"), row.number("y")})
                        .toList();
        DormandPrince stepper = new DormandPrince(equations, tolerance);
        stepper.suggestStep(0.01);
        List<double[]> steps = new ArrayList<>();
        double[] start = reference.get(0);
        double[] state = {start[1], start[2]};
        stepper.advance(0, state, 20, List.of(), step -> {
            double[] end = new double[2];
            step.at(step.to(), end);
            steps.add(new double[] {step.to(), end[0], end[1]});
        });

        // Row 0 is the start; the last two steps are cut to the end by another rule.
        int compared = reference.size() - 3;
        assertThat(compared).isGreaterThan(50);
        for (int i = 1; i <= compared; i++) {
            assertThat(steps.get(i - 1)).as("step %d", i).containsExactly(reference.get(i), within(1e-9));
        }
    }

    @Test
    void closesTheArenstorfOrbitInAsManyStepsAsHairersOwnCode() {
        int[] accepted = new int[1];
        double[] state = ARENSTORF_START.clone();
        new DormandPrince(arenstorf(), Tolerance.uniform(4, 1e-7, 1e-7))
                .advance(0, state, ARENSTORF_PERIOD, List.of(), step -> accepted[0]++);
        // DOPRI5 as carried by SciPy 1.17.1, rtol = atol = 1e-7: 216 accepted steps, end (0.994002102, 8.91e-6, ...).
        assertThat(accepted[0]).isBetween(214, 218);
        assertThat(state[0]).isCloseTo(0.994, within(1e-5));
        assertThat(state[1]).isCloseTo(0, within(1e-4));
    }

    @Test
    void closesTheArenstorfOrbitWithinASmallTolerance() {
        double[] state = ARENSTORF_START.clone();
        new DormandPrince(arenstorf(), Tolerance.uniform(4, 1e-13, 1e-13))
                .advance(0, state, ARENSTORF_PERIOD, List.of(), step -> {});
        assertThat(state).containsExactly(ARENSTORF_START, within(1e-6));
    }

    @Test
    void agreesWithAnIndependentCodeOfOrderEight() {
        for (double end : new double[] {1, 5, 12.5, 20}) {
            double[] state = {0.9, 0.9};
            new DormandPrince(lotkaVolterra(), Tolerance.uniform(2, 1e-12, 1e-12))
                    .advance(0, state, end, List.of(), step -> {});
            assertThat(state)
                    .as("at %s, Hipparchus 4.0.3 DormandPrince853Integrator", end)
                    .containsExactly(hipparchus(lotkaVolterra(), new double[] {0.9, 0.9}, end), within(1e-10));
        }
    }

    @Test
    void agreesWithAnIndependentCodeOnAnEccentricKeplerOrbit() {
        double[] start = {0.4, 0, 0, 2};
        double[] state = start.clone();
        new DormandPrince(kepler(), Tolerance.uniform(4, 1e-12, 1e-12)).advance(0, state, 7, List.of(), step -> {});
        assertThat(state).containsExactly(hipparchus(kepler(), start, 7), within(1e-9));
    }

    private static double[] hipparchus(Equations equations, double[] start, double end) {
        OrdinaryDifferentialEquation ode = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return equations.size();
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] slope = new double[y.length];
                equations.slopes(t, y, slope);
                return slope;
            }
        };
        return new DormandPrince853Integrator(1e-10, 1, 1e-14, 1e-14)
                .integrate(new ExpandableODE(ode), new ODEState(0, start.clone()), end)
                .getPrimaryState();
    }

    private static Equations lotkaVolterra() {
        return equations(2, (t, y, dy) -> {
            dy[0] = y[0] * (2.0 / 3 - 4.0 / 3 * y[1]);
            dy[1] = y[1] * (y[0] - 1);
        });
    }

    private static Equations kepler() {
        return equations(4, (t, y, dy) -> {
            double cube = Math.pow(y[0] * y[0] + y[1] * y[1], 1.5);
            dy[0] = y[2];
            dy[1] = y[3];
            dy[2] = -y[0] / cube;
            dy[3] = -y[1] / cube;
        });
    }

    private static Equations arenstorf() {
        double moon = 0.012277471;
        double earth = 1 - moon;
        return equations(4, (t, y, dy) -> {
            double fromEarth = Math.pow((y[0] + moon) * (y[0] + moon) + y[1] * y[1], 1.5);
            double fromMoon = Math.pow((y[0] - earth) * (y[0] - earth) + y[1] * y[1], 1.5);
            dy[0] = y[2];
            dy[1] = y[3];
            dy[2] = y[0] + 2 * y[3] - earth * (y[0] + moon) / fromEarth - moon * (y[0] - earth) / fromMoon;
            dy[3] = y[1] - 2 * y[2] - earth * y[1] / fromEarth - moon * y[1] / fromMoon;
        });
    }

    private static Equations equations(int size, Problem.Right right) {
        return new Problem("", new double[size], 0, right, t -> new double[0]);
    }
}
