package org.tidewright.numerics.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.filtering.kalman.linear.LinearProcess;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** The filter and the smoother against worked figures, other code, and the normal distribution itself. */
class LinearFilterTest {
    /**
     * Alkalinity and its daily use, worked in the project's handbook, example 3.1, to half of the last printed digit: level
     * 8.0, use 0.60, doses 0.50 a day, tests with a standard error of 0.2.
     */
    @Test
    void followsTheWorkedExampleOfALevelAndItsUse() {
        LinearFilter filter = new LinearFilter(Belief.independent(new double[] {8.0, 0.60}, new double[] {0.2, 0.3}));
        double[][] days = {{1, 7.95}, {2, 7.80}, {4, 7.75}, {7, 7.30}};
        double[][] expected = {
            {0.0500, 0.1728, 7.9384, 0.5738, 0.1753, 0.2087},
            {-0.0646, 0.1590, 7.8163, 0.6002, 0.1730, 0.1339},
            {0.1342, 0.2144, 7.7250, 0.5664, 0.1804, 0.0783},
            {-0.2257, 0.2037, 7.3443, 0.6024, 0.1793, 0.0603}
        };
        double before = 0;
        for (int i = 0; i < days.length; i++) {
            double span = days[i][0] - before;
            before = days[i][0];
            filter.pass(levelAndUse(span, 0.50, 0.05 * 0.05, 0.03 * 0.03));
            Innovation innovation = filter.learn(new Measurement(days[i][1], new double[] {1, 0}, 0.2 * 0.2));
            double[] found = {
                innovation.value(),
                innovation.variance(),
                filter.belief().mean(0),
                filter.belief().mean(1),
                filter.belief().standardError(0),
                filter.belief().standardError(1)
            };
            assertThat(found).as("day " + before).containsExactly(expected[i], within(5e-5));
        }
    }

    @Test
    void agreesWithTheFilterOfAnotherCode() {
        SeededCases.check(30, draw -> {
            RealMatrix noise = covariance(draw, 3, 0.3);
            RealMatrix matrix = matrix(draw, 3);
            Belief start =
                    new Belief(new double[] {1, -1, 0.5}, covariance(draw, 3, 1).getData());
            RealVector row = vector(draw.between(-1, 1), draw.between(-1, 1), 1);
            List<org.hipparchus.filtering.kalman.Measurement> theirs = new ArrayList<>();
            LinearFilter filter = new LinearFilter(start);
            Passage passage = new Passage(matrix.getData(), new double[] {0.1, 0, -0.2}, noise.getData());
            for (int i = 0; i < 12; i++) {
                double value = draw.between(-2, 2);
                theirs.add(new TheirMeasurement(i, value));
                filter.pass(passage);
                filter.learn(new Measurement(value, row.toArray(), 0.09));
            }
            LinearKalmanFilter<org.hipparchus.filtering.kalman.Measurement> other = new LinearKalmanFilter<>(
                    new CholeskyDecomposer(1e-15, 1e-15),
                    (LinearProcess<org.hipparchus.filtering.kalman.Measurement>) measurement -> new LinearEvolution(
                            matrix,
                            MatrixUtils.createRealIdentityMatrix(3),
                            vector(passage.input()),
                            noise,
                            MatrixUtils.createRowRealMatrix(row.toArray())),
                    new ProcessEstimate(-1, vector(start.mean()), square(start.covariance())));
            for (org.hipparchus.filtering.kalman.Measurement measurement : theirs) {
                other.estimationStep(measurement);
            }
            ProcessEstimate last = other.getCorrected();
            assertThat(vector(filter.belief().mean()).getDistance(last.getState()))
                    .isLessThan(1e-10);
            assertThat(square(filter.belief().covariance())
                            .subtract(last.getCovariance())
                            .getNorm1())
                    .isLessThan(1e-10);
        });
    }

    private record TheirMeasurement(double time, double number) implements org.hipparchus.filtering.kalman.Measurement {
        @Override
        public double getTime() {
            return time;
        }

        @Override
        public RealVector getValue() {
            return vector(number);
        }

        @Override
        public RealMatrix getCovariance() {
            return MatrixUtils.createRealDiagonalMatrix(new double[] {0.09});
        }
    }

