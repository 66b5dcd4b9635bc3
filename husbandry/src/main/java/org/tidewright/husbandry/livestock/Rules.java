package org.tidewright.husbandry.livestock;

import java.util.List;

/** All rules that need no run of the twin, in the order a keeper would ask. */
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
            new HazardRule());

    private Rules() {}
}
