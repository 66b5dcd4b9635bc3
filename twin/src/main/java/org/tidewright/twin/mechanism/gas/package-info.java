/**
 * Ways oxygen takes: through the surface, off bubbles, into all that breathes.
 *
 * <p>To add one, implement {@link org.tidewright.twin.contract.Mechanism} over a law of {@code
 * org.tidewright.twin.law.gas} and assemble it in {@code org.tidewright.twin.tank.Climate}.
 */
@NullMarked
package org.tidewright.twin.mechanism.gas;

import org.jspecify.annotations.NullMarked;
