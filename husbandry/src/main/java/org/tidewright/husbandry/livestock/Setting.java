package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.reef.CatalogueLore;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;

/**
 * Where an animal would live, as far as it is known.
 *
 * @param residents who lives there
 * @param experience what has thrived there and what has not
 * @param isolation what of quarantine is known; null where no other system and no log is
 * @param reef light, flow and corals; null where nobody asks for a place
 */
public record Setting(
        LocalDate today,
        Home home,
        List<Animals> residents,
        Experience experience,
        @Nullable Isolation isolation,
        @Nullable ReefSite reef) {
    public Setting {
        residents = List.copyOf(residents);
    }

    /**
     * As plan and log tell of a system.
     *
     * @param home of the plan
     */
    public static Setting of(
            LocalDate today,
            Plan plan,
            Home home,
            Community community,
            Catalogue catalogue,
            @Nullable Isolation isolation) {
        return new Setting(
                today,
                home,
                community.residents(),
                community.experience(),
                isolation,
                new ReefSite(plan, new CatalogueLore(catalogue)));
    }

    /** A tank and who lives in it, for months, and nothing else. */
    public static Setting of(LocalDate today, Home home, List<Animals> residents) {
        return new Setting(today, home, residents, new Experience(residents, List.of()), null, null);
    }

    /** The same where nobody asks for a coral's place. */
    public Setting withoutPlaces() {
        return new Setting(today, home, residents, experience, isolation, null);
    }

    /** The same with others living there that are to come first. */
    Setting joinedBy(List<Animals> coming) {
        List<Animals> all = new ArrayList<>(residents);
        all.addAll(coming);
        return new Setting(today, home, all, experience, isolation, reef);
    }
}
