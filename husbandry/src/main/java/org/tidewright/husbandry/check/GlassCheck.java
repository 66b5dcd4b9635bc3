package org.tidewright.husbandry.check;

import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Glass;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.law.structure.GlassPane;
import org.tidewright.twin.law.structure.TopEdge;

/** Stress in the display's longest pane, for comparison; the maker's table decides. */
final class GlassCheck {
    private GlassCheck() {}

    static Check check(Situation situation, Sources sources) {
        Display display = situation.plan().display();
        boolean held = display.glass().topEdge() == Glass.TopEdge.HELD;
        GlassPane pane = new GlassPane(
                Math.max(display.length().in("m"), display.width().in("m")),
                display.height().in("m"),
                held ? TopEdge.HELD : TopEdge.FREE);
        String key = sources.key(
                "Stress in the longest pane",
                Basis.PUBLISHED,
                "linear plate theory as in Timoshenko and Woinowsky-Krieger; 19.2 MPa and a factor of 3.8, common practice");
        if (!(pane.assess(situation.water().density()) instanceof GlassPane.Estimate estimate)) {
            return new Check(
                    "glass",
                    "Glass of the longest pane",
                    Holding.ASK,
                    null,
                    Sentence.of("beyond the estimate"),
                    Sentence.of(
                            "Brace it or take the maker’s table: a rimless pane this long for its height is beyond a"
                                    + " simple estimate."),
                    List.of(key));
        }
        double thickness = display.glass().panes().in("m");
        double least = estimate.leastThickness(org.tidewright.twin.law.structure.Glass.ALLOWABLE_STRESS);
        Figure factor = Figure.exact(Measure.NUMBER, estimate.safetyFactor(thickness));
        Figure bow = Figure.exact(Measure.THICKNESS, estimate.deflection(thickness));
        Sentence sentence = Sentence.of(
                thickness < least ? "Ask the maker before you fill it: the pane has " : "The pane has ",
                Figure.exact(Measure.THICKNESS, thickness),
                " where the estimate asks for ",
                Figure.exact(Measure.THICKNESS, least),
                held ? ", its top edge held; it bows " : ", its top edge free; it bows ",
                bow,
                ". An estimate for comparison: the maker’s table decides.");
        return new Check(
                "glass",
                "Glass of the longest pane",
                Holding.ASK,
                Figure.exact(Measure.THICKNESS, thickness - least),
                Sentence.of("factor ", Sentence.figure(factor, key)),
                sentence,
                List.of(key));
    }
}
