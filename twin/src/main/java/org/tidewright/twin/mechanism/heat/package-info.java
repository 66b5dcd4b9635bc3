/**
 * Ways heat takes: through panes and lids, off the open surface with and without evaporation, between room and outdoors,
 * from devices and heaters.
 *
 * <p>To add one, implement {@link org.tidewright.twin.contract.Mechanism} over a law of {@code
 * org.tidewright.twin.law.heat} and assemble it in {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.heat;

import org.jspecify.annotations.NullMarked;
