/**
 * Species of a keeper's own: files {@code fish.csv} and {@code invertebrates.csv} in the folder of the systems, over the
 * program's catalogue.
 *
 * <p>May use {@code plan.species}, and reads files. To read one more kind of file, see {@link
 * org.tidewright.app.species.OwnSpecies}.
 */
@NullMarked
package org.tidewright.app.species;

import org.jspecify.annotations.NullMarked;
