/**
 * The commands, one class each. A command reads its arguments, calls husbandry and prints; it computes nothing. Its help
 * teaches by example and is its manual page.
 *
 * <p>Exit codes are the same for all: {@link org.tidewright.app.cli.ExitCode}.
 */
@NullMarked
package org.tidewright.app.cli;

import org.jspecify.annotations.NullMarked;
