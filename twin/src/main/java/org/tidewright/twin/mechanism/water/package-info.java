/**
 * Ways the water takes between vessels: over weirs and baffles, down drains, through the return line both ways, over a
 * rim on to the floor. Each is one {@link org.tidewright.twin.mechanism.water.WaterWay} over a law of {@code
 * org.tidewright.twin.law.hydraulic}.
 *
 * <p>To add one, implement {@code flow} and assemble it in {@code org.tidewright.twin.tank.Plumbing}.
 */
@NullMarked
package org.tidewright.twin.mechanism.water;

import org.jspecify.annotations.NullMarked;
