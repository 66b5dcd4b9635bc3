package org.tidewright.numerics.ode;

import java.util.List;

/**
 * Additive Runge-Kutta stepper for equations of which only a linear exchange is stiff: that part is taken implicitly, all
 * else explicitly. Of order 3, with four slopes a step, for runs that must stop often; of order 4, with six, for close
 * tolerances.
 *
 * <p>Kennedy and Carpenter 2003, Appl. Numer. Math. 44, 139-181, ARK3(2)4L[2]SA and ARK4(3)6L[2]SA. Crossings are located on
 * the dense output, of order 2. What the right-hand side conserves linearly is conserved to rounding.
 *
 * <p>The tolerance holds for what the exchange leaves alone: totals, and courses slow beside it. Differences between strongly
 * exchanging bodies may be off by more: with exchange a thousand times as quick as all else, a relative tolerance of 1e-6
 * has left 2e-3 of a forced difference at order 3 and 5e-6 at order 4. Where such a difference matters, take
 * {@link DormandPrince}.
 *
 * <p>Same calls, same result, bit for bit. One object serves one thread. Nothing is allocated per step.
 */
public final class AdditiveRungeKutta implements Stepper {
    private final AdaptiveStepper stepper;

    private AdditiveRungeKutta(AdditiveTableau tableau, SplitEquations equations, Tolerance tolerance) {
        stepper = new AdaptiveStepper(equations, tolerance, new AdditiveStages(tableau, equations, tolerance));
    }

    /**
     * A stepper of order 3.
     *
     * @param equations their size and what they exchange must not change; their settings may, between advances
     * @param tolerance with as many absolute parts as there are states
     */
    public static AdditiveRungeKutta ofOrder3(SplitEquations equations, Tolerance tolerance) {
        return new AdditiveRungeKutta(AdditiveTableau.ORDER_3, equations, tolerance);
    }

    /**
     * A stepper of order 4.
     *
     * @param equations as {@link #ofOrder3}
     * @param tolerance as {@link #ofOrder3}
     */
    public static AdditiveRungeKutta ofOrder4(SplitEquations equations, Tolerance tolerance) {
        return new AdditiveRungeKutta(AdditiveTableau.ORDER_4, equations, tolerance);
    }

    @Override
    public Stop advance(double time, double[] state, double end, List<? extends Guard> guards, StepListener listener) {
        return stepper.advance(time, state, end, guards, listener);
    }

    @Override
    public double suggestedStep() {
        return stepper.suggestedStep();
    }

    @Override
    public void suggestStep(double step) {
        stepper.suggestStep(step);
    }

    /** Advances by equal steps whatever their error, to show the order of the method. */
    void advanceInEqualSteps(double time, double[] state, double end, int steps, StepListener listener) {
        stepper.advanceInEqualSteps(time, state, end, steps, listener);
    }
}
