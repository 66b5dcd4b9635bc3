/**
 * Many runs of one network with its uncertain parameters drawn from their distributions.
 *
 * <p>Knows no mechanism. What is asked of the draws is decided by {@code org.tidewright.twin.rehearsal}.
 */
@NullMarked
package org.tidewright.twin.ensemble;

import org.jspecify.annotations.NullMarked;
