/**
 * The running program: its command line, the wiring of the parts, and what the launcher needs.
 *
 * <p>May use every other module; nothing uses it. To add a command, write one class for it and name it in {@link
 * org.tidewright.app.Main}; its help text is also its manual page.
 */
@NullMarked
package org.tidewright.app;

import org.jspecify.annotations.NullMarked;
