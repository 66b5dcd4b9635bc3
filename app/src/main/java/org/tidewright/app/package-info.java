/**
 * The running program: its entry and its wiring. Commands are in {@code cli}, one class each; the folder of plans in
 * {@code plans}; what the pages ask for in {@code desk}.
 *
 * <p>To add a command, write its class in {@code cli} and name it in {@link org.tidewright.app.Main}; its help text is the
 * manual page.
 */
@NullMarked
package org.tidewright.app;

import org.jspecify.annotations.NullMarked;
