package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sand;
import org.tidewright.plan.model.Stand;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.law.structure.FilledWeight;
import org.tidewright.twin.tank.Panes;

/** What the filled system weighs and how it loads the floor. Whether the floor bears it, an engineer says. */
final class WeightCheck {
    /** One standard error of the whole, as a share: glass, stand and rock are seldom weighed. */
    private static final double ERROR = 0.03;

    private WeightCheck() {}

    static Check check(Situation situation, Sources sources) {
        Plan plan = situation.plan();
        double reservoir = plan.topOff() == null ? 0 : plan.topOff().reservoir().in("m^3");
        double rock = mass(plan.display().rock());
        double sand = mass(plan.display().sand());
        double glass =
                Panes.volume(situation.vessels().display(), plan.display().glass());
        if (plan.sump() != null) {
            glass += Panes.volume(situation.vessels().wholeSump(), plan.sump().glass()) + baffles(plan.sump());
            rock += plan.sump().sections().stream()
                    .mapToDouble(section -> mass(section.rock()))
                    .sum();
        }
        if (plan.refugium() != null && situation.vessels().refugium() != null) {
            glass +=
                    Panes.volume(situation.vessels().refugium(), plan.refugium().glass());
            rock += mass(plan.refugium().rock());
            sand += mass(plan.refugium().sand());
        }
        Stand stand = plan.stand();
        double standMass = stand == null ? 0 : stand.mass().in("kg");
        FilledWeight weight = FilledWeight.of(
                situation.systemVolume() + reservoir, situation.water().density(), rock, sand, glass, standMass);
        double footprint =
                plan.display().length().in("m") * plan.display().width().in("m");
        boolean slab = stand != null && stand.floor() == Stand.Floor.SLAB_ON_GROUND;

        String key = sources.key(
                "Filled weight",
                Basis.COMPUTED,
                "water, rock, sand, glass at 2.5 kg/L (EN 572)" + (stand == null ? "" : ", stand and gear as stated"));
        String floor = sources.key(
                "Load floors of homes are designed for, 1.5–2.0 kN/m² over a room",
                Basis.FROM_MEMORY,
                "EN 1991-1-1 category A; 40 psf in US residential codes");
        Figure total = Figure.about(Measure.MASS, weight.total(), ERROR * weight.total());
        List<Object> words = new ArrayList<>();
        if (weight.asksForAnEngineer(slab)) {
            words.add("Ask a structural engineer before the water goes in: ");
        } else {
            words.add("Stand it level on sound ground: ");
        }
        words.add(total);
        words.add(" press on the floor with ");
        words.add(Sentence.figure(Figure.exact(Measure.LOAD, weight.meanPressure(footprint)), floor));
        words.add(" on average under the tank");
        if (stand != null && stand.feet() > 0) {
            words.add(", up to ");
            words.add(Figure.exact(Measure.FORCE, weight.loadOfAFoot(stand.feet())));
            words.add(" on each of " + stand.feet() + " feet");
        }
        words.add(stand == null ? ", the stand not counted, as the plan does not describe it." : ".");
        return new Check(
                "filled_weight",
                "Weight, filled",
                Holding.ASK,
                null,
                Sentence.of(Sentence.figure(total, key)),
                Sentence.of(words.toArray()),
                List.of(key, floor));
    }

    private static double baffles(Sump sump) {
        double cut = sump.width().in("m") * sump.baffleThickness().in("m");
        double height = sump.height().in("m");
        double volume = 0;
        for (Sump.Section section : sump.sections()) {
            Sump.Baffle baffle = section.baffle();
            if (baffle != null) {
                double top = baffle.over() == null ? height : baffle.over().in("m");
                double foot = baffle.under() == null ? 0 : baffle.under().in("m");
                volume += cut * (top - foot);
            }
        }
        return volume;
    }

    private static double mass(@Nullable Rock rock) {
        return rock == null ? 0 : rock.dryMass().in("kg");
    }

    private static double mass(@Nullable Sand sand) {
        return sand == null ? 0 : sand.dryMass().in("kg");
    }
}
