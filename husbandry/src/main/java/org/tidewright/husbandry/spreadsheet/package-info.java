/**
 * A keeper's own spreadsheet, saved as CSV, becomes drafts of readings and values of probes.
 *
 * <p>{@link org.tidewright.husbandry.spreadsheet.Spreadsheet} looks through the file and proposes what stands where: each guess
 * with its reason, and whether it must be confirmed. The {@link org.tidewright.husbandry.spreadsheet.Mapping} can be shown and
 * changed, as a form or as text; under it the file is previewed and taken in, all or nothing. Nothing ambiguous is ever chosen in
 * silence, and every cell that cannot be meant is told by line, with what was probably meant.
 *
 * <p>Uses the methods and units of the plan and the records of the journal; bytes come in as an argument. To know one more word
 * for a quantity, add it to {@link org.tidewright.husbandry.spreadsheet.HeaderWords}; for a unit, to {@link
 * org.tidewright.husbandry.spreadsheet.UnitWords}; one more way of writing dates, to {@link
 * org.tidewright.husbandry.spreadsheet.DateShape}.
 */
@NullMarked
package org.tidewright.husbandry.spreadsheet;

import org.jspecify.annotations.NullMarked;
