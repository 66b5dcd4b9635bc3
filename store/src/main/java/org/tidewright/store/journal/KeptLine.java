package org.tidewright.store.journal;

import org.tidewright.husbandry.journal.Line;

/**
 * A revision and its place among all others.
 *
 * @param number of its row, in the order of writing
 * @param firstNumber of the first revision's row
 */
record KeptLine(long number, long firstNumber, Line line) {}
