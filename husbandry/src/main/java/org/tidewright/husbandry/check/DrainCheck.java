package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Overflow.DrainKind;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.DrainCapacity;
import org.tidewright.twin.law.hydraulic.DrainMouth;
import org.tidewright.twin.law.hydraulic.VentedDrain;
import org.tidewright.twin.tank.Laws;

/** The working drain carries the flow, and each spare carries it alone when the working one is blocked. */
final class DrainCheck {
    private DrainCheck() {}

    static List<Check> check(Situation situation, Sources sources) {
        List<Check> checks = new ArrayList<>();
        List<Overflow.Drain> drains = situation.overflow().drains();
        checks.add(working(drains.get(0), situation, sources));
        for (Overflow.Drain drain : drains) {
            if (drain.kind() == DrainKind.EMERGENCY) {
                checks.add(spare(drain, situation, sources));
            }
        }
        return checks;
    }

    private static Check working(Overflow.Drain drain, Situation situation, Sources sources) {
        double flow = situation.running().displayFlow();
        double bottom = boxBottom(situation);
        double head = bottom + situation.running().boxLevel() - drain.inlet().in("m");
        double drop = situation.vessels().display().bottomHeight()
                + bottom
                + situation.running().boxLevel()
                - situation.vessels().sections().get(0).vessel().bottomHeight()
                - situation.running().sectionLevels()[0];
        DrainCapacity capacity = DrainCapacity.of(
                Math.max(0, head), drop, Laws.drain(drain), situation.water().viscosity());
        boolean siphon = drain.kind() == DrainKind.SIPHON;
        double carried = siphon
                ? capacity.carried()
                : VentedDrain.annularLimit(drain.pipe().bore().in("m"));
        String key = siphon
                ? sources.key(
                        "Flow of the full siphon", Basis.COMPUTED, "Darcy and Weisbach, Churchill 1977; valve open")
                : sources.key(
                        "Quiet flow of a pipe that takes air",
                        Basis.PUBLISHED,
                        "Wyly and Eaton 1961, pipe 7/24 full; EN 12056-3");
        double margin = carried - flow;
        Figure told = Figure.exact(Measure.FLOW, carried);
        Holding holding = margin >= 0 ? Holding.HOLDS : siphon ? Holding.FAILS : Holding.CLOSE;
        Sentence sentence;
        if (margin >= 0) {
            sentence = Sentence.of(
                    siphon ? "Open, the siphon would pass " : "The standpipe runs quietly up to ",
                    told,
                    siphon ? "; its valve holds it to the " : "; it is given ",
                    Figure.exact(Measure.FLOW, flow),
                    siphon ? " the pump brings." : ".");
        } else if (siphon) {
            sentence = Sentence.of(
                    "Take a wider drain or a smaller flow: even open, the siphon passes ",
                    told,
                    ", less than the ",
                    Figure.exact(Measure.FLOW, flow),
                    " the pump brings, so the box fills and the spare drain runs.");
        } else {
            sentence = Sentence.of(
                    "Expect gulping and noise, or take a wider standpipe: it runs quietly up to ",
                    told,
                    " and is given ",
                    Figure.exact(Measure.FLOW, flow),
                    ".");
        }
        return new Check(
                "working_drain",
                siphon ? "Drain, running full" : "Drain, taking air",
                holding,
                Figure.exact(Measure.FLOW, margin),
                Sentence.of("up to ", Sentence.figure(told, key)),
                sentence,
                List.of(key));
    }

    private static Check spare(Overflow.Drain drain, Situation situation, Sources sources) {
        double flow = situation.running().displayFlow();
        double lip = drain.inlet().in("m");
        double needed = new DrainMouth(drain.pipe().bore().in("m")).head(flow);
        double display = situation.vessels().display().rimLevel();
        double margin = display - OverflowCheck.KEPT_UNDER_RIM - (lip + needed);
        String key = sources.key(
                "Head over an open mouth", Basis.FROM_MEMORY, "round weir after Francis 1883, then orifice; ± 15 %");
        Figure told = Figure.about(Measure.LEVEL, needed, 0.1 * needed);
        Holding holding = Holding.of(margin, 0.1 * needed);
        return new Check(
                "spare_drain",
                "Main drain blocked, spare carries",
                holding,
                Figure.about(Measure.LEVEL, margin, 0.1 * needed),
                Sentence.of("needs ", Sentence.figure(told, key), " over its lip"),
                holding == Holding.FAILS
                        ? Sentence.of(
                                "Lower the spare drain’s lip or take a wider pipe: to carry ",
                                Figure.exact(Measure.FLOW, flow),
                                " alone it needs ",
                                told,
                                " of water over its lip, more than the display has.")
                        : Sentence.of(
                                "The spare drain carries the whole flow with ",
                                told,
                                " of water over its lip. It is dry while all is well: a trickle there means the main drain"
                                        + " is clogging."),
                List.of(key));
    }

    private static @Unit("m") double boxBottom(Situation situation) {
        return situation.overflow().box().bottom() == null
                ? 0
                : situation.overflow().box().bottom().in("m");
    }
}
