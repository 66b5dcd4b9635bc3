package org.tidewright.husbandry.journal;

import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * A line before it is kept.
 *
 * @param id given by the writer, so that the same line sent twice is kept once
 * @param at when it happened, on the keeper's clock of that day
 * @param remark in the keeper's words, empty for none
 */
public record Draft(UUID id, OffsetDateTime at, Event event, String remark) {}
