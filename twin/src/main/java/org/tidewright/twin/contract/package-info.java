/**
 * What a mechanism of the twin may see and do. A mechanism declares the bodies, parameters and settings it uses, reads
 * the present through a {@link org.tidewright.twin.contract.View} and moves {@linkplain
 * org.tidewright.twin.contract.Stock stocks} between bodies through {@link org.tidewright.twin.contract.Transfers}. It
 * never sets a state: every transfer has two ends and every {@linkplain org.tidewright.twin.contract.Recipe reaction}
 * balances, so nothing can be made or lost.
 *
 * <p>To add a mechanism, implement {@link org.tidewright.twin.contract.Mechanism} in {@code
 * org.tidewright.twin.mechanism} and give it its bodies in {@code org.tidewright.twin.tank}.
 */
@NullMarked
package org.tidewright.twin.contract;

import org.jspecify.annotations.NullMarked;
