/**
 * Smooth quantities in space, known at some places: what to expect between them, and how sure that is.
 *
 * <p>Uses the matrices of Hipparchus and nothing else of the project. To add a kind of smoothness, write a {@link
 * org.tidewright.numerics.field.Covariance}; it must be positive definite, which a test of random places shows.
 */
@NullMarked
package org.tidewright.numerics.field;

import org.jspecify.annotations.NullMarked;
