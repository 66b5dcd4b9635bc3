/**
 * Pictures in the database, named by what is in them.
 *
 * <p>They are known by their first bytes, not by what a sender calls them: to accept one more kind of file, add it to {@link
 * org.tidewright.husbandry.journal.PictureKind} and a script that widens the check of the table.
 */
@NullMarked
package org.tidewright.store.photo;

import org.jspecify.annotations.NullMarked;
