/**
 * One folder with everything of a keeper.
 *
 * <p>The plans stand as files, the journal of all systems in one database file beside them. Whoever wants to keep one more kind of
 * thing puts it into the store, and hands out its port in {@link org.tidewright.app.folder.KeptFolder}. What is refused before it
 * is opened leaves no folder behind.
 */
@NullMarked
package org.tidewright.app.folder;

import org.jspecify.annotations.NullMarked;
