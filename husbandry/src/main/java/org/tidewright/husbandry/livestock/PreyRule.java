package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Prey;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/**
 * Who eats whom. A fish that eats fish swallows those whose body is no deeper than its mouth; the predator is taken grown,
 * its prey as it is on the day they meet.
 *
 * @source Mihalitsis and Bellwood 2017, PLoS ONE: depth of prey over the predator's standard length
 */
final class PreyRule implements Rule {
    /** Depth of the prey over the greatest that is swallowed: below the first it is eaten, above the second not. */
    private static final double SURELY = 0.8;

    private static final double HARDLY = 1.2;

    /** What fits into a mouth so easily is eaten by those as well that eat fish now and then; this project's own. */
    private static final double EASILY = 0.5;

    /** Snails up to this size are picked by those that live on the small animals of rock and sand; this project's own. */
    private static final double PICKED = 0.01;

    /** Who may take polyps of both kinds is no gamble for a reef; common practice. */
    private static final Set<Prey> ALL_POLYPS = Set.of(Prey.LARGE_POLYPS, Prey.SMALL_POLYPS);

    /** Anemonefish live in anemones. */
    private static final Set<String> HOSTED = Set.of("Amphiprion", "Premnas");

    @Override
    public List<Finding> judge(Situation seen) {
        List<Finding> findings = new ArrayList<>();
        for (Animals resident : seen.residents()) {
            add(findings, seen, resident, seen.candidate(), true);
            add(findings, seen, seen.candidate(), resident, false);
        }
        return findings;
    }

    private static void add(
            List<Finding> findings, Situation seen, Animals eater, Animals eaten, boolean newcomerEaten) {
        Call call = eats(eater, eaten);
        if (call == Call.YES || (eaten.isPest() && !newcomerEaten)) {
            return;
        }
        String rule = rule(eaten, newcomerEaten);
        boolean sure = call == Call.NO;
        Sentence what = newcomerEaten
                ? Sentence.of(
                        Facts.capital(eater.words()) + (sure ? " eats such " : " may eat such ") + kind(eaten) + ".")
                : Sentence.of("It " + (sure ? "eats " : "may eat ") + eaten.words() + ".");
        findings.add(Finding.of(rule, call, what, why(seen, eater, eaten)));
    }

    private static String kind(Animals eaten) {
        if (eaten.isFish()) {
            return "fish";
        }
        String words = eaten.invertebrate().group().words();
        return switch (eaten.invertebrate().group()) {
            case SPS, LPS, NPS -> words.replaceFirst("coral", "corals");
            case CALCAREOUS_ALGAE -> "algae that build lime";
            case CEPHALOPOD -> "octopuses";
            default -> words + "s";
        };
    }

    private static String rule(Animals eaten, boolean newcomerEaten) {
        if (newcomerEaten) {
            return "predation_on_it";
        }
        if (eaten.isFish()) {
            return "predation_by_it";
        }
        InvertebrateSpecies.Group group = eaten.invertebrate().group();
        boolean sessile = group.isCoral()
                || group == InvertebrateSpecies.Group.ANEMONE
                || group == InvertebrateSpecies.Group.CLAM;
        return sessile ? "coral_eater" : "clean_up_crew";
    }

    private static Call eats(Animals eater, Animals eaten) {
        if (eaten.isFish()) {
            return eatsFish(eater, eaten);
        }
        InvertebrateSpecies prey = eaten.invertebrate();
        if (eater.isKind(eaten)) {
            return Call.YES;
        }
        Species.Fare fare = eater.species().fare();
        if (isTooBig(eater, prey)) {
            return Call.YES;
        }
        if (fare.eats().stream().anyMatch(prey::isPreyOf)) {
            return Call.NO;
        }
        if (fare.mayEat().stream().noneMatch(prey::isPreyOf)) {
            return Call.YES;
        }
        return prey.group().isCoral() && fare.mayEat().containsAll(ALL_POLYPS) ? Call.NO : Call.MIND;
    }

    /** Who picks small animals leaves snails alone that are kept to graze. */
    private static boolean isTooBig(Animals eater, InvertebrateSpecies prey) {
        return eater.isFish()
                && eater.fish().diet() == FishSpecies.Diet.MICROCARNIVORE
                && prey.group() == InvertebrateSpecies.Group.SNAIL
                && prey.extent() != null
                && prey.extent().most() > PICKED;
    }

    private static Call eatsFish(Animals eater, Animals eaten) {
        Species.Fare fare = eater.species().fare();
        boolean sure = fare.eats().contains(Prey.FISH) || fare.eats().contains(Prey.SMALL_FISH);
        boolean perhaps = fare.mayEat().contains(Prey.FISH) || fare.mayEat().contains(Prey.SMALL_FISH);
        if ((!sure && !perhaps) || eater.isKind(eaten)) {
            return Call.YES;
        }
        if (!eater.isFish()) {
            return caught(eater.invertebrate(), eaten, sure);
        }
        double ratio = ratio(eater, eaten);
        if (ratio >= HARDLY) {
            return Call.YES;
        }
        return ratio < (sure ? SURELY : EASILY) ? Call.NO : Call.MIND;
    }

    /** What stings and holds: fish that rest beside it, not those that live in it or swim well clear. */
    private static Call caught(InvertebrateSpecies catcher, Animals fish, boolean sure) {
        if (HOSTED.contains(fish.species().name().genus())) {
            return Call.YES;
        }
        FishSpecies.Swimming swimming = fish.fish().space().swimming();
        boolean rests = swimming != FishSpecies.Swimming.ROAMS && swimming != FishSpecies.Swimming.CRUISES;
        return sure && rests && catcher.contest().sting() >= 3 ? Call.NO : Call.MIND;
    }

    private static @Unit("1") double ratio(Animals eater, Animals eaten) {
        return eaten.fish().depth(eaten.length()) / eater.fish().swallows(eater.grown());
    }

    private static Sentence why(Situation seen, Animals eater, Animals eaten) {
        if (eater.isFish() && eaten.isFish()) {
            FishSpecies fish = eater.fish();
            return Sentence.of(
                    "Grown to ",
                    Facts.length(eater.grown()),
                    " it swallows what is up to ",
                    Facts.length(fish.swallows(eater.grown())),
                    " deep; at ",
                    Facts.length(eaten.length()),
                    " the other is ",
                    Facts.length(eaten.fish().depth(eaten.length())),
                    ".",
                    Facts.source(seen, "What it can swallow", fish.gape().source()));
        }
        return Sentence.of(
                "So its kind feeds.",
                Facts.source(
                        seen,
                        "What the " + eater.species().name().common() + " eats",
                        eater.species().fare().source()));
    }
}
