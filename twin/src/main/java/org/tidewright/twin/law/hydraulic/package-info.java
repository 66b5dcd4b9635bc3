/**
 * Laws of water in vessels and pipes: weirs, pipe friction, local losses, pumps, manifolds, drains, siphons and what runs
 * back when the power fails. Pure functions and small immutable records on plain SI numbers; heights are upward, heads
 * over a crest from the crest.
 *
 * <p>May use {@code org.tidewright.seawater} for units and refusals, {@code org.tidewright.numerics.root} and the JDK;
 * knows no plan, no state and no clock, so a mechanism, a page and a test can all call the same law. Kinematic viscosity is always an argument: the caller knows its water.
 *
 * <p>To add a law: one file named for the thing, a constructor that refuses nonsense through {@link
 * org.tidewright.seawater.range.Bounds}, a doc comment with the formula as printed and its {@code @source}, and a
 * test against numbers from outside the project. What is called inside a time step must not allocate.
 */
@NullMarked
package org.tidewright.twin.law.hydraulic;

import org.jspecify.annotations.NullMarked;
