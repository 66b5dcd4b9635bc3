/**
 * Quantities in time as SVG: band, middle curve, limits with ticks on their forbidden side, crossings. Positions along
 * time are per cent and heights are pixels, so one drawing fits every width and its text is never stretched; only the
 * curves lie in a box that stretches.
 *
 * <p>{@link org.tidewright.web.chart.AirChart} is the one chart without time: pH over alkalinity.
 *
 * <p>Uses {@link org.tidewright.web.drawing.SvgWriter}. To add a chart, build its {@link
 * org.tidewright.web.chart.Curve} and give it to {@link org.tidewright.web.chart.TraceChart}; every chart also has {@link
 * org.tidewright.web.chart.CurveTable}, for who would rather read it.
 */
@NullMarked
package org.tidewright.web.chart;

import org.jspecify.annotations.NullMarked;
