/**
 * What the twin's tests run on: {@link org.tidewright.twin.TestPlans} reads known plans, {@link
 * org.tidewright.twin.RandomPlans} draws unknown ones.
 *
 * <p>To try another shape of system, let {@code RandomPlans} draw it: every property is then tried on it.
 */
@NullMarked
package org.tidewright.twin;

import org.jspecify.annotations.NullMarked;
