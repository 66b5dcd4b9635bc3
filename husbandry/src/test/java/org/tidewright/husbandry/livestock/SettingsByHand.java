package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;

/** Settings for the tests of single rules: a covered, old tank of 800 L. */
final class SettingsByHand {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 1);
    static final Home HOME = new Home(2, 0.7, 0.6, 0.8, Cover.NET, 0.05, 60, 24, 26, 24.0, 0.1, Set.of(), 2);

    private SettingsByHand() {}

    static Animals animals(String name, int count) {
        var species = Catalogue.ofProgram().find(name).orElseThrow();
        return new Animals(species, count, species instanceof FishSpecies fish ? Candidates.sold(fish) : 0);
    }

    static Setting setting(
            List<Animals> residents, Experience experience, @Nullable Isolation isolation, @Nullable ReefSite reef) {
        return new Setting(TODAY, HOME, residents, experience, isolation, reef);
    }

    static Setting isolated(Isolation isolation) {
        return setting(List.of(), new Experience(List.of(), List.of()), isolation, null);
    }

    static List<Finding> judge(Rule rule, Animals candidate, Setting setting, @Nullable Burden burden) {
        return rule.judge(new Situation(candidate, setting, burden, new Sources()));
    }
}
