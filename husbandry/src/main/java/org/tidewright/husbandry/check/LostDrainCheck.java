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
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.mechanism.water.ReturnPump;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.tank.Vessels;

/**
 * Nothing drains while the pump goes on: a hung overflow has lost its siphon, or everything is blocked. The pump can put
 * on the floor only what it can reach, and what the top-off adds.
 */
final class LostDrainCheck {
    private LostDrainCheck() {}

    static Check check(Situation situation, Sources sources) {
        boolean hung = situation.overflow().kind() == Overflow.Kind.HANG_ON;
        String title = hung ? "Overflow siphon lost, pump runs on" : "Every drain blocked, pump runs on";
        String id = hung ? "overflow_siphon_lost" : "drains_blocked";
        PowerCut.Result run = situation.drainsStop();
        double reservoir = situation.plan().topOff() == null
                ? 0
                : situation.plan().topOff().reservoir().in("m^3");
        double moved = situation
                .cascade()
                .movable(situation.returnLine().pump().intake().in("m"));
        double margin = roomAbove(situation) - moved - reservoir;
        String key = sources.key(
                "What the pump can move when nothing drains",
                Basis.COMPUTED,
                "last section down to the pump's intake, heads over the baffles, and the whole top-off reservoir");
        double dry = run.firstTime(ReturnPump.DRAWS_AIR);
        Figure spilled = Figure.exact(Measure.VOLUME, run.spilled());
        Figure shownMargin = Figure.exact(Measure.VOLUME, margin);
        if (run.spilled() > 1e-4) {
            List<Object> words = new ArrayList<>();
            double allowed = Math.max(0, reservoir + margin);
            if (reservoir > 0 && allowed > 0.2 * reservoir) {
                words.add("Fill the top-off reservoir with no more than ");
                words.add(Figure.exact(Measure.VOLUME, allowed));
                words.add(", or fit a low-level cut-out to the return pump: ");
            } else {
                words.add("Fit a low-level cut-out to the return pump, or lower the running level of its section: ");
            }
            words.add(hung ? "when the overflow loses its siphon, the pump " : "with every drain blocked, the pump ");
            words.add(Sentence.alarm("puts water on the floor"));
            words.add(", ");
            words.add(spilled);
            if (reservoir > 0) {
                words.add(", most of it added by the top-off, which takes the falling level for evaporation");
            }
            words.add(".");
            return new Check(
                    id,
                    title,
                    Holding.FAILS,
                    shownMargin,
                    Sentence.of(Sentence.alarm("on the floor "), Sentence.figure(spilled, key)),
                    Sentence.of(words.toArray()),
                    List.of(key));
        }
        return new Check(
                id,
                title,
                Holding.of(margin, 0.5e-3),
                shownMargin,
                Sentence.of("room for ", Sentence.figure(shownMargin, key), " more"),
                Sentence.of(
                        "The floor stays dry even then: the pump runs dry after ",
                        Figure.exact(Measure.DURATION, dry),
                        " and the display could take ",
                        shownMargin,
                        " more."),
                List.of(key));
    }

    /** Room in the display and its box up to the rim. */
    private static double roomAbove(Situation situation) {
        Vessels.Vessel display = situation.vessels().display();
        double level = situation.running().displayLevel();
        double room =
                display.shape().volume(display.rimLevel()) - display.shape().volume(level);
        Vessels.Vessel box = situation.vessels().box();
        if (box != null) {
            room += box.shape().volume(box.rimLevel())
                    - box.shape().volume(situation.running().boxLevel());
        }
        return room;
    }
}
