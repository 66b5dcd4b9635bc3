package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.Hazard;
import org.tidewright.plan.species.Species;

/** What may hurt hands, and what may poison the water. */
final class HazardRule implements Rule {
    /** Temper of 5 from which on a fish hurts others. */
    private static final int BULLY = 4;

    @Override
    public List<Finding> judge(Situation seen) {
        Species.Danger danger = seen.candidate().species().danger();
        List<Finding> findings = new ArrayList<>();
        if (danger.hazards().stream().anyMatch(HazardRule::isOfNote)) {
            findings.add(Finding.of(
                    "hazard",
                    Call.MIND,
                    Sentence.of(words(danger)),
                    Sentence.of(
                            "Say so to everybody in the house before it comes.",
                            Facts.source(seen, "Danger to people", danger.source()))));
        }
        if (danger.poisons()) {
            boolean bullied = seen.candidate().isFish()
                    && seen.fish().anyMatch(resident -> resident.fish().temper().temperament() >= BULLY);
            findings.add(Finding.of(
                    "poison",
                    bullied ? Call.NO : seen.fish().findAny().isPresent() ? Call.MIND : Call.YES,
                    Sentence.of("It may poison the water when it is hurt or dies."),
                    Sentence.of(
                            "Keep carbon and new water ready, guard the intakes, and take it out at the first sign.",
                            Facts.source(seen, "Danger to the tank", danger.source()))));
        }
        return findings;
    }

    private static boolean isOfNote(Hazard hazard) {
        return switch (hazard) {
            case VENOMOUS_SPINES, VENOMOUS_TAIL_BLADE, VENOMOUS_BITE, PALYTOXIN, STINGS, BRISTLES, BITES -> true;
            case TAIL_BLADE, CHEEK_SPINE, POISON_IF_EATEN, CUTS, LETHAL -> false;
        };
    }

    private static String words(Species.Danger danger) {
        if (danger.hazards().contains(Hazard.PALYTOXIN)) {
            return "It may hold palytoxin, one of the strongest poisons there is.";
        } else if (danger.hazards().contains(Hazard.VENOMOUS_SPINES)) {
            return "Its spines are venomous.";
        } else if (danger.hazards().contains(Hazard.VENOMOUS_BITE)) {
            return "Its bite is venomous.";
        } else if (danger.hazards().contains(Hazard.VENOMOUS_TAIL_BLADE)) {
            return "The blades at its tail are venomous.";
        } else if (danger.hazards().contains(Hazard.BRISTLES)) {
            return "Its bristles break off in the skin and burn.";
        }
        return danger.hazards().contains(Hazard.STINGS) ? "It stings hands." : "It bites hands.";
    }
}
