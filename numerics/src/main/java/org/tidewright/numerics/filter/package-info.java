/**
 * What can be known of a state that moves and is measured with errors: the Kalman filter forward in time, the smoother back
 * again, and the likelihood that tells which noise fits.
 *
 * <p>Nothing here knows of water. States are plain arrays; times between measurements may be anything.
 */
@NullMarked
package org.tidewright.numerics.filter;

import org.jspecify.annotations.NullMarked;
