package org.tidewright.husbandry.journal;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * A line of the journal, in one of its revisions.
 *
 * @param id the same for all revisions of a line
 * @param revision 1 for a line as first written
 * @param at when it happened, on the keeper's clock of that day
 * @param remark in the keeper's words, empty for none
 * @param struck whether this revision takes the line back
 * @param writtenAt when this revision was kept
 */
public record Line(
        UUID id, int revision, OffsetDateTime at, Event event, String remark, boolean struck, Instant writtenAt) {}
