package org.tidewright.husbandry.limit;

import java.util.EnumSet;
import java.util.Set;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.CoralForm;

/** Who lives in a system, by what the most demanding of them ask of the water. */
public enum Keeping {
    FISH("fish without corals"),
    SOFT_CORALS("soft corals"),
    LARGE_POLYPS("stony corals of large polyps"),
    SMALL_POLYPS("stony corals of small polyps");

    private static final Set<CoralForm> SMALL = EnumSet.of(
            CoralForm.BRANCHING_ACROPORA,
            CoralForm.POCILLOPORA,
            CoralForm.STYLOPHORA,
            CoralForm.BRANCHING_MONTIPORA,
            CoralForm.PLATING_MONTIPORA);

    private final String words;

    Keeping(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }

    public static Keeping of(Plan plan) {
        Inhabitants inhabitants = plan.inhabitants();
        if (inhabitants == null || (inhabitants.corals().isEmpty() && inhabitants.coralTissue() == null)) {
            return FISH;
        }
        if (inhabitants.corals().stream().anyMatch(coral -> SMALL.contains(coral.form()))) {
            return SMALL_POLYPS;
        }
        boolean soft = !inhabitants.corals().isEmpty()
                && inhabitants.corals().stream().allMatch(coral -> coral.form() == CoralForm.SOFT);
        return soft ? SOFT_CORALS : LARGE_POLYPS;
    }
}
