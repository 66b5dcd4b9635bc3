/**
 * Plans on disk: one folder, a folder in it for each system, a file for each revision. A revision is written once and
 * never changed.
 *
 * <p>Uses the file system alone; whether a text is a plan is decided by those who call. To keep something else beside the
 * plans, give it a file name of its own that no revision can have.
 */
@NullMarked
package org.tidewright.app.plans;

import org.jspecify.annotations.NullMarked;
