package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Quarantine;
import org.tidewright.plan.species.Catalogue;

/**
 * All that is known where animals are to come.
 *
 * @param plan of the display
 * @param home what it offers today
 * @param log of the display, all lines that stand
 * @param boxes quarantine tanks that serve it
 * @param calm what may come at once by the twin; null where it was not asked yet
 */
public record Household(
        Plan plan,
        Catalogue catalogue,
        Home home,
        List<Line> log,
        List<Box> boxes,
        @Nullable CalmAddition calm,
        LocalDate today,
        ZoneId zone) {
    public Household {
        log = List.copyOf(log);
        boxes = told(boxes);
    }

    /** Two of one name are told apart by a number. */
    private static List<Box> told(List<Box> boxes) {
        Set<String> names = new HashSet<>();
        List<Box> told = new ArrayList<>();
        for (Box box : boxes) {
            String name = box.name();
            for (int number = 2; !names.add(name); number++) {
                name = box.name() + " " + number;
            }
            told.add(new Box(name, box.plan(), box.log(), box.water()));
        }
        return List.copyOf(told);
    }

    /**
     * A quarantine tank.
     *
     * @param name its plan's
     * @param log all lines that stand
     */
    public record Box(String name, Plan plan, List<Line> log, BareTankWater water) {
        public Box {
            log = List.copyOf(log);
        }

        QuarantineStudy study(LocalDate today) {
            return QuarantineStudy.of(plan, log, today);
        }

        /** Days it is watched and days it stands dry, by its plan. */
        Quarantine quarantine() {
            return Objects.requireNonNull(plan.quarantine(), "the plan of a quarantine tank");
        }
    }

    /** The same once the twin was asked what may come at once. */
    public Household with(CalmAddition asked) {
        return new Household(plan, catalogue, home, log, boxes, asked, today, zone);
    }

    /** Who lives in the display today. */
    public Community community() {
        return Community.of(plan, log, catalogue, today, zone);
    }

    /**
     * What the rules say of one that is to come, but those that ask the twin, quarantine and places.
     *
     * @param then the display as it will be
     * @param company who lives there by then
     */
    Verdict verdict(Animals animals, Home then, List<Animals> company) {
        return Verdict.of(animals, Setting.of(today, then, company), null);
    }

    /** The day of a line where the systems stand. */
    LocalDate day(Line line) {
        return line.at().atZoneSameInstant(zone).toLocalDate();
    }
}
