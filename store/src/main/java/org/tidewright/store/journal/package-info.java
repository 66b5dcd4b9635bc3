/**
 * Journals in SQL: a row of {@code line} for each revision of a line, and a row with its event in the table of its kind.
 *
 * <p>Speaks SQL through {@link org.tidewright.store.database.Sql} and knows nothing of files. To keep one more kind of event,
 * add its table in a further script of the schema, and its columns in {@code EventTables}, which does not compile without
 * them; the tests' {@code Events} ask for an example.
 */
@NullMarked
package org.tidewright.store.journal;

import org.jspecify.annotations.NullMarked;
