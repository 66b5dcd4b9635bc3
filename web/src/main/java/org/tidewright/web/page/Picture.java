package org.tidewright.web.page;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;

/**
 * A photo of the log.
 *
 * @param href its own address
 * @param words what it shows, for who cannot see it: the keeper's own
 */
public record Picture(String href, String words) {

    /** Of a line, null where it has none. */
    static @Nullable Picture of(Line line, String logHref) {
        return line.event() instanceof Event.Observation seen && seen.photo() != null
                ? new Picture(href(logHref, seen.photo()), words(seen.seen()))
                : null;
    }

    private static String words(String seen) {
        return seen.isBlank() ? "A photo; nobody has said yet what it shows" : "Photo: " + seen;
    }

    /** Where a photo is served, beside the log that it belongs to. */
    static String href(String logHref, String name) {
        return logHref.substring(0, logHref.lastIndexOf('/')) + "/photos/" + name;
    }
}
