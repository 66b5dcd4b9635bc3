/**
 * The whole journal of a system out of the program and back in, identical: as one JSON file with everything, or as CSV files,
 * one for each kind of line. docs/formats/journal-json.md and journal-csv.md say what others may rely on.
 *
 * <p>Streams come in as arguments; the journal is reached through the ports of {@link org.tidewright.husbandry.journal}. A copy
 * is read twice: once to find every fault, and only when there is none to keep it.
 *
 * <p>To write one more kind of line, add its names and values to {@link org.tidewright.husbandry.exchange.EventFields}: both
 * formats follow. To change what stands under a name, raise {@link org.tidewright.husbandry.exchange.JournalFormat#VERSION}.
 */
@NullMarked
package org.tidewright.husbandry.exchange;

import org.jspecify.annotations.NullMarked;
