/**
 * Ways oxygen and carbon dioxide take between water and air: through the surface, off bubbles, over a fall.
 *
 * <p>To add one, implement {@link org.tidewright.twin.contract.Mechanism} over a law of {@code
 * org.tidewright.twin.law.gas} and assemble it in {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.gas;

import org.jspecify.annotations.NullMarked;
