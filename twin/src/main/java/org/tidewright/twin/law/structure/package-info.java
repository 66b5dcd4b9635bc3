/**
 * Laws of the glass and of the load on the floor: bending of rectangular panes under water and the weight of a filled
 * system. Estimates for comparison; the maker's table decides on a pane, a structural engineer on a floor.
 *
 * <p>May use {@code org.tidewright.seawater} for units and refusals, and the JDK. Linear thin-plate theory of glass
 * only: acrylic creeps and does not belong here.
 *
 * <p>To add a law: one file named for the thing, refusals that name value, unit and range, the formula and its
 * {@code @source} in the comment, and a test against a handbook's table.
 */
@NullMarked
package org.tidewright.twin.law.structure;

import org.jspecify.annotations.NullMarked;
