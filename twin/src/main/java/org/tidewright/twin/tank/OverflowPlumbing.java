package org.tidewright.twin.tank;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.law.hydraulic.DrainCapacity;
import org.tidewright.twin.law.hydraulic.FullSiphon;
import org.tidewright.twin.law.hydraulic.PipeRun;
import org.tidewright.twin.mechanism.water.DrainLine;
import org.tidewright.twin.mechanism.water.OverflowWeir;
import org.tidewright.twin.mechanism.water.Refill;
import org.tidewright.twin.mechanism.water.RunBack;

/** The way down: the crest, the box and its drains. */
final class OverflowPlumbing {
    private final Waters waters;
    private final List<Setting> drainsOpen = new ArrayList<>();
    private final List<Setting> primed = new ArrayList<>();

    OverflowPlumbing(Overflow overflow, Waters waters) {
        this.waters = waters;
        assemble(overflow);
    }

    /** One for each drain: 0 blocks it. */
    List<Setting> drainsOpen() {
        return drainsOpen;
    }

    /** One for each full siphon: 1 while no air is in it. */
    List<Setting> primed() {
        return primed;
    }

    private void assemble(Overflow overflow) {
        Body display = waters.display();
        Body box = waters.box();
        double spread = overflow.teeth() == null ? 0.15 : 0.25;
        Parameter coefficient = waters.builder()
                .parameter(
                        "flow over the crest, factor",
                        "1",
                        1,
                        1 - spread,
                        1 + spread,
                        Basis.FROM_MEMORY,
                        "weir laws (Francis 1883, ISO 1438) below the heads they are calibrated for");
        double crest = display.bottomHeight() + overflow.crest().in("m");
        waters.builder().add(new OverflowWeir(display, box, crest, Laws.overflowWeir(overflow), coefficient));

        Parameter purge = waters.builder()
                .parameter(Plumbing.PURGE_TIME, "s", 10, 3, 30, Basis.FROM_MEMORY, "a few pipe fillings");
        Parameter empties = waters.builder()
                .parameter(
                        "time in which a pipe runs empty",
                        "s",
                        3,
                        1,
                        6,
                        Basis.FROM_MEMORY,
                        "free fall through a few bends");
        double carriedByOthers = carriedByOthers(overflow);
        for (int i = 0; i < overflow.drains().size(); i++) {
            Overflow.Drain drain = overflow.drains().get(i);
            Body into = drain.into() == null ? waters.sections().get(0) : waters.section(drain.into());
            double own = i == 0 ? Math.max(0, waters.running().displayFlow() - carriedByOthers) : 0;
            drain(drain, box, into, display.bottomHeight(), own, purge, empties);
        }
    }

    /** What the drains after the first take at the box's running level. */
    private double carriedByOthers(Overflow overflow) {
        Body box = waters.box();
        Body first = waters.sections().get(0);
        double sum = 0;
        for (Overflow.Drain drain :
                overflow.drains().subList(1, overflow.drains().size())) {
            double inlet =
                    waters.vessels().display().bottomHeight() + drain.inlet().in("m");
            double head = box.bottomHeight() + waters.running().boxLevel() - inlet;
            if (head > 0) {
                double drop = box.bottomHeight()
                        + waters.running().boxLevel()
                        - first.bottomHeight()
                        - waters.running().sectionLevels()[0];
                sum += DrainCapacity.of(
                                head, drop, Laws.drain(drain), waters.water().viscosity())
                        .carried();
            }
        }
        return sum;
    }

    private void drain(
            Overflow.Drain drain,
            Body box,
            Body into,
            @Unit("m") double displayBottom,
            @Unit("m^3/s") double ownFlow,
            Parameter purge,
            Parameter empties) {
        boolean siphon = drain.kind() == Overflow.DrainKind.SIPHON;
        PipeRun pipe = Laws.drain(drain);
        if (siphon && ownFlow > 0) {
            double drop = box.bottomHeight() + waters.running().boxLevel() - into.bottomHeight() - waters.levelOf(into);
            double valve = FullSiphon.throttlingLoss(
                    pipe, drop, ownFlow, waters.water().viscosity());
            pipe = pipe.withExtraLoss(Math.max(0, valve));
        }
        Setting open = waters.builder().setting(drain.name() + " open", 1);
        drainsOpen.add(open);
        Setting full = siphon ? waters.builder().setting(drain.name() + " primed", ownFlow > 0 ? 1 : 0) : null;
        double inlet = displayBottom + drain.inlet().in("m");
        waters.builder()
                .add(new DrainLine(
                        drain.name(), box, into, inlet, pipe, waters.water().viscosity(), full, open, purge));
        if (full != null) {
            primed.add(full);
            Body contents = waters.place(
                    waters.builder().body(drain.name() + " pipe"), Place.HELD_BACK, ownFlow > 0 ? pipe.contents() : 0);
            double drawLevel = drain.inlet().in("m") - (box.bottomHeight() - displayBottom);
            waters.builder().add(new RunBack(contents, into, full, empties));
            waters.builder().add(new Refill(box, contents, pipe.contents(), drawLevel, full, empties));
        }
    }
}
