package org.tidewright.app.demo;

import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Sign;

/**
 * Twelve days of an invented log of a quarantine tank: four wrasses came, one had a cloudy eye for two days, one day nobody
 * looked, and today nobody has looked yet.
 */
public final class DemoQuarantine {
    private static final int DAYS = 12;
    private static final int MISSED = 8;
    private static final LocalTime LOOKED_AT = LocalTime.of(18, 30);

    private final ZonedDateTime begins;
    private final List<Draft> drafts = new ArrayList<>();

    private DemoQuarantine(ZonedDateTime begins) {
        this.begins = begins;
    }

    /** The log up to a time. */
    public static List<Draft> of(ZonedDateTime now) {
        DemoQuarantine log =
                new DemoQuarantine(now.toLocalDate().minusDays(DAYS).atStartOfDay(now.getZone()));
        log.write();
        OffsetDateTime until = now.toOffsetDateTime();
        return log.drafts.stream().filter(draft -> draft.at().isBefore(until)).toList();
    }

    private void write() {
        line(
                0,
                LocalTime.of(16, 0),
                new Event.Observation("This log is invented, to show how a batch is watched.", null),
                "");
        line(0, LocalTime.of(16, 30), new Event.AnimalMoved("wrasse", 4, Event.Move.ARRIVED, 0.07), "");
        for (int day = 0; day < DAYS; day++) {
            if (day != MISSED) {
                look(day);
            }
            if (day % 2 == 0 && day > 0) {
                line(day, LocalTime.of(19, 0), new Event.WaterChanged(0.015, Map.of()), "");
            }
        }
    }

    private void look(int day) {
        Set<Sign> signs = day == 0 ? Set.of(Sign.HIDING) : day == 3 || day == 4 ? Set.of(Sign.CLOUDY_EYE) : Set.of();
        Appetite ate = day < 2 ? Appetite.SOME : Appetite.ALL;
        line(
                day,
                LOOKED_AT,
                new Event.AnimalsChecked(null, ate, day % 3 == 0 ? 64 - day : null, signs),
                signs.contains(Sign.CLOUDY_EYE) ? "the smallest, left eye" : "");
    }

    private void line(int day, LocalTime at, Event event, String remark) {
        ZonedDateTime time = begins.plusDays(day).with(at);
        UUID id = UUID.nameUUIDFromBytes(("demo quarantine " + drafts.size()).getBytes(StandardCharsets.UTF_8));
        drafts.add(new Draft(id, time.toOffsetDateTime(), event, remark));
    }
}
