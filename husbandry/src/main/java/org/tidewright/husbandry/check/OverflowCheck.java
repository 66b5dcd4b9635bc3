package org.tidewright.husbandry.check;

import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.source.Basis;

/** The overflow carries the flow with the water well under the rim, and inside its teeth. */
final class OverflowCheck {
    /** Water kept under the rim while running: waves and hands; common practice. */
    static final double KEPT_UNDER_RIM = 0.015;

    /** One standard error of the head by the weir's law at thin sheets, as a share: 15 % of flow, 2/3 of that in head. */
    private static final double HEAD_ERROR = 0.06;

    private OverflowCheck() {}

    static Check check(Situation situation, Sources sources) {
        double head = situation.running().crestHead();
        Overflow.Teeth teeth = situation.overflow().teeth();
        double underRim =
                situation.vessels().display().rimLevel() - situation.running().displayLevel();
        double inTeeth =
                teeth == null ? Double.POSITIVE_INFINITY : teeth.depth().in("m") - head;
        double margin = Math.min(underRim - KEPT_UNDER_RIM, inTeeth);
        String key = sources.key(
                "Head over the crest",
                Basis.FROM_MEMORY,
                "weir laws of Francis 1883 and ISO 1438, ± 15 % of flow at such thin sheets");
        Figure told = Figure.about(Measure.LEVEL, head, HEAD_ERROR * head);
        Figure flow = Figure.exact(Measure.FLOW, situation.running().displayFlow());
        Holding holding = Holding.of(margin, HEAD_ERROR * head);
        Sentence sentence = holding == Holding.FAILS
                ? Sentence.of(
                        inTeeth < underRim - KEPT_UNDER_RIM
                                ? "Cut the teeth deeper or open more of them: at "
                                : "Lower the crest or slow the pump: at ",
                        flow,
                        " the water stands ",
                        told,
                        " over the crest, ",
                        Figure.exact(Measure.LEVEL, underRim),
                        " under the rim.")
                : Sentence.of(
                        "The crest carries ",
                        flow,
                        " with ",
                        told,
                        " of water over it, ",
                        Figure.exact(Measure.LEVEL, underRim),
                        " under the rim.");
        return new Check(
                "overflow",
                "Head over the crest",
                holding,
                Figure.about(Measure.LEVEL, margin, HEAD_ERROR * head),
                Sentence.of(Sentence.figure(told, key)),
                sentence,
                List.of(key));
    }
}
