package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.seawater.unit.Unit;

/** Room to swim and to turn, for the animal it becomes and not for the one that is sold. */
final class RoomRule implements Rule {
    /** Customary least volumes are disputed by half, lengths by less: below these shares of them the answer is no. */
    private static final double LENGTH_ENOUGH = 0.85;

    private static final double VOLUME_ENOUGH = 0.6;

    /** Share of a tank's width that an animal's span may take. */
    private static final double SPAN = 0.85;

    private static final double[] YEARS = {0.5, 1, 2, 3, 5, 8};

    @Override
    public List<Finding> judge(Situation seen) {
        return seen.candidate().isFish() ? fish(seen) : invertebrate(seen);
    }

    private static List<Finding> fish(Situation seen) {
        FishSpecies fish = seen.candidate().fish();
        Home home = seen.home();
        double grown = seen.candidate().grown();
        double needed = Math.max(fish.space().tankLength(), lengths(fish) * grown);
        // An eel bends.
        boolean turns = fish.temper().shape() == FishSpecies.Shape.EEL || home.width() >= grown;
        List<Finding> findings = new ArrayList<>();
        if (home.length() < LENGTH_ENOUGH * needed
                || !turns
                || home.water() < VOLUME_ENOUGH * fish.space().tankVolume()) {
            String rule = seen.candidate().length() < 0.6 * grown ? "growth" : "room";
            findings.add(Finding.of(
                    rule,
                    Call.NO,
                    Sentence.of(
                            "It grows to ",
                            Facts.length(grown),
                            ", and your tank is ",
                            Facts.length(home.length()),
                            " long with ",
                            Facts.volume(home.water()),
                            "."),
                    Sentence.of(
                            "It asks for ",
                            Facts.length(needed),
                            " and ",
                            Facts.volume(fish.space().tankVolume()),
                            outgrown(seen, fish),
                            " Least sizes are customary.",
                            Facts.source(seen, "Adult length", fish.size().source()),
                            Facts.source(seen, "Room it needs", fish.space().source()))));
        } else if (home.length() < needed || home.water() < fish.space().tankVolume()) {
            findings.add(Finding.of(
                    "room",
                    Call.MIND,
                    Sentence.of("Room will be short when it is grown: ", Facts.length(grown), "."),
                    Sentence.of(
                            "Custom asks for ",
                            Facts.length(needed),
                            " of length and ",
                            Facts.volume(fish.space().tankVolume()),
                            "; opinions differ by half.",
                            Facts.source(seen, "Room it needs", fish.space().source()))));
        } else {
            findings.add(Finding.of(
                    "room",
                    Call.YES,
                    Sentence.of(
                            "Room when grown: ",
                            Facts.length(home.length()),
                            " is " + Math.round(10 * home.length() / grown) / 10.0 + " body lengths."),
                    Sentence.of(
                            "At ",
                            Facts.length(grown),
                            " it asks for ",
                            Facts.length(needed),
                            ".",
                            Facts.source(seen, "Room it needs", fish.space().source()))));
        }
        return findings;
    }

    /** Body lengths of free way, common practice. */
    private static @Unit("1") double lengths(FishSpecies fish) {
        return switch (fish.space().swimming()) {
            case ROAMS -> 5;
            case CRUISES -> 4;
            case STAYS, PERCHES, BURIES -> 3;
        };
    }

    /** From when on the tank is too short for it, if it is not yet. */
    private static Sentence outgrown(Situation seen, FishSpecies fish) {
        for (double years : YEARS) {
            double then = fish.lengthAfter(seen.candidate().length(), years);
            if (then * lengths(fish) > seen.home().length()) {
                return Sentence.of(
                        "; within " + (years < 1 ? "half a year" : years == 1 ? "a year" : (int) years + " years")
                                + " it is ",
                        Facts.length(then),
                        ".");
            }
        }
        return Sentence.of(".");
    }

    private static List<Finding> invertebrate(Situation seen) {
        InvertebrateSpecies animal = seen.candidate().invertebrate();
        double narrow = Math.min(seen.home().length(), seen.home().width());
        if (animal.extent() == null
                || animal.group().isCoral()
                || animal.extent().most() <= SPAN * narrow) {
            return List.of();
        }
        return List.of(Finding.of(
                "room",
                Call.NO,
                Sentence.of(
                        "It grows ",
                        Facts.length(animal.extent().most()),
                        " wide, and your tank measures ",
                        Facts.length(narrow),
                        "."),
                Sentence.of(
                        "It would touch everything in it.",
                        Facts.source(seen, "Adult size", animal.extent().source()))));
    }
}
