package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.SocialForm;
import org.tidewright.plan.species.SpeciesSource;
import org.tidewright.plan.species.Trouble;

/** How many of its own kind it is kept with. */
final class OwnKindRule implements Rule {
    /** A temper of 1 in 5 fights nobody. */
    private static final int PEACEFUL = 1;

    /** From this temper on those that live here take in no other. */
    private static final int FIERCE = 4;

    @Override
    public List<Finding> judge(Situation seen) {
        Animals candidate = seen.candidate();
        int here = seen.residents().stream()
                .filter(candidate::isKind)
                .mapToInt(Animals::count)
                .sum();
        return candidate.isFish() ? fish(seen, here) : invertebrate(seen, here);
    }

    private static List<Finding> fish(Situation seen, int here) {
        FishSpecies fish = seen.candidate().fish();
        Set<SocialForm> forms = fish.company().forms();
        int all = here + seen.candidate().count();
        boolean fights = fish.temper().troubles().contains(Trouble.OWN_KIND)
                && fish.temper().temperament() > PEACEFUL;
        if (here > 0
                && (forms.equals(Set.of(SocialForm.SINGLE))
                        || (fights && forms.contains(SocialForm.SINGLE))
                        || fish.temper().temperament() >= FIERCE)) {
            return List.of(no(
                    seen,
                    "own_kind",
                    "One of its kind lives here, and it tolerates no second.",
                    fish.company().source()));
        }
        if (suits(forms, all, fish.company().groupLeast())) {
            return here > 0 && fish.temper().temperament() > PEACEFUL
                    ? List.of(Finding.of(
                            "own_kind",
                            Call.MIND,
                            Sentence.of("Those of its kind that live here may not take it in."),
                            Sentence.of(
                                    "Kinds that fight are best put in together.",
                                    Facts.source(seen, "Company", fish.company().source()))))
                    : List.of();
        }
        boolean tooFew = all < fish.company().groupLeast() && !forms.contains(SocialForm.SINGLE);
        String counted = all + (all == 1 ? " would be alone" : " of them are no such company");
        return List.of(no(
                seen,
                tooFew || all == 1 ? "group" : "own_kind",
                "It is kept as " + words(forms, fish.company().groupLeast()) + ": " + counted + ".",
                fish.company().source()));
    }

    private static boolean suits(Set<SocialForm> forms, int all, int groupLeast) {
        return switch (all) {
            case 1 -> forms.contains(SocialForm.SINGLE);
            case 2 -> forms.contains(SocialForm.PAIR) || (isGroup(forms) && groupLeast <= 2);
            default -> isGroup(forms) && all >= groupLeast;
        };
    }

    private static boolean isGroup(Set<SocialForm> forms) {
        return forms.contains(SocialForm.GROUP) || forms.contains(SocialForm.HAREM);
    }

    private static String words(Set<SocialForm> forms, int groupLeast) {
        return forms.stream()
                .sorted()
                .map(form -> form == SocialForm.GROUP || form == SocialForm.HAREM
                        ? form.words() + " of " + groupLeast + " or more"
                        : form.words())
                .collect(Collectors.joining(" or "));
    }

    /** Shrimps and crabs that fight their own; most others do not care. */
    private static List<Finding> invertebrate(Situation seen, int here) {
        InvertebrateSpecies animal = seen.candidate().invertebrate();
        int all = here + seen.candidate().count();
        Set<SocialForm> forms = animal.temper().forms();
        if (animal.temper().troubles().contains(Trouble.OWN_KIND)
                && all > 1
                && !(all == 2 && forms.contains(SocialForm.PAIR) && here == 0)) {
            return List.of(no(
                    seen,
                    "own_kind",
                    "They kill each other: one of them, or a pair.",
                    animal.temper().source()));
        }
        return seen.invertebrates()
                .filter(resident -> !resident.isKind(seen.candidate()))
                .filter(resident -> fights(animal, resident.invertebrate()) || fights(resident.invertebrate(), animal))
                .findFirst()
                .map(resident -> List.of(no(
                        seen,
                        fights(animal, resident.invertebrate()) ? "predation_by_it" : "predation_on_it",
                        "It and " + resident.words() + " do not live together: the stronger kills the other.",
                        animal.temper().source())))
                .orElse(List.of());
    }

    private static boolean fights(InvertebrateSpecies one, InvertebrateSpecies other) {
        boolean ownGroup = one.temper().troubles().contains(Trouble.OWN_GROUP) && one.group() == other.group();
        boolean shrimp =
                one.temper().troubles().contains(Trouble.SHRIMP) && other.group() == InvertebrateSpecies.Group.SHRIMP;
        return ownGroup || shrimp;
    }

    private static Finding no(Situation seen, String rule, String what, SpeciesSource source) {
        return Finding.of(
                rule,
                Call.NO,
                Sentence.of(what),
                Sentence.of("Another number may be right.", Facts.source(seen, "Company", source)));
    }
}
