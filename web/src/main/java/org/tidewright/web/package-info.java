/**
 * The pages: a server that shows systems, their checks and rehearsals, and lets the keeper change the plan. What it
 * shows of systems comes through the port {@link org.tidewright.web.desk.Desk}; it stores nothing, and computes nothing
 * itself: the water desk, which needs no system, asks the water sheet of {@code husbandry}.
 *
 * <p>{@link org.tidewright.web.WebServer} starts it. Only this module and the program's own may use the HTTP library.
 */
@NullMarked
package org.tidewright.web;

import org.jspecify.annotations.NullMarked;
