package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Pace;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.seawater.unit.Unit;

/** How fast a display is stocked. */
final class PaceRule {
    /** Of the live mass that is there; common practice. */
    static final double SHARE = 0.5;

    /** Between two additions; common practice. */
    static final int DAYS_BETWEEN = 14;

    /** What may come first where nobody lives and the twin was not asked: two small fish; common practice. */
    static final double FIRST = 0.010;

    private PaceRule() {}

    /**
     * The more careful of the twin's figure and of practice: half of what lives there, or two small fish where few do. Only where
     * nobody lives the twin's figure stands alone.
     */
    static Pace of(Household household, Community community, @Nullable Long budget) {
        double present = LiveMass.of(community.residents());
        CalmAddition calm = household.calm();
        double practice = Math.max(FIRST, SHARE * present);
        double spare = calm == null ? practice : present > 0 ? Math.min(calm.mass(), practice) : calm.mass();
        double share = calm == null || present <= 0 ? SHARE : Math.min(SHARE, spare / present);
        return new Pace(present, share, spare, DAYS_BETWEEN, lastAddition(household), budget);
    }

    /** Live mass that may come today. */
    static @Unit("kg") double room(Pace pace) {
        return Math.max(pace.spare(), pace.share() * pace.present());
    }

    private static @Nullable LocalDate lastAddition(Household household) {
        List<LocalDate> days = household.log().stream()
                .filter(line -> line.event() instanceof Event.AnimalMoved moved && moved.move() == Event.Move.ARRIVED)
                .map(household::day)
                .filter(day -> !day.isAfter(household.today()))
                .toList();
        return days.stream().max(Comparator.naturalOrder()).orElse(null);
    }
}
