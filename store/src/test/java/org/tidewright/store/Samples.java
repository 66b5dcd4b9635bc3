package org.tidewright.store;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;

/** Lines to be written where it does not matter which. */
public final class Samples {
    public static final String REEF = "harbour room";
    public static final Set<Kind> ALL = EnumSet.allOf(Kind.class);
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-05-03T12:00:00+02:00");

    private Samples() {}

    public static Draft draft() {
        return draft("");
    }

    public static Draft draft(String remark) {
        return new Draft(UUID.randomUUID(), NOON, new Event.Fed("frozen mysis", 1.5e-3), remark);
    }

    public static List<Draft> drafts(int count) {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            drafts.add(new Draft(UUID.randomUUID(), NOON.plusMinutes(i), new Event.WorkDone("work " + i, null), ""));
        }
        return drafts;
    }
}
