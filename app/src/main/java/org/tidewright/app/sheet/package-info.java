/**
 * Water sheets in CSV files: {@link org.tidewright.app.sheet.SheetCsv} adds to a file every column that can be computed
 * from those it has, reading it twice so that its length does not matter.
 *
 * <p>May use {@code husbandry.sheet} and the CSV library; what a column means and how it is computed is said there. To
 * change what is read or written, change {@code SheetHeader} or {@code SheetCsv} and the document
 * {@code docs/formats/seawater-csv.md} with them.
 */
@NullMarked
package org.tidewright.app.sheet;

import org.jspecify.annotations.NullMarked;
