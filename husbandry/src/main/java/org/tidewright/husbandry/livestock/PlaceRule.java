package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.reef.CatalogueLore;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.Placement;
import org.tidewright.husbandry.reef.PointValue;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.husbandry.reef.Sites;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.InvertebrateSpecies;

/** Whether a coral finds a place with its light and its flow, apart from those it stings or that sting it. */
final class PlaceRule implements Rule {
    /** Of a piece as it is sold; ours. */
    private static final double RADIUS = 0.02;

    private static final double MICRO = 1e6;

    @Override
    public List<Finding> judge(Situation seen) {
        ReefSite reef = seen.setting().reef();
        if (reef == null || seen.candidate().isFish()) {
            return List.of();
        }
        InvertebrateSpecies coral = seen.candidate().invertebrate();
        InvertebrateSpecies.Place needs = coral.place();
        if (!coral.group().isCoral() || needs == null) {
            return List.of();
        }
        if (reef.light().isEmpty()) {
            return List.of(Finding.of(
                    "place",
                    Call.MIND,
                    Sentence.of("Nobody knows whether your light is enough for it."),
                    needed(seen, needs)));
        }
        Colony piece = new Colony(coral.name().common(), 1, RADIUS, CatalogueLore.traits(coral), null);
        Optional<Placement> best = Sites.suggested(reef, piece, 1).stream().findFirst();
        return List.of(best.map(found -> place(seen, needs, found)).orElseGet(() -> none(seen, needs)));
    }

    private static Finding place(Situation seen, InvertebrateSpecies.Place needs, Placement found) {
        PointValue light = found.light();
        Sentence there = Sentence.of(
                "Look at ",
                Facts.length(found.place().x()),
                " from the left, ",
                Facts.length(found.place().y()),
                " from the front and ",
                Facts.length(found.place().height()),
                " up");
        return Finding.of(
                "place",
                Call.YES,
                Sentence.of("There is a place for it."),
                light == null
                        ? Sentence.of(there, ". ", needed(seen, needs))
                        : Sentence.of(
                                there,
                                ", where the light is ",
                                Sentence.figure(light.figure(Measure.LIGHT), computed(seen)),
                                ". ",
                                needed(seen, needs)));
    }

    private static Finding none(Situation seen, InvertebrateSpecies.Place needs) {
        return Finding.of(
                        "place",
                        Call.NOT_YET,
                        Sentence.of("No free place is known to suit it."),
                        Sentence.of(
                                needed(seen, needs),
                                " Light, flow and the reach of its neighbours leave none.",
                                new Sentence.Part.Reference(computed(seen))))
                .becomes(Sentence.of("Make room or change the light: try places on the page Corals."));
    }

    private static Sentence needed(Situation seen, InvertebrateSpecies.Place needs) {
        return Sentence.of(
                "It asks for ",
                Figure.exact(Measure.NUMBER, MICRO * needs.lightLeast()),
                " to ",
                Figure.exact(Measure.LIGHT, needs.lightMost()),
                ".",
                Facts.source(seen, "Light and flow", needs.source()));
    }

    private static String computed(Situation seen) {
        return seen.sources()
                .key("Light in the display", Basis.COMPUTED, "from the lamps and the measured points of your plan");
    }
}
