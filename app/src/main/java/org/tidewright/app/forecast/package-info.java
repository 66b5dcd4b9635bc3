/**
 * A forecast as a file or a picture: CSV, a plot of characters, SVG and PNG. Everything here is a pure function of a {@link
 * org.tidewright.husbandry.forecast.ForecastReport}; the command writes what comes of it.
 *
 * <p>To add a form, add a class that turns a report into text or bytes and an option to the command.
 */
@NullMarked
package org.tidewright.app.forecast;

import org.jspecify.annotations.NullMarked;
