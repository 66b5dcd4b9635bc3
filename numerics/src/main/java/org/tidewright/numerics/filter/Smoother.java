package org.tidewright.numerics.filter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * What is believed of each time in the light of all measurements, earlier and later ones.
 *
 * <p>Rauch, Tung and Striebel 1965, AIAA J. 3, 1445-1450.
 */
public final class Smoother {
    private Smoother() {}

    /** One belief for each passage of a filter, in their order. */
    public static List<Belief> smooth(LinearFilter filter) {
        List<LinearFilter.Step> steps = filter.steps();
        List<Belief> smoothed = new ArrayList<>(steps.size());
        Belief later = filter.belief();
        for (int i = steps.size() - 1; i >= 0; i--) {
            LinearFilter.Step step = steps.get(i);
            if (i < steps.size() - 1) {
                later = back(step.filtered(), steps.get(i + 1), later);
            }
            smoothed.add(later);
        }
        Collections.reverse(smoothed);
        return smoothed;
    }

    private static Belief back(Belief filtered, LinearFilter.Step next, Belief later) {
        // A state that cannot move makes the predicted covariance singular: take the least of all solutions.
        RealMatrix inverse = new SingularValueDecomposition(next.predicted().covariance())
                .getSolver()
                .getInverse();
        RealMatrix gain = filtered.covariance()
                .multiplyTransposed(next.passage().matrix())
                .multiply(inverse);
        RealMatrix covariance = filtered.covariance()
                .add(gain.multiply(later.covariance().subtract(next.predicted().covariance()))
                        .multiplyTransposed(gain));
        return new Belief(
                filtered.mean()
                        .add(gain.operate(later.mean().subtract(next.predicted().mean()))),
                Symmetry.of(covariance));
    }
}
