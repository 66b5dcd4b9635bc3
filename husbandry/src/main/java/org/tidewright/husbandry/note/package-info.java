/**
 * A line of the journal as a keeper writes it in words: {@code alkalinity 8.1 dKH by photometer}. The command line and the
 * pages read the same grammar, {@code docs/formats/notes.md}.
 *
 * <p>To read one more kind of line, add its first word to {@link org.tidewright.husbandry.note.NoteText}.
 */
@NullMarked
package org.tidewright.husbandry.note;

import org.jspecify.annotations.NullMarked;
