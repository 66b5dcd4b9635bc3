/**
 * Where devices draw their power when the mains have failed: a battery that runs empty and is charged again, a generator that somebody starts.
 *
 * <p>To add a supply, give {@link org.tidewright.twin.mechanism.power.Supply} another source and assemble it in {@code
 * org.tidewright.twin.tank.PowerSupplies}.
 */
@NullMarked
package org.tidewright.twin.mechanism.power;

import org.jspecify.annotations.NullMarked;
