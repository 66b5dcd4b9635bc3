package org.tidewright.husbandry.livestock;

import java.util.List;

/** All rules, in the order a keeper would ask. */
final class Rules {
    static final List<Rule> ALL = List.of(
            new DeadlyRule(),
            new WarmthRule(),
            new RoomRule(),
            new PreyRule(),
            new AggressionRule(),
            new OwnKindRule(),
            new StingRule(),
            new FeedingRule(),
            new RipenessRule(),
            new CoverRule(),
            new SandRule(),
            new PlaceRule(),
            new WaterRule(),
            new QuarantineRule(),
            new HazardRule());

    private Rules() {}
}
