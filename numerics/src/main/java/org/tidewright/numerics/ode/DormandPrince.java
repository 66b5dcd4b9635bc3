package org.tidewright.numerics.ode;

import java.util.List;

/**
 * Explicit Runge-Kutta stepper of order 5 with an error estimate of order 4, for equations that are not stiff.
 *
 * <p>Dormand and Prince 1980, J. Comput. Appl. Math. 6, 19-26; step choice, first step and dense output after the code
 * DOPRI5 (Hairer, Nørsett and Wanner 1993, Solving Ordinary Differential Equations I, sections II.4-II.6). Crossings are
 * located on the dense output by {@link org.tidewright.numerics.root.Bracketed}, to 1e-12 or closer as far as the digits
 * of time allow. What the right-hand side conserves linearly is conserved to rounding.
 *
 * <p>Same calls, same result, bit for bit. One object serves one thread. Nothing is allocated per step.
 */
public final class DormandPrince implements Stepper {
    private final AdaptiveStepper stepper;

    /**
     * A stepper for the given equations.
     *
     * @param equations their size must not change; their settings may, between advances
     * @param tolerance with as many absolute parts as there are states
     */
    public DormandPrince(Equations equations, Tolerance tolerance) {
        stepper = new AdaptiveStepper(equations, tolerance, new ExplicitTrial(equations, tolerance));
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
