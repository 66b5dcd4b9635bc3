package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.livestock.Steadiness;
import org.tidewright.husbandry.wishlist.Household;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/** Gathers what a desk knows of a system and its quarantine tanks, for a plan of arrivals. */
public final class Households {
    private Households() {}

    /** As it stands now. */
    public static Household of(Desk desk, SystemView view) {
        ZoneId zone = desk.clock().getZone();
        LocalDate today = LocalDate.now(desk.clock());
        Catalogue catalogue = desk.species().catalogue();
        List<Line> log = lines(desk, view);
        Home home = Homes.of(view.plan(), Homes.age(log, today, zone), Steadiness.alkalinity(desk.water(view)));
        List<Household.Box> boxes = Boxes.serving(desk, view).stream()
                .map(Boxes.Box::view)
                .map(box ->
                        new Household.Box(box.entry().name(), box.plan(), lines(desk, box), desk.bareTank(box.plan())))
                .toList();
        Community community = Community.of(view.plan(), log, catalogue, today, zone);
        CalmAddition calm = desk.calmAddition(view.plan(), community);
        return new Household(view.plan(), catalogue, home, log, boxes, calm, today, zone);
    }

    private static List<Line> lines(Desk desk, SystemView view) {
        return desk.journal().lines(view.entry().id(), Span.EVER, EnumSet.allOf(Kind.class));
    }
}
