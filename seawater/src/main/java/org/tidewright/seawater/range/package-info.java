/**
 * What a function accepts and what its source stands for: {@link org.tidewright.seawater.range.Bounds} refuses nonsense
 * (a temperature in kelvin, a salinity in mg/kg, NaN), {@link org.tidewright.seawater.range.FittedRange} says where the
 * measurements behind a formula lie. Outside the fit a function still answers, smoothly; the caller asks the range
 * whether to show a caution.
 *
 * <p>May use only {@code unit}. To add a refusal for a new kind of number, give it a method in {@code Bounds} with the
 * limits written beside it and the slip that is likely.
 */
@NullMarked
package org.tidewright.seawater.range;

import org.jspecify.annotations.NullMarked;
