/**
 * From a plan to bodies and mechanisms: {@link org.tidewright.twin.tank.Vessels} turns the plan's geometry into shapes,
 * {@link org.tidewright.twin.tank.RunningState} finds the levels and flows while all runs, {@link
 * org.tidewright.twin.tank.Plumbing} assembles the water's ways in the minutes of a power cut, and {@link
 * org.tidewright.twin.tank.Basins} and {@link org.tidewright.twin.tank.PowerSupplies} serve the complete twin.
 *
 * <p>To change how a part of the plan becomes part of the twin, change the class named for it here.
 */
@NullMarked
package org.tidewright.twin.tank;

import org.jspecify.annotations.NullMarked;
