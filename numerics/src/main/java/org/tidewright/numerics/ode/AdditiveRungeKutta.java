package org.tidewright.numerics.ode;

import java.util.List;

/**
 * Additive Runge-Kutta stepper of order 4 for equations of which only a linear exchange is stiff: that part is taken
 * implicitly, all else explicitly.
 *
 * <p>Kennedy and Carpenter 2003, Appl. Numer. Math. 44, 139-181, ARK4(3)6L[2]SA. Crossings are located on the dense output,
 * of order 2. What the right-hand side conserves linearly is conserved to rounding.
 *
 * <p>Same calls, same result, bit for bit. One object serves one thread. Nothing is allocated per step.
 */
public final class AdditiveRungeKutta implements Stepper {
    private final AdaptiveStepper stepper;

    /**
     * A stepper at rest.
     *
     * @param equations their size and what they exchange must not change; their settings may, between advances
     * @param tolerance with as many absolute parts as there are states
     */
    public AdditiveRungeKutta(SplitEquations equations, Tolerance tolerance) {
        stepper = new AdaptiveStepper(
                equations, tolerance, new AdditiveTrial(AdditiveTableau.KENNEDY_CARPENTER_4, equations, tolerance));
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
