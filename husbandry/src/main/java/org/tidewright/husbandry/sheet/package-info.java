/**
 * The water sheet: everything the seawater library can say about a water of which a few numbers are known. The command
 * line and the water desk show it, and CSV files name their columns after it.
 *
 * <p>May use {@code seawater} and {@code plan.quantity}. To show one more number, give {@code SheetColumn} a constant;
 * to accept one more unit from a keeper, see {@code KnownText}.
 */
@NullMarked
package org.tidewright.husbandry.sheet;

import org.jspecify.annotations.NullMarked;