    /**
     * All times and measurements of a small case are one normal vector: conditioning it at once, by the textbook formula
     * (Anderson 1984, An Introduction to Multivariate Statistical Analysis, section 2.5), must give what filter and
     * smoother give step by step, and its density their likelihood.
     */
    @Test
    void filterAndSmootherTogetherAreTheConditionalNormalDistribution() {
        SeededCases.check(20, draw -> {
            int times = 5;
            Belief start = new Belief(
                    new double[] {draw.between(-1, 1), draw.between(-1, 1)},
                    covariance(draw, 2, 1).getData());
            List<Passage> passages = new ArrayList<>();
            List<RealMatrix> matrices = new ArrayList<>();
            List<Measurement> measurements = new ArrayList<>();
            LinearFilter filter = new LinearFilter(start);
            for (int i = 0; i < times; i++) {
                RealMatrix moving = matrix(draw, 2);
                matrices.add(moving);
                Passage passage = new Passage(
                        moving.getData(),
                        new double[] {draw.between(-1, 1), 0},
                        covariance(draw, 2, 0.5).getData());
                Measurement measurement =
                        new Measurement(draw.between(-2, 2), new double[] {1, draw.between(-1, 1)}, 0.3);
                passages.add(passage);
                measurements.add(measurement);
                filter.pass(passage);
                filter.learn(measurement);
            }
            // Mean and covariance of all states, one time after the other.
            RealVector mean = MatrixUtils.createRealVector(new double[2 * times]);
            RealMatrix all = MatrixUtils.createRealMatrix(2 * times, 2 * times);
            RealVector now = vector(start.mean());
            RealMatrix spread = square(start.covariance());
            for (int i = 0; i < times; i++) {
                Passage passage = passages.get(i);
                RealMatrix matrix = matrices.get(i);
                now = matrix.operate(now).add(vector(passage.input()));
                spread = matrix.multiply(spread).multiplyTransposed(matrix).add(square(passage.noise()));
                mean.setSubVector(2 * i, now);
                RealMatrix across = spread;
                all.setSubMatrix(across.getData(), 2 * i, 2 * i);
                for (int j = i + 1; j < times; j++) {
                    across = matrices.get(j).multiply(across);
                    all.setSubMatrix(across.getData(), 2 * j, 2 * i);
                    all.setSubMatrix(across.transpose().getData(), 2 * i, 2 * j);
                }
            }
            RealMatrix rows = MatrixUtils.createRealMatrix(times, 2 * times);
            RealVector values = MatrixUtils.createRealVector(new double[times]);
            RealMatrix errors = MatrixUtils.createRealMatrix(times, times);
            for (int i = 0; i < times; i++) {
                rows.setEntry(i, 2 * i, measurements.get(i).row()[0]);
                rows.setEntry(i, 2 * i + 1, measurements.get(i).row()[1]);
                values.setEntry(i, measurements.get(i).value());
                errors.setEntry(i, i, measurements.get(i).variance());
            }
            RealMatrix ofMeasurements =
                    rows.multiply(all).multiplyTransposed(rows).add(errors);
            RealVector surprise = values.subtract(rows.operate(mean));
            CholeskyDecomposition parts = new CholeskyDecomposition(ofMeasurements, 1e-12, 1e-12);
            RealMatrix gain =
                    all.multiplyTransposed(rows).multiply(parts.getSolver().getInverse());
            RealVector given = mean.add(gain.operate(surprise));
            RealMatrix left = all.subtract(gain.multiply(rows).multiply(all));

            List<Belief> smoothed = Smoother.smooth(filter);
            assertThat(smoothed).hasSize(times);
            for (int i = 0; i < times; i++) {
                assertThat(vector(smoothed.get(i).mean()).getDistance(given.getSubVector(2 * i, 2)))
                        .isLessThan(1e-9);
                RealMatrix expected = left.getSubMatrix(2 * i, 2 * i + 1, 2 * i, 2 * i + 1);
                assertThat(square(smoothed.get(i).covariance())
                                .subtract(expected)
                                .getNorm1())
                        .isLessThan(1e-9);
            }
            double density = -0.5
                    * (times * Math.log(2 * Math.PI)
                            + Math.log(parts.getDeterminant())
                            + surprise.dotProduct(parts.getSolver().solve(surprise)));
            assertThat(filter.logLikelihood()).isCloseTo(density, within(1e-9));
        });
    }

    /** A random walk measured each day: in the end its variance is the root of p² = q (p + r). */
    @Test
    void theErrorOfARandomWalkComesToRestWhereItsQuadraticEquationSays() {
        double q = 0.04;
        double r = 0.25;
        LinearFilter filter = new LinearFilter(Belief.independent(new double[] {0}, new double[] {3}));
        Passage day = new Passage(new double[][] {{1}}, new double[] {0}, new double[][] {{q}});
        for (int i = 0; i < 200; i++) {
            filter.pass(day);
            filter.learn(new Measurement(Math.sin(i), new double[] {1}, r));
        }
        double predicted = (q + Math.sqrt(q * q + 4 * q * r)) / 2;
        double rest = predicted * r / (predicted + r);
        assertThat(filter.belief().covariance()[0][0]).isCloseTo(rest, within(1e-12));
    }

    private static Passage levelAndUse(double days, double dosed, double ofLevel, double ofUse) {
        double cubed = days * days * days;
        return new Passage(new double[][] {{1, -days}, {0, 1}}, new double[] {dosed * days, 0}, new double[][] {
            {ofLevel * days + ofUse * cubed / 3, -ofUse * days * days / 2},
            {-ofUse * days * days / 2, ofUse * days}
        });
    }

    private static RealVector vector(double... values) {
        return MatrixUtils.createRealVector(values);
    }

    private static RealMatrix square(double[][] values) {
        return MatrixUtils.createRealMatrix(values);
    }

    private static RealMatrix matrix(Draw draw, int size) {
        RealMatrix matrix = MatrixUtils.createRealIdentityMatrix(size).scalarMultiply(0.8);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                matrix.addToEntry(i, j, draw.between(-0.2, 0.2));
            }
        }
        return matrix;
    }

    private static RealMatrix covariance(Draw draw, int size, double scale) {
        RealMatrix root = matrix(draw, size);
        return root.multiplyTransposed(root).scalarMultiply(scale);
    }
}
