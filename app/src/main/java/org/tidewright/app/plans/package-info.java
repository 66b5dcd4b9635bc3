/**
 * Plans on disk: one folder, a folder in it for each system, a file for each revision. A revision is written once and
 * never changed.
 */
@NullMarked
package org.tidewright.app.plans;

import org.jspecify.annotations.NullMarked;
