/**
 * What advice is made of: sentences with numbers in them, the numbers' doubt and sources, cautions, and how far a thing
 * is from its limit. The command line, the pages and the JSON output render these same objects.
 *
 * <p>Values are in coherent units; the reader's units enter in {@link org.tidewright.husbandry.advice.FigureText} alone.
 * To show a new kind of quantity, add it to {@link org.tidewright.husbandry.advice.Measure}.
 */
@NullMarked
package org.tidewright.husbandry.advice;

import org.jspecify.annotations.NullMarked;
