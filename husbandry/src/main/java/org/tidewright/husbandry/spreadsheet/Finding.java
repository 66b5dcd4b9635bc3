package org.tidewright.husbandry.spreadsheet;

/**
 * One thing that was found out about a sheet.
 *
 * @param subject of what: {@code column 3 “Alk”}
 * @param words what it is taken for
 * @param reason why
 * @param sure whether the keeper has nothing to confirm
 */
public record Finding(String subject, String words, String reason, boolean sure) {}
