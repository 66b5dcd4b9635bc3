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
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.Steadiness;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/** Who lives in a system, and what it offers, as plans and logs have it now. */
record CandidateSetting(Community community, Setting setting) {
    static CandidateSetting of(Desk desk, SystemView view) {
        ZoneId zone = desk.clock().getZone();
        LocalDate today = LocalDate.now(desk.clock());
        Catalogue catalogue = desk.species().catalogue();
        List<Line> lines = desk.journal().lines(view.entry().id(), Span.EVER, EnumSet.allOf(Kind.class));
        Community community = Community.of(view.plan(), lines, catalogue, today, zone);
        Home home = Homes.of(view.plan(), Homes.age(lines, today, zone), Steadiness.alkalinity(desk.water(view)));
        return new CandidateSetting(
                community, Setting.of(today, view.plan(), home, community, catalogue, Boxes.isolation(desk, view)));
    }
}
