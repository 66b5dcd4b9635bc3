package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * Something that is dosed, by a programme and by hand, and what it brings. It is counted in an amount of its own: cubic
 * metres of a solution or of what leaves a reactor, moles of a salt given dry.
 *
 * @param lever by which the keeper moves its programme, as the journal names it; empty for none
 * @param effect rise of each level for each amount of it in this system's water
 * @param shape how its programme spreads over the day
 * @param programme amounts a day, each from its time on; the first from the beginning
 * @param pulses amounts given by hand
 * @param strengthError share by which its true effect may differ, one standard error
 */
public record Solution(
        String name,
        String lever,
        @Unit("*") Map<WaterQuantity, Double> effect,
        DayShape shape,
        List<Portion> programme,
        List<Portion> pulses,
        @Unit("1") double strengthError) {

    /** An amount, a day or at once, and from when or when. */
    public record Portion(@Unit("d") double time, @Unit("*") double amount) {}

    public Solution {
        effect = Map.copyOf(effect);
        programme = List.copyOf(programme);
        pulses = List.copyOf(pulses);
    }

    /** What comes within a time, at its end included. */
    public @Unit("*") double amount(@Unit("d") double from, @Unit("d") double to) {
        double sum = 0;
        for (int i = 0; i < programme.size(); i++) {
            double begins = i == 0 ? from : Math.max(from, programme.get(i).time());
            double ends = i == programme.size() - 1
                    ? to
                    : Math.min(to, programme.get(i + 1).time());
            if (ends > begins) {
                sum += programme.get(i).amount() * (shape.by(ends) - shape.by(begins));
            }
        }
        for (Portion pulse : pulses) {
            sum += pulse.time() > from && pulse.time() <= to ? pulse.amount() : 0;
        }
        return sum;
    }

    /** Amount of its programme by which a time is ahead of a day in which it comes evenly: a wave without a mean. */
    @Unit("*")
    double ahead(@Unit("d") double time) {
        return perDay(time) * shape.ahead(time);
    }

    /** What its programme brings a day, as it stands at a time. */
    public @Unit("*") double perDay(@Unit("d") double time) {
        double amount = programme.isEmpty() ? 0 : programme.get(0).amount();
        for (Portion portion : programme) {
            amount = portion.time() <= time ? portion.amount() : amount;
        }
        return amount;
    }

    /** Rise of a level for each amount; 0 where it brings none of it. */
    @Unit("*")
    public double effectOn(WaterQuantity quantity) {
        return effect.getOrDefault(quantity, 0.0);
    }

    /** The same with another programme from a time on. */
    public Solution dosed(@Unit("*") double amountPerDay, @Unit("d") double from) {
        List<Portion> changed = new ArrayList<>();
        for (Portion portion : programme) {
            if (portion.time() < from || changed.isEmpty()) {
                changed.add(portion);
            }
        }
        changed.add(new Portion(from, amountPerDay));
        return new Solution(name, lever, effect, shape, changed, pulses, strengthError);
    }
}
