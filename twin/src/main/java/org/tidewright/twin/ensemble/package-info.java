/**
 * Many runs of one network with its uncertain parameters drawn from their distributions.
 *
 * <p>Knows no mechanism. What is asked of the draws is decided by {@code org.tidewright.twin.rehearsal}.
 *
 * <p>Uses seeded draws by name from {@code org.tidewright.numerics.sample}; a parameter's distribution is its own {@link
 * org.tidewright.twin.contract.Parameter#at}.
 */
@NullMarked
package org.tidewright.twin.ensemble;

import org.jspecify.annotations.NullMarked;
