/**
 * What the demo shows beside the example plans: an invented log, made by the twin of the plan and read off with the errors of
 * test kits. It says so in its first line.
 */
@NullMarked
package org.tidewright.app.demo;

import org.jspecify.annotations.NullMarked;
