package org.tidewright.husbandry.check;

import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;

/** The last section runs below the line up to which a power cut finds room. */
final class RunningLevelCheck {
    private RunningLevelCheck() {}

    static Check check(Situation situation, Sources sources) {
        double running = situation.running().sectionLevels()[situation.running().sectionLevels().length - 1];
        OptionalDouble blocked = situation.highestRunningLevel(situation.holesBlocked());
        OptionalDouble clear = situation.highestRunningLevel(situation.holesClear());
        String key = sources.key(
                "Highest level of the last section",
                Basis.COMPUTED,
                "room of all sections above their levels, 30 mm kept under the rim");
        boolean onlyClear = blocked.isEmpty() || blocked.getAsDouble() < running;
        OptionalDouble highest = onlyClear ? clear : blocked;
        if (highest.isEmpty()) {
            return new Check(
                    "running_level",
                    "Line on the last section",
                    Holding.FAILS,
                    null,
                    Sentence.of("none low enough"),
                    Sentence.of("Plan a bigger sump: no running level leaves room for what falls back."),
                    List.of(key));
        }
        Amount stated = situation
                .sump()
                .sections()
                .get(situation.sump().sections().size() - 1)
                .waterLevel();
        double doubt = stated != null && stated.doubt() > 0 ? stated.doubtIn("m") : DrainDownStudy.TAPE_ERROR;
        double margin = highest.getAsDouble() - running;
        Figure line = Figure.exact(Measure.LEVEL, highest.getAsDouble());
        return new Check(
                "running_level",
                "Line on the last section",
                Holding.of(margin, doubt),
                Figure.about(Measure.LEVEL, margin, doubt),
                Sentence.of("at most ", Sentence.figure(line, key)),
                Sentence.of(
                        "Mark the last section at ",
                        line,
                        " and never fill it higher while the pump runs; it runs at ",
                        Figure.about(Measure.LEVEL, running, doubt),
                        onlyClear && situation.hasAirHoles()
                                ? ". Above the line a power cut no longer finds room even with the air hole clear."
                                : ". Above the line a power cut no longer finds room, the air hole counted as blocked."),
                List.of(key));
    }
}
