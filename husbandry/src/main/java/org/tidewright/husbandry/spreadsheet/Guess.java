package org.tidewright.husbandry.spreadsheet;

/**
 * What something is taken for.
 *
 * @param value an empty one where it is left to the keeper
 * @param reason in words for the keeper
 * @param sure whether it need not be confirmed
 */
record Guess<T>(T value, String reason, boolean sure) {}
