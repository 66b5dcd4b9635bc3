/**
 * What is known of each quantity that a keeper tests, and what to do about it: level, use, how steady it was, the dose, and
 * until when to leave it alone. The pages, the command line and the JSON render these same objects.
 *
 * <p>{@link org.tidewright.husbandry.quantity.WaterStudy} joins what {@code estimate} believes with what {@code dosing} decides
 * and puts it into words; {@code ProbeReadings} chooses what of a probe is counted. To say something of one more kind of quantity, add it to
 * {@link org.tidewright.husbandry.quantity.Told}.
 */
@NullMarked
package org.tidewright.husbandry.quantity;

import org.jspecify.annotations.NullMarked;
