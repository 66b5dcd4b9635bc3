/**
 * Where a keeper's record stays: the journal, what probes said, and photos of any number of systems, in one file.
 *
 * <p>{@link org.tidewright.store.Store} opens the file and hands out the ports of
 * {@link org.tidewright.husbandry.journal}. Each port is kept by a package of its own, over
 * {@link org.tidewright.store.database}; the tables are described in docs/formats/store.md.
 *
 * <p>To keep something else, write its port in {@code husbandry}, a package here that implements it, and a further script of
 * the schema.
 */
@NullMarked
package org.tidewright.store;

import org.jspecify.annotations.NullMarked;
