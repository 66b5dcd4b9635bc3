package org.tidewright.husbandry.journal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.IntConsumer;

/**
 * The journals of all systems. A line is on disk when a call that writes it returns. Calls may come from several threads at
 * once.
 */
public interface Journal {
    /**
     * Keeps a line. One that is kept already under this id, whatever became of it since, is not written again.
     *
     * @return the line as it stands
     */
    Line write(String system, Draft draft);

    /**
     * Keeps all lines or none. Those already kept under their ids are passed over.
     *
     * @param progress told now and then how many are done
     * @return how many were new
     */
    int writeAll(String system, List<Draft> drafts, IntConsumer progress);

    /**
     * Keeps lines of several systems, all or none, as when an animal leaves one for another. Those already kept under their
     * ids are passed over.
     *
     * @param drafts by the system they are of
     * @return how many were new
     */
    int writeTogether(Map<String, List<Draft>> drafts);

    /**
     * Puts a further revision in place of a line.
     *
     * @param basedOn the revision the writer saw
     * @return the line as it now stands; empty where another revision came first, or there is no such line
     */
    Optional<Line> correct(String system, int basedOn, Draft corrected);

    /** Takes a line back; it stays in its history. As {@link #correct} otherwise. */
    Optional<Line> strike(String system, UUID id, int basedOn);

    /** The lines that stand, of these kinds and within this time, in order of time. */
    List<Line> lines(String system, Span span, Set<Kind> kinds);

    /** The last line before a time that stands and is of one of these kinds. */
    Optional<Line> lastBefore(String system, Instant time, Set<Kind> kinds);

    /** All revisions of a line, the first one first; empty where there is none. */
    List<Line> history(String system, UUID id);

    /** Every revision of every line, in the order in which they were written: for a copy of the whole. */
    List<Line> everything(String system);

    /**
     * Keeps revisions as they were kept elsewhere, all or none; those that are here already are passed over.
     *
     * @param revisions in the order in which they were written
     * @return how many were new
     * @throws IllegalArgumentException where a line is here with another content under the same revision
     */
    int restore(String system, List<Line> revisions);
}
