/**
 * What can be known of a state that moves and is measured with errors: the Kalman filter forward in time, hindsight back
 * again, and the likelihood that tells which noise fits.
 *
 * <p>Nothing here knows of water. States are plain arrays; times between measurements may be anything. Matrices are dense
 * and small, and mostly 0, which is passed over. A kind of state more (a cycle, a season) is a case of {@link
 * org.tidewright.numerics.filter.StructuralModel}, with its closed form in the doc comment and, in its test, two short
 * passages that make one long one.
 */
@NullMarked
package org.tidewright.numerics.filter;

import org.jspecify.annotations.NullMarked;
