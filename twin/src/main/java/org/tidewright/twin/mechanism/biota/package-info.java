/**
 * What lives: fish, corals, algae, and what becomes of the dead. Built on the laws of {@link
 * org.tidewright.twin.law.biota}, {@link org.tidewright.twin.law.nutrient} and {@link org.tidewright.twin.law.light}.
 *
 * <p>To add one, write a class that implements {@link org.tidewright.twin.contract.Mechanism}, makes its recipes once and
 * runs them at the law's rate, and give it its bodies in {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.biota;

import org.jspecify.annotations.NullMarked;
