/**
 * Assembles bodies and mechanisms into a {@link org.tidewright.twin.run.Network} and runs it: the stepper lands on every
 * event, the ledger says how far each stock is from conserved.
 *
 * <p>Knows no single mechanism. To change stepping itself, see {@code org.tidewright.numerics.ode}.
 */
@NullMarked
package org.tidewright.twin.run;

import org.jspecify.annotations.NullMarked;
