/**
 * Rehearsals: runs of the twin from its usual state with something broken, and what they found. Pure: from a plan and an
 * order to a result.
 *
 * <p>To add a rehearsal, describe its order and its result as records here and assemble its run from {@code
 * org.tidewright.twin.tank} for minutes of water, {@code org.tidewright.twin.system} for hours of everything.
 */
@NullMarked
package org.tidewright.twin.rehearsal;

import org.jspecify.annotations.NullMarked;
