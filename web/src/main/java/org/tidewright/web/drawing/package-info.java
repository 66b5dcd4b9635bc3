/**
 * A system cut open and drawn to scale as SVG, from its plan. One unit of the drawing is a millimetre and y runs up from
 * the finished floor (SVG's y is its negative), so the plan's numbers are the coordinates; only labels move for looks.
 *
 * <p>{@link org.tidewright.web.drawing.SectionLayout} says where everything stands, {@link
 * org.tidewright.web.drawing.PipeRoutes} how the pipes run, and one small class draws each kind of thing. Water that may
 * move carries data attributes, which drawing.js sets from the samples in {@link org.tidewright.web.drawing.WaterScript}.
 *
 * <p>To draw one more kind of thing, give it a place in the layout (the tests then see that it overlaps nothing), write a
 * class for its shape and call it from {@link org.tidewright.web.drawing.SectionDrawing}. No style attributes: the pages
 * forbid them; use classes of drawing.css or presentation attributes.
 */
@NullMarked
package org.tidewright.web.drawing;

import org.jspecify.annotations.NullMarked;
