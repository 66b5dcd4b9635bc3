/**
 * Ordinary differential equations with located events: the right-hand side ({@link
 * org.tidewright.numerics.ode.Equations}), a guard whose sign change must be landed on ({@link
 * org.tidewright.numerics.ode.Guard}) and the steppers.
 *
 * <p>Knows nothing of water. To add a stepper, give it the {@code advance} of {@link
 * org.tidewright.numerics.ode.DormandPrince} and a convergence test against a problem with a closed form.
 */
@NullMarked
package org.tidewright.numerics.ode;

import org.jspecify.annotations.NullMarked;
