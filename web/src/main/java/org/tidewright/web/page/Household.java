package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.livestock.Steadiness;
import org.tidewright.husbandry.shop.ShopAnimal;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Species;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/** Who lives in a system, and what it offers, as plan and log have it now. */
record Household(Community community, Home home) {
    static Household of(Desk desk, SystemView view) {
        ZoneId zone = desk.clock().getZone();
        LocalDate today = LocalDate.now(desk.clock());
        List<Line> lines = desk.journal().lines(view.entry().id(), Span.EVER, EnumSet.allOf(Kind.class));
        return new Household(
                Community.of(view.plan(), lines, desk.species().catalogue(), today, zone),
                Homes.of(view.plan(), Homes.age(lines, today, zone), Steadiness.alkalinity(desk.water(view))));
    }

    /** One of each of these species, whether it may come. */
    List<ShopAnimal> judge(List<? extends Species> species, UnitSystem units) {
        return ShopAnimal.judge(species, home, community.residents(), units);
    }
}
