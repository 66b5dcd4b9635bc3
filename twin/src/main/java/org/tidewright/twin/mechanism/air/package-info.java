/**
 * The air of the room: its vapour, its carbon dioxide, who breathes in it and how it is changed; the weather. Built on the laws of
 * {@link org.tidewright.twin.law.heat} and {@link org.tidewright.twin.law.carbonate}.
 *
 * <p>To add one, write a record that implements {@link org.tidewright.twin.contract.Mechanism} and give it its bodies in
 * {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.air;

import org.jspecify.annotations.NullMarked;
