package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.FoodKind;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Species;

/** Whether it gets what it eats, as often as it eats. */
final class FeedingRule implements Rule {
    /** Water in which rock feeds a hunter of small animals; common practice. */
    private static final double LARGE = 0.2;

    /** Live rock that does; this project's own. */
    private static final double ROCK = 20;

    /** Meals a day from which on somebody feeds often. */
    private static final double OFTEN = 3;

    /** From this step on it does not live on what it takes beside it; this project's own. */
    private static final int DEMANDING = 5;

    private static final Set<FoodKind> GROWN_HERE = Set.of(FoodKind.FILM, FoodKind.DETRITUS, FoodKind.ALGAE);

    /** From this step on such grazers are known to starve. */
    private static final int HUNGRY = 3;

    /** Floor over the square of its size that a wandering grazer needs; this project's own, after what is said of single kinds. */
    private static final double GROUND = 8;

    private static final Set<FoodKind> NOT_TO_BE_HAD = Set.of(FoodKind.POLYPS, FoodKind.SPONGES, FoodKind.PARASITES);

    @Override
    public List<Finding> judge(Situation seen) {
        List<Finding> findings = new ArrayList<>();
        Species.Fare fare = seen.candidate().species().fare();
        for (FoodKind food : fare.foods()) {
            food(seen, fare, food, findings);
        }
        if (seen.candidate().isFish()) {
            meals(seen, fare, findings);
            table(seen, findings);
        } else {
            ground(seen, fare, findings);
        }
        return findings;
    }

    private static void food(Situation seen, Species.Fare fare, FoodKind food, List<Finding> findings) {
        Home home = seen.home();
        if (food == FoodKind.PEST && seen.invertebrates().noneMatch(each -> isItsPest(fare, each))) {
            findings.add(finding(
                    seen,
                    Call.NO,
                    "It eats one pest and nothing else, and none is counted here.",
                    "It starves in weeks.",
                    null));
        } else if (NOT_TO_BE_HAD.contains(food)) {
            boolean alone = fare.foods().stream().allMatch(NOT_TO_BE_HAD::contains)
                    || seen.candidate().species().care().difficulty() >= DEMANDING;
            findings.add(finding(
                    seen,
                    alone ? Call.NO : Call.MIND,
                    "It lives on " + food.words() + ", which nobody can give it for long.",
                    "Most starve within months.",
                    null));
        } else if (food == FoodKind.LIVE_MICROFAUNA
                && !home.foods().contains(Home.Given.LIVE_PODS)
                && (home.water() < LARGE || home.rock() < ROCK)) {
            boolean alone = fare.foods().equals(Set.of(FoodKind.LIVE_MICROFAUNA));
            findings.add(finding(
                    seen,
                    alone ? Call.NOT_YET : Call.MIND,
                    "It hunts small live animals all day, and your rock is too little to breed them.",
                    "A few weeks, and the rock is empty.",
                    Sentence.of("Breed or add live copepods first, and see it eat them.")));
        } else if (food == FoodKind.LIVE_FOOD
                && !home.foods().contains(Home.Given.LIVE_PODS)
                && !home.foods().contains(Home.Given.FROZEN)) {
            findings.add(finding(
                    seen,
                    Call.NOT_YET,
                    "It takes live food, and you feed none.",
                    "It may learn to take frozen food; see it eat before you buy.",
                    Sentence.of("Have live or frozen food first.")));
        } else if (food == FoodKind.ALGAE
                && seen.candidate().isFish()
                && !home.foods().contains(Home.Given.ALGAE)
                && isGrazer(seen.candidate().fish())) {
            findings.add(finding(
                    seen,
                    Call.MIND,
                    "It grazes all day, and you feed no algae.",
                    "Without them it grows thin and falls ill.",
                    Sentence.of("Give sheets of seaweed every day.")));
        }
    }

    /** Stars and slugs that live on what rock and sand grow, and on nothing a keeper gives, need much of it. */
    private static void ground(Situation seen, Species.Fare fare, List<Finding> findings) {
        InvertebrateSpecies animal = seen.candidate().invertebrate();
        InvertebrateSpecies.Extent extent = animal.extent();
        boolean grazes =
                (animal.group() == InvertebrateSpecies.Group.STAR || animal.group() == InvertebrateSpecies.Group.SLUG)
                        && !fare.foods().isEmpty()
                        && GROWN_HERE.containsAll(fare.foods())
                        && animal.care().difficulty() >= HUNGRY;
        double floor = seen.home().length() * seen.home().width();
        if (grazes && extent != null && floor < GROUND * extent.most() * extent.most()) {
            findings.add(finding(
                    seen,
                    Call.NO,
                    "Your tank grows too little for it to graze.",
                    "It eats the ground bare in weeks and starves: nothing you feed takes its place.",
                    null));
        }
    }

    private static boolean isItsPest(Species.Fare fare, Animals resident) {
        return resident.isPest() && fare.eats().stream().anyMatch(resident.invertebrate()::isPreyOf);
    }

    private static boolean isGrazer(FishSpecies fish) {
        return fish.diet() == FishSpecies.Diet.HERBIVORE;
    }

    private static void meals(Situation seen, Species.Fare fare, List<Finding> findings) {
        if (fare.feedings() >= OFTEN
                && seen.home().meals() < fare.feedings()
                && !seen.home().foods().contains(Home.Given.MANY_SMALL)) {
            boolean always = seen.candidate().fish().diet() == FishSpecies.Diet.PLANKTIVORE;
            findings.add(finding(
                    seen,
                    always ? Call.NOT_YET : Call.MIND,
                    "It eats small meals all day, " + Math.round(fare.feedings()) + " at least.",
                    "You feed " + Math.round(10 * seen.home().meals()) / 10.0 + " times.",
                    Sentence.of(
                            "Feed that often first, by a feeder if you are away, and watch nitrate and phosphate.")));
        }
    }

    /** Slow eaters beside quick ones starve at a full table. */
    private static void table(Situation seen, List<Finding> findings) {
        boolean slow = isSlow(seen.candidate());
        seen.fish().filter(resident -> isSlow(resident) != slow).findFirst().ifPresent(resident -> {
            Animals quick = slow ? resident : seen.candidate();
            if (isQuick(quick)) {
                findings.add(finding(
                        seen,
                        Call.NO,
                        slow
                                ? "It feeds slowly, and " + resident.words() + " would leave it nothing."
                                : Facts.capital(resident.words()) + " feeds slowly, and it would leave nothing.",
                        "Seahorses and pipefish are kept with their like.",
                        null));
            }
        });
    }

    private static boolean isSlow(Animals fish) {
        return fish.fish().temper().shape() == FishSpecies.Shape.SEAHORSE;
    }

    private static boolean isQuick(Animals fish) {
        FishSpecies.Swimming swimming = fish.fish().space().swimming();
        return fish.fish().temper().temperament() >= 2
                && (swimming == FishSpecies.Swimming.ROAMS
                        || swimming == FishSpecies.Swimming.CRUISES
                        || swimming == FishSpecies.Swimming.STAYS);
    }

    private static Finding finding(Situation seen, Call call, String what, String why, @Nullable Sentence becomes) {
        return new Finding(
                "feeding",
                call,
                Sentence.of(what),
                Sentence.of(
                        why,
                        Facts.source(
                                seen,
                                "What it eats",
                                seen.candidate().species().fare().source())),
                becomes);
    }
}
