/**
 * One folder with everything of a keeper: the plans as files, the journal of all systems in one database file beside them.
 *
 * <p>Whoever wants to keep one more kind of thing puts it into the store, and hands out its port here.
 */
@NullMarked
package org.tidewright.app.folder;

import org.jspecify.annotations.NullMarked;
