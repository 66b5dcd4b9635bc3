package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Watch;

/**
 * Quarantine tanks that serve a display, and whether the display itself stands without fish for a parasite's sake.
 *
 * @param fallows those that are not over by the log
 */
public record Isolation(List<Room> rooms, List<FallowState> fallows) {
    public Isolation {
        rooms = List.copyOf(rooms);
        fallows = List.copyOf(fallows);
    }

    /** Of what is known of the tanks that serve a display. */
    public static Isolation of(List<QuarantineStudy> serving, List<FallowState> fallows) {
        return new Isolation(serving.stream().map(Room::of).toList(), fallows);
    }

    /**
     * A quarantine tank.
     *
     * @param watchDays days a batch is watched in it
     * @param taken whether animals are in it
     * @param freeFrom first day on which others may come; null where it is free
     */
    public record Room(
            String name,
            int watchDays,
            boolean taken,
            @Nullable LocalDate freeFrom) {
        /** As its plan and its log tell. */
        static Room of(QuarantineStudy study) {
            int dry = study.quarantine().dryDays();
            Watch watch = study.watch();
            LocalDate free = watch == null ? study.dryUntil() : watch.end().plusDays(dry);
            boolean now = free == null || !free.isAfter(study.today());
            return new Room(study.plan().name(), study.quarantine().watchDays(), watch != null, now ? null : free);
        }
    }
}
