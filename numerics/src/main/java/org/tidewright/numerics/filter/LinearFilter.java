package org.tidewright.numerics.filter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The Kalman filter: carries a belief forward through passages and sharpens it by measurements, one number at a time. It
 * keeps what is needed to go back: see {@link Hindsight}.
 *
 * <p>Kalman 1960, J. Basic Eng. 82, 35-45. Measurements that come together are learnt one after the other, which needs no
 * inverse (Durbin and Koopman 2012, Time Series Analysis by State Space Methods, section 6.4).
 */
public final class LinearFilter {
    private final double[] mean;
    private final double[][] covariance;
    private final boolean keeping;
    private final double[][] scratch;
    private final List<Moment> moments = new ArrayList<>();
    private double logLikelihood;

    /** One that keeps what it believed at every moment. */
    public LinearFilter(Belief start) {
        this(start, true);
    }

    /**
     * A filter.
     *
     * @param keeping whether it keeps what it believed at every moment, or only what is needed for likelihood and hindsight
     */
    public LinearFilter(Belief start, boolean keeping) {
        int size = start.mean().length;
        mean = start.mean().clone();
        covariance = copy(start.covariance());
        this.keeping = keeping;
        scratch = new double[size][size];
        moments.add(new Moment(Passage.none(size)));
    }

    /** Moves on in time. */
    public void pass(Passage passage) {
        if (keeping) {
            here().leave(belief());
        }
        passage.forth().move(mean, scratch[0]);
        passage.forth().moveBothWays(covariance, scratch);
        for (int i = 0; i < mean.length; i++) {
            mean[i] += passage.input()[i];
            Rows.add(1, passage.noise()[i], covariance[i]);
        }
        moments.add(new Moment(passage));
    }

    /** How far a measurement stands from what is to be expected; nothing is learnt yet. */
    public Innovation expect(Measurement measurement) {
        return new Innovation(
                measurement.value() - Rows.dot(measurement.row(), mean),
                Rows.quadratic(measurement.row(), covariance) + measurement.variance());
    }

    /** Learns from a measurement of the present. */
    public Innovation learn(Measurement measurement) {
        int size = mean.length;
        double[] seen = new double[size];
        Rows.multiply(measurement.row(), covariance, seen);
        Innovation innovation = new Innovation(
                measurement.value() - Rows.dot(measurement.row(), mean),
                Rows.dot(measurement.row(), seen) + measurement.variance());
        double[] gain = seen.clone();
        for (int i = 0; i < size; i++) {
            gain[i] /= innovation.variance();
            mean[i] += gain[i] * innovation.value();
            Rows.add(-gain[i], seen, covariance[i]);
        }
        logLikelihood += innovation.logLikelihood();
        here().add(new Lesson(measurement, innovation, gain));
        return innovation;
    }

    /** What is believed now. */
    public Belief belief() {
        return new Belief(mean.clone(), copy(covariance));
    }

    /** Logarithm of the density of all that was learnt. */
    public double logLikelihood() {
        return logLikelihood;
    }

    /** Where it stopped so far, the start first and the present last. */
    public List<Moment> moments() {
        here().leave(belief());
        return Collections.unmodifiableList(moments);
    }

    private Moment here() {
        return moments.get(moments.size() - 1);
    }

    private static double[][] copy(double[][] matrix) {
        double[][] copy = matrix.clone();
        for (int i = 0; i < copy.length; i++) {
            copy[i] = matrix[i].clone();
        }
        return copy;
    }
}
