/**
 * One SQLite file and how it is used: one connection that writes, several that read, each call a transaction of its own.
 *
 * <p>What only SQLite does so (its settings, its failures, copies, the search for damage) is in
 * {@code Sqlite}; all else is plain SQL. Uses the JDK and the driver, and knows nothing of what
 * is kept.
 *
 * <p>To change a table, add a further script to {@code Schema}: one that was shipped never
 * changes.
 */
@NullMarked
package org.tidewright.store.database;

import org.jspecify.annotations.NullMarked;
