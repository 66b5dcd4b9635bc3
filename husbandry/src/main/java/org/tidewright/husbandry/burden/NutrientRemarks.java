package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.stream.Collectors;
import org.tidewright.husbandry.advice.Sentence;

/** Tells what twelve weeks of its food do to nitrate and phosphate. */
final class NutrientRemarks {
    private final BurdenSources sources;
    private final String it;
    private final List<Nutrient> nutrients;

    NutrientRemarks(Burden burden, BurdenSources sources, String it) {
        this.sources = sources;
        this.it = it;
        nutrients = Nutrient.of(burden);
    }

    /** What must be taken out more of before they come, in words; empty for neither. */
    String first() {
        return nutrients.stream()
                .filter(each -> each.leaves(each.young()))
                .map(Nutrient::name)
                .collect(Collectors.joining(" and "));
    }

    List<Sentence> remarks() {
        return nutrients.stream().map(this::told).toList();
    }

    private Sentence told(Nutrient of) {
        String act = of.leaves(of.young())
                ? "Take out more " + of.name() + " first: "
                : of.leaves(of.grown())
                        ? "Be ready to take out more " + of.name()
                                + (it.equals("it") ? " as it grows: " : " as they grow: ")
                        : of.grown().more().middle() < of.tellable()
                                ? "Leave " + of.name() + " to itself, for no test will tell the difference: "
                                : "Leave the means against " + of.name() + " as they are: ";
        return Sentence.of(
                act + "after twelve weeks it stands at ",
                Sentence.figure(of.figure(of.young().without()), sources.twin()),
                " without " + it + ", with " + it + " by ",
                Sentence.figure(of.figure(of.young().more()), sources.twin()),
                " higher and with " + it + " grown by ",
                Sentence.figure(of.figure(of.grown().more()), sources.twin()),
                "; it is held under ",
                Sentence.figure(of.most(), sources.range(of.held())),
                ".");
    }
}
