/**
 * The complete twin of a plan: its water, air and heat, its chemistry, what lives in it and how it is run, put together
 * from {@link org.tidewright.twin.tank} and {@link org.tidewright.twin.mechanism} into one network that loses nothing.
 *
 * <p>{@link org.tidewright.twin.system.SystemTwin} is the way in. Each of the other classes adds one subject to the
 * network: to add a mechanism, find its subject here, declare its bodies and parameters there with their sources, and let
 * {@link org.tidewright.twin.system.FirstState} fill them. What a keeper or a failure may change while it runs is a
 * setting of {@link org.tidewright.twin.system.Levers}.
 */
@NullMarked
package org.tidewright.twin.system;

import org.jspecify.annotations.NullMarked;
