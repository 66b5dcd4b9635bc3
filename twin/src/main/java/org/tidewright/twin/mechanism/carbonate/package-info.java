/**
 * Lime that is laid down, falls out and is dissolved again. Built on the laws of {@link
 * org.tidewright.twin.law.carbonate}; that alkalinity falls by two where a calcium leaves follows from its recipe.
 *
 * <p>To add one, write a class that implements {@link org.tidewright.twin.contract.Mechanism}, makes its recipe once and
 * runs it at the law's rate, and give it its bodies in {@code org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.mechanism.carbonate;

import org.jspecify.annotations.NullMarked;
