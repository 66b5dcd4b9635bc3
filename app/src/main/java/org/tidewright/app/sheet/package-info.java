/**
 * Water sheets in CSV files: columns in, columns out ({@link org.tidewright.app.sheet.SheetCsv}). May use
 * {@code husbandry.sheet} and the CSV library. What a column means is said there; this package only reads and writes.
 */
@NullMarked
package org.tidewright.app.sheet;

import org.jspecify.annotations.NullMarked;
