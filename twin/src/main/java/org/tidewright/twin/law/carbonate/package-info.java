/**
 * Lime, limewater and carbon dioxide as the twin needs them: how fast they move and how much there is. Pure functions
 * over {@link org.tidewright.seawater.carbonate}.
 *
 * <p>To add one, write a final class with its formula, source and range, and a test against numbers from outside.
 */
@NullMarked
package org.tidewright.twin.law.carbonate;

import org.jspecify.annotations.NullMarked;
