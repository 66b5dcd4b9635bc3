package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.source.Basis;

/** The floor stays dry when the power fails: with the air holes clear, and with them blocked. */
final class PowerCutCheck {
    private PowerCutCheck() {}

    static List<Check> check(Situation situation, Sources sources) {
        if (!situation.plan().hasSump()) {
            return List.of(nothingFallsBack());
        }
        List<Check> checks = new ArrayList<>();
        if (situation.hasAirHoles()) {
            checks.add(one("power_cut", "Power cut", situation.holesClear(), situation, sources, false));
            checks.add(one(
                    "power_cut_air_hole_blocked",
                    "Power cut, air hole blocked",
                    situation.holesBlocked(),
                    situation,
                    sources,
                    true));
        } else {
            checks.add(one("power_cut", "Power cut", situation.holesClear(), situation, sources, false));
        }
        return checks;
    }

    private static Check nothingFallsBack() {
        return new Check(
                "power_cut",
                "Power cut",
                Holding.HOLDS,
                null,
                Sentence.of("nothing falls back"),
                Sentence.of(
                        "Nothing falls back in a power cut: no vessel stands below another, so with the pumps off the"
                                + " water stays where it is."),
                List.of());
    }

    private static Check one(
            String id, String title, DrainDownStudy study, Situation situation, Sources sources, boolean holeBlocked) {
        double room = study.room();
        double margin = room - situation.roomNeeded();
        boolean wet = room < 0;
        Holding holding = Holding.of(margin, study.doubt());
        String levels = DrainDownStudy.source(sources);
        List<String> keys = new ArrayList<>(List.of(levels));
        Figure told = Figure.about(Measure.VOLUME, Math.abs(room), study.doubt());
        Sentence shown = wet
                ? Sentence.of(Sentence.alarm("on the floor "), Sentence.figure(told, levels))
                : Sentence.of(Sentence.figure(told, levels), " left");
        Sentence sentence = holding == Holding.FAILS
                ? mend(study, situation, wet, told, holeBlocked)
                : Sentence.of("The floor stays dry, with ", told, " of room to spare in the sump.");
        sentence = sentence.then(needed(situation, sources, keys));
        if (!holeBlocked && situation.returnLine().checkValve() != ReturnLine.CheckValve.NONE) {
            sentence = sentence.then(Sentence.of(
                    "With the check valve holding it would be ",
                    Figure.about(
                            Measure.VOLUME,
                            situation.checkValveHolds().room(),
                            situation.checkValveHolds().doubt()),
                    "; that is not counted, as flaps leak sooner or later."));
        }
        return new Check(
                id, title, holding, Figure.about(Measure.VOLUME, margin, study.doubt()), shown, sentence, keys);
    }

    private static Sentence needed(Situation situation, Sources sources, List<String> keys) {
        boolean asked =
                situation.plan().limits() != null && situation.plan().limits().roomToSpare() != null;
        String key = asked
                ? sources.key("Room to spare in the sump", Basis.YOUR_PLAN, "limits")
                : sources.key("30 mm kept under the sump's rim", Basis.COMMON_PRACTICE, "");
        keys.add(key);
        Figure need = Figure.exact(Measure.VOLUME, situation.roomNeeded());
        return asked
                ? Sentence.of("You ask for ", Sentence.figure(need, key), ".")
                : Sentence.of(
                        "The top ",
                        Figure.exact(Measure.LEVEL, Situation.FREEBOARD),
                        " of the sump, ",
                        Sentence.figure(need, key),
                        ", are to stay free.");
    }

    private static Sentence mend(
            DrainDownStudy study, Situation situation, boolean wet, Figure told, boolean holeBlocked) {
        double missing = situation.roomNeeded() - study.room();
        double area = situation
                .vessels()
                .display()
                .shape()
                .surface(situation.running().displayLevel());
        double nozzle = situation.returnLine().outlets().stream()
                .mapToDouble(outlet -> outlet.lowerEdge().in("m"))
                .min()
                .orElseThrow();
        double raised = nozzle + missing / area;
        double crest = situation.overflow().crest().in("m");
        OptionalDouble level = situation.highestRunningLevel(study);
        List<Object> words = new ArrayList<>();
        if (holeBlocked) {
            words.add("Brush the air hole clear every month");
            words.add(
                    raised < crest ? ", and raise the nozzle to " : ", and plan a bigger sump or a shallower display");
            if (raised < crest) {
                words.add(Figure.exact(Measure.LENGTH, raised));
            }
            words.add(": blocked, the line draws the display down to the nozzle, and ");
        } else {
            if (level.isPresent() && level.getAsDouble() > 0.05) {
                words.add("Run the last section of the sump no higher than ");
                words.add(Figure.exact(Measure.LENGTH, level.getAsDouble()));
            } else if (raised < crest) {
                words.add("Raise the nozzle to ");
                words.add(Figure.exact(Measure.LENGTH, raised));
            } else {
                words.add("Plan a bigger sump");
            }
            words.add(": as drawn, ");
        }
        if (wet) {
            words.add(Sentence.alarm("water reaches the floor"));
            words.add(", ");
            words.add(told);
            words.add(" of it.");
        } else {
            words.add("only ");
            words.add(told);
            words.add(" of room are left.");
        }
        return Sentence.of(words.toArray());
    }
}
