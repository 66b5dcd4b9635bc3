package org.tidewright.husbandry.check;

import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.rehearsal.WaterMovement;

/** The pump comes back before the drain runs full: the display stays under its rim, the pump keeps its water. */
final class RestartCheck {
    private RestartCheck() {}

    static Check check(Situation situation, Sources sources) {
        PowerCut.Result restart = situation.restart();
        WaterMovement.Vessel display = restart.movement().vessel(Names.DISPLAY);
        double highest = 0;
        for (double level : display.level()) {
            highest = Math.max(highest, level);
        }
        double rim = situation.vessels().display().rimLevel();
        String key = sources.key(
                "Levels after the power returns",
                Basis.COMPUTED,
                "the full siphon counted as drawing air; a standpipe or spare drain as drawn");
        Figure margin = Figure.exact(Measure.LEVEL, rim - highest);
        double spilled = restart.spilled();
        if (spilled > 0) {
            return new Check(
                    "restart",
                    "Power returns, siphon not formed",
                    Holding.FAILS,
                    margin,
                    Sentence.of(
                            Sentence.alarm("on the floor "),
                            Sentence.figure(Figure.exact(Measure.VOLUME, spilled), key)),
                    Sentence.of(
                            "Give the display a spare drain that carries the flow alone: if the siphon does not form again,"
                                    + " the display ",
                            Sentence.alarm("runs over its rim"),
                            " after ",
                            Figure.exact(Measure.DURATION, restart.overRim(Names.DISPLAY)),
                            "."),
                    List.of(key));
        }
        if (restart.pumpDrewAir()) {
            return new Check(
                    "restart",
                    "Power returns, siphon not formed",
                    Holding.CLOSE,
                    margin,
                    Sentence.of(
                            "pump dry after ",
                            Sentence.figure(
                                    Figure.exact(Measure.DURATION, restart.firstTime(ReturnPump.DRAWS_AIR)), key)),
                    Sentence.of(
                            "Let the pump start slowly or fit a low-level cut-out: if the siphon does not form again, the"
                                    + " pump draws air, with ",
                            margin,
                            " left to the display’s rim. The floor stays dry; the pump and any heater in that section"
                                    + " do not."),
                    List.of(key));
        }
        return new Check(
                "restart",
                "Power returns, siphon not formed",
                Holding.of(rim - highest, 0.003),
                margin,
                Sentence.of("display ", Sentence.figure(margin, key), " under its rim"),
                Sentence.of(
                        "The pump may start by itself: even if the full siphon keeps drawing air, the display stays ",
                        margin,
                        " under its rim and the pump keeps its water."),
                List.of(key));
    }
}
