package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.twin.forecast.Outlook.Range;

/** Tells what twelve weeks of its food do to nitrate and phosphate. */
final class NutrientRemarks {
    /** What usual tests can tell apart, mg/L; common practice. */
    private static final double NITRATE_TELLABLE = 2;

    private static final double PHOSPHATE_TELLABLE = 0.03;

    private final Burden burden;
    private final BurdenSources sources;
    private final String it;
    private final Nutrient nitrate;
    private final Nutrient phosphate;

    NutrientRemarks(Burden burden, BurdenSources sources, String it) {
        this.burden = burden;
        this.sources = sources;
        this.it = it;
        nitrate = new Nutrient(
                WaterQuantity.NITRATE,
                Measure.CONCENTRATION,
                held(WaterQuantity.NITRATE),
                burden.nitrate(),
                burden.grown().nitrate(),
                NITRATE_TELLABLE);
        phosphate = new Nutrient(
                WaterQuantity.PHOSPHATE,
                Measure.TRACE,
                held(WaterQuantity.PHOSPHATE),
                burden.phosphate(),
                burden.grown().phosphate(),
                PHOSPHATE_TELLABLE);
    }

    private TargetRange held(WaterQuantity quantity) {
        return TargetRange.of(burden.plan(), quantity).orElseThrow();
    }

    /**
     * One of them.
     *
     * @param tellable what tests can tell apart, mg/L
     */
    private record Nutrient(
            WaterQuantity quantity,
            Measure measure,
            TargetRange held,
            Compared young,
            Compared grown,
            double tellable) {
        String name() {
            return quantity.toString().toLowerCase(Locale.ROOT);
        }

        /** Whether it leaves its range for their sake. */
        boolean leaves(Compared told) {
            return told.with().middle() > 1e3 * held.most() && told.more().middle() >= tellable;
        }

        Figure figure(Range range) {
            return Figure.between(measure, range.middle() / 1e3, range.low() / 1e3, range.high() / 1e3);
        }
    }

    /** What must be taken out more of before they come, in words; empty for neither. */
    String first() {
        return Stream.of(nitrate, phosphate)
                .filter(each -> each.leaves(each.young()))
                .map(Nutrient::name)
                .collect(Collectors.joining(" and "));
    }

    List<Sentence> remarks() {
        return List.of(told(nitrate), told(phosphate));
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
                Sentence.figure(Figure.exact(of.measure(), of.held().most()), sources.range(of.held())),
                ".");
    }
}
