package org.tidewright.numerics.filter;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The Kalman filter: carries a belief forward through passages and sharpens it by measurements, one number at a time. It
 * keeps what the {@link Smoother} needs to go back.
 *
 * <p>Kalman 1960, J. Basic Eng. 82, 35-45. The covariance is updated in Joseph's form, which stays positive whatever the
 * rounding (Bucy and Joseph 1968, Filtering for Stochastic Processes with Applications to Guidance).
 */
public final class LinearFilter {
    private Belief belief;
    private double logLikelihood;
    private final List<Step> steps = new ArrayList<>();

    /**
     * One time at which something was believed.
     *
     * @param passage that led here
     * @param predicted before the measurements of this time
     * @param filtered after them
     */
    record Step(Passage passage, Belief predicted, Belief filtered) {}

    public LinearFilter(Belief start) {
        belief = start;
    }

    /** Moves on in time. */
    public void pass(Passage passage) {
        belief = passage.carry(belief);
        steps.add(new Step(passage, belief, belief));
    }

    /** How far a measurement stands from what is to be expected; nothing is learnt yet. */
    public Innovation expect(Measurement measurement) {
        return measurement.against(belief);
    }

    /** Learns from a measurement of the present. */
    public Innovation learn(Measurement measurement) {
        Innovation innovation = measurement.against(belief);
        RealVector row = measurement.row();
        RealVector gain = belief.covariance().operate(row).mapDivide(innovation.variance());
        RealVector mean = belief.mean().add(gain.mapMultiply(innovation.value()));
        RealMatrix kept =
                MatrixUtils.createRealIdentityMatrix(mean.getDimension()).subtract(gain.outerProduct(row));
        RealMatrix covariance = kept.multiply(belief.covariance())
                .multiplyTransposed(kept)
                .add(gain.outerProduct(gain).scalarMultiply(measurement.variance()));
        belief = new Belief(mean, Symmetry.of(covariance));
        logLikelihood += innovation.logLikelihood();
        if (!steps.isEmpty()) {
            Step last = steps.remove(steps.size() - 1);
            steps.add(new Step(last.passage(), last.predicted(), belief));
        }
        return innovation;
    }

    /** What is believed now. */
    public Belief belief() {
        return belief;
    }

    /** Logarithm of the density of all that was learnt. */
    public double logLikelihood() {
        return logLikelihood;
    }

    List<Step> steps() {
        return steps;
    }
}
