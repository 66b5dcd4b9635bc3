package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.seawater.unit.Unit;

/** Corals and anemones that reach each other, and anemones that walk. */
final class StingRule implements Rule {
    /** Free way beyond the reach, common practice. */
    private static final double BEYOND = 0.05;

    /** Radius of a colony as it is sold; a guess. */
    private static final double SOLD = 0.04;

    /** Share of the floor on which colonies can stand. */
    private static final double PLACES = 0.6;

    private static final int STRONG = 2;

    @Override
    public List<Finding> judge(Situation seen) {
        if (seen.candidate().isFish() || !isStinger(seen.candidate().invertebrate())) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        InvertebrateSpecies animal = seen.candidate().invertebrate();
        neighbours(seen, animal, findings);
        if (animal.temper().motility() == 3) {
            findings.add(Finding.of(
                    "wandering",
                    Call.MIND,
                    Sentence.of("It walks until it likes its place"
                            + (seen.corals().findAny().isPresent() ? ", and stings the corals it passes." : ".")),
                    Sentence.of(
                            "Guard every pump's intake before it comes, and leave it room.",
                            Facts.source(seen, "How it moves", animal.temper().source()))));
        }
        return findings;
    }

    private static boolean isStinger(InvertebrateSpecies animal) {
        return animal.group().isCoral() || animal.group() == InvertebrateSpecies.Group.ANEMONE;
    }

    private static void neighbours(Situation seen, InvertebrateSpecies animal, List<Finding> findings) {
        double floor = seen.home().length() * seen.home().width();
        double taken = seen.candidate().count() * claim(strongest(seen, animal));
        InvertebrateSpecies worst = null;
        double reachOfWorst = -1;
        for (Animals resident : seen.residents()) {
            if (!resident.isFish() && isStinger(resident.invertebrate())) {
                taken += resident.count()
                        * claim(resident.invertebrate().contest().reach());
                if (!isImmune(animal, resident.invertebrate()) && reach(resident.invertebrate()) > reachOfWorst) {
                    worst = resident.invertebrate();
                    reachOfWorst = reach(worst);
                }
            }
        }
        double apart = Math.max(reach(animal), reachOfWorst) + BEYOND;
        if (worst == null || (reach(animal) < BEYOND && reachOfWorst < BEYOND)) {
            return;
        }
        boolean crowded = taken > PLACES * floor;
        findings.add(Finding.of(
                "sting",
                crowded ? Call.NO : Call.MIND,
                crowded
                        ? Sentence.of("There is no place out of reach: corals here claim the whole floor.")
                        : Sentence.of(
                                "Keep it ",
                                Facts.length(apart),
                                " from the " + worst.name().common() + " and others."),
                Sentence.of(
                        "Sweepers reach ",
                        Facts.length(Math.max(reach(animal), reachOfWorst)),
                        ", and colonies grow towards each other.",
                        Facts.source(
                                seen,
                                "Reach of its stings",
                                (reach(animal) > reachOfWorst ? animal : worst)
                                        .contest()
                                        .source()))));
    }

    private static @Unit("m") double strongest(Situation seen, InvertebrateSpecies animal) {
        return seen.residents().stream()
                .filter(resident -> !resident.isFish() && !isImmune(animal, resident.invertebrate()))
                .mapToDouble(resident -> reach(resident.invertebrate()))
                .reduce(reach(animal), Math::max);
    }

    private static double reach(InvertebrateSpecies animal) {
        return animal.contest().sting() >= STRONG || animal.contest().reach() > BEYOND
                ? animal.contest().reach()
                : 0;
    }

    private static @Unit("m^2") double claim(@Unit("m") double reach) {
        double radius = SOLD + reach;
        return Math.PI * radius * radius;
    }

    private static boolean isImmune(InvertebrateSpecies one, InvertebrateSpecies other) {
        return one.name().genus().equals(other.name().genus())
                || one.contest().immune().contains(other.name().genus())
                || other.contest().immune().contains(one.name().genus());
    }
}
