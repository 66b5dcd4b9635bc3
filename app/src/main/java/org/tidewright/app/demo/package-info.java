/**
 * What the demo shows beside the example plans: an invented log, made by the twin of the plan and read off with the errors of
 * test kits. It says so in its first line.
 *
 * <p>{@link org.tidewright.app.demo.DemoJournal} holds the whole scenario: to show one more thing, let it happen there.
 */
@NullMarked
package org.tidewright.app.demo;

import org.jspecify.annotations.NullMarked;
