package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.DisplayLimits;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.heat.HeaterSizing;
import org.tidewright.twin.tank.RunningHeat;

/** The heaters hold the coldest room, and one that stays on does not cook the animals in the warmest. */
final class HeaterCheck {
    /** One standard error of the computed heat loss, as a share, until it is fitted from the keeper's own log. */
    private static final double LOSS_ERROR = 0.15;

    private HeaterCheck() {}

    static List<Check> check(Situation situation, Sources sources) {
        Plan plan = situation.plan();
        if (plan.heaters().isEmpty()) {
            return List.of();
        }
        RunningHeat heat = RunningHeat.of(plan);
        List<Check> checks = new ArrayList<>();
        if (plan.room().coldest() != null) {
            checks.add(coldest(plan, heat, plan.room().coldest().in("degC"), sources));
        }
        if (plan.room().warmest() != null) {
            checks.add(stuckOn(plan, heat, plan.room().warmest().in("degC"), sources));
        }
        return checks;
    }

    private static Check coldest(Plan plan, RunningHeat heat, @Unit("degC") double room, Sources sources) {
        double humidity = plan.room().humidity().in("1");
        double loss = heat.loss(plan.water().temperature().in("degC"), room, humidity);
        double needed = HeaterSizing.power(loss, heat.pumps(), 1);
        double fitted = plan.heaters().stream()
                .mapToDouble(heater -> heater.power().in("W"))
                .sum();
        double margin = fitted - HeaterSizing.MARGIN * needed;
        double doubt = LOSS_ERROR * loss;
        String key = heatKey(sources);
        Figure told = Figure.about(Measure.POWER, needed, doubt);
        Figure roomFigure = Figure.exact(Measure.TEMPERATURE, room);
        Holding holding = margin >= 0 ? Holding.HOLDS : fitted > needed ? Holding.CLOSE : Holding.FAILS;
        return new Check(
                "heater_in_coldest_room",
                "Heaters in the coldest room",
                holding,
                Figure.about(Measure.POWER, margin, doubt),
                Sentence.of(Sentence.figure(told, key), " of ", Figure.exact(Measure.POWER, fitted)),
                holding == Holding.FAILS
                        ? Sentence.of(
                                "Fit more heating: in a room of ",
                                roomFigure,
                                " the tank needs ",
                                told,
                                " beside its pumps, and has ",
                                Figure.exact(Measure.POWER, fitted),
                                ".")
                        : Sentence.of(
                                "In a room of ",
                                roomFigure,
                                " the tank needs ",
                                told,
                                " beside its pumps; ",
                                Figure.exact(Measure.POWER, fitted),
                                " are fitted, and 1.3 times the need is wise."),
                List.of(key));
    }

    private static Check stuckOn(Plan plan, RunningHeat heat, @Unit("degC") double room, Sources sources) {
        Heater largest = plan.heaters().stream()
                .max((a, b) -> Double.compare(a.power().in("W"), b.power().in("W")))
                .orElseThrow();
        double humidity = plan.room().humidity().in("1");
        double power = largest.power().in("W");
        double end = heat.settlesAt(power + heat.pumps() + heat.lights(), room, humidity);
        double without = heat.settlesAt(heat.pumps() + heat.lights(), room, humidity);
        double harm = DisplayLimits.of(plan, sources).harmWarmer().value();
        double doubt = LOSS_ERROR * (end - room);
        double margin = harm - end;
        String key = heatKey(sources);
        Figure told = Figure.about(Measure.TEMPERATURE, end, doubt);
        Holding holding = Holding.of(margin, doubt);
        List<Object> words = new ArrayList<>();
        if (holding == Holding.FAILS) {
            words.add("Unplug “" + largest.name()
                    + "” for the summer, or give it an independent cut-out: stuck on in a room of ");
        } else {
            words.add("“" + largest.name() + "” stuck on in a room of ");
        }
        words.add(Figure.exact(Measure.TEMPERATURE, room));
        words.add(", with all pumps and lights, ends at ");
        words.add(told);
        words.add("; without it the tank settles at ");
        words.add(Figure.about(Measure.TEMPERATURE, without, LOSS_ERROR * (without - room)));
        words.add(". Harm begins at ");
        words.add(Figure.exact(Measure.TEMPERATURE, harm));
        words.add(".");
        return new Check(
                "heater_stuck_on",
                "A heater stays on",
                holding,
                Figure.about(Measure.TEMPERATURE_DIFFERENCE, margin, doubt),
                Sentence.of("ends at ", Sentence.figure(told, key)),
                Sentence.of(words.toArray()),
                List.of(key));
    }

    private static String heatKey(Sources sources) {
        return sources.key(
                "Heat lost to the room",
                Basis.COMPUTED,
                "panes by Churchill and Chu 1975 and radiation, surface by the Carrier form and Bowen 1926; ± 15 % until"
                        + " fitted from a log");
    }
}
