/**
 * The pages: a server that shows systems, their checks and rehearsals, and lets the keeper change the plan. Everything it
 * shows comes through the port {@link org.tidewright.web.desk.Desk}; it computes nothing and stores nothing.
 *
 * <p>{@link org.tidewright.web.WebServer} starts it. Only this module and the program's own may use the HTTP library.
 */
@NullMarked
package org.tidewright.web;

import org.jspecify.annotations.NullMarked;
