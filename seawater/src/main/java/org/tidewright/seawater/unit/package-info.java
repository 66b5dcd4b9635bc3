/**
 * The mark that states a number's unit, conversions between scales, and constants that are exact by definition.
 *
 * <p>May use nothing but the JDK. To add a unit annotation, write the text as {@link Unit} describes.
 * A constant of physics that several topics share lives here too, with its source.
 */
@NullMarked
package org.tidewright.seawater.unit;

import org.jspecify.annotations.NullMarked;
