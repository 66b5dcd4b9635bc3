package org.tidewright.husbandry.spreadsheet;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.tidewright.husbandry.journal.Event;

/**
 * Names drafts after what they say, so that the same sheet taken in twice adds nothing, and neither does one that was sorted
 * otherwise or has grown since. What stands several times in a sheet is kept as often.
 */
final class DraftIds {
    private final String system;
    private final Map<UUID, Integer> times = new HashMap<>();

    DraftIds(String system) {
        this.system = system;
    }

    UUID of(OffsetDateTime at, Event.Reading reading) {
        return next(
                at,
                reading.quantity().key() + "\n" + Long.toHexString(Double.doubleToLongBits(reading.written())) + "\n"
                        + reading.unit().key());
    }

    UUID of(OffsetDateTime at, String words) {
        return next(at, "words\n" + words);
    }

    private UUID next(OffsetDateTime at, String what) {
        String name = system + "\n" + at.toInstant() + "\n" + what;
        UUID id = uuid(name);
        int before = times.merge(id, 1, Integer::sum) - 1;
        return before == 0 ? id : uuid(name + "\n" + before);
    }

    private static UUID uuid(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
