package org.tidewright.husbandry.check;

import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.plan.source.Basis;

/** A top-off that stays on harms neither the animals, by fresh water, nor the floor, when the power then fails. */
final class TopOffCheck {
    private TopOffCheck() {}

    static List<Check> check(Situation situation, Sources sources) {
        if (situation.plan().topOff() == null) {
            return List.of();
        }
        double reservoir = situation.plan().topOff().reservoir().in("m^3");
        return List.of(salinity(situation, sources, reservoir), thenPowerCut(situation, sources, reservoir));
    }

    private static Check salinity(Situation situation, Sources sources, double reservoir) {
        double volume = situation.systemVolume();
        double salinity = situation.water().salinity();
        double after = salinity * volume / (volume + reservoir);
        double largest = volume / (salinity - 1);
        String key = sources.key(
                "Fresh water that lowers salinity by no more than 1",
                Basis.COMMON_PRACTICE,
                "reservoir up to volume / 35");
        double margin = largest - reservoir;
        Figure told = Figure.exact(Measure.NUMBER, after);
        return new Check(
                "top_off_salinity",
                "Top-off stays on",
                margin >= 0 ? Holding.HOLDS : Holding.FAILS,
                Figure.exact(Measure.VOLUME, margin),
                Sentence.of("salinity falls to ", Sentence.figure(told, key)),
                margin >= 0
                        ? Sentence.of(
                                "A full reservoir run in by mistake lowers the salinity from ",
                                Figure.exact(Measure.NUMBER, salinity),
                                " to ",
                                told,
                                ", no more than animals bear in a day.")
                        : Sentence.of(
                                "Fill the reservoir with no more than ",
                                Figure.exact(Measure.VOLUME, largest),
                                ", or give it a second, independent stop: run in whole it lowers the salinity from ",
                                Figure.exact(Measure.NUMBER, salinity),
                                " to ",
                                told,
                                "."),
                List.of(key));
    }

    /** The chain to beware of: more water in the system than planned, then the power fails. */
    private static Check thenPowerCut(Situation situation, Sources sources, double reservoir) {
        DrainDownStudy study = situation.holesClear();
        double room = study.room() - reservoir;
        String key = sources.key(
                "Room in the sump after a power cut, less the reservoir",
                Basis.COMPUTED,
                "air holes clear, no check valve");
        Figure told = Figure.about(Measure.VOLUME, Math.abs(room), study.doubt());
        Holding holding = Holding.of(room, study.doubt());
        return new Check(
                "top_off_then_power_cut",
                "Top-off stays on, then the power fails",
                holding,
                Figure.about(Measure.VOLUME, room, study.doubt()),
                holding == Holding.FAILS
                        ? Sentence.of(Sentence.alarm("on the floor "), Sentence.figure(told, key))
                        : Sentence.of(Sentence.figure(told, key), " left"),
                holding == Holding.FAILS
                        ? Sentence.of(
                                "Give the top-off a time-out or a second float: with its reservoir run in, the next power cut ",
                                Sentence.alarm("puts water on the floor"),
                                ", ",
                                told,
                                " of it.")
                        : Sentence.of("Even with the reservoir run in, a power cut finds room."),
                List.of(key));
    }
}
