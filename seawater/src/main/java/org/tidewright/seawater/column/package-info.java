/**
 * Laws of seawater over whole columns of numbers: a day of an instrument's readings in one call.
 *
 * <p>May use {@code unit}. Nothing here knows a law: any function of one or two numbers fits as it is, {@code
 * Columns.fill(Teos10::density, temperatures, salinities, densities)}, or closed over what stays the same, {@code
 * Columns.fill(t -> Teos10.density(t, 35), temperatures, densities)}. To add a form of more columns, give it an
 * interface like {@link org.tidewright.seawater.column.Law} and a {@code fill} of its own.
 */
@NullMarked
package org.tidewright.seawater.column;

import org.jspecify.annotations.NullMarked;
