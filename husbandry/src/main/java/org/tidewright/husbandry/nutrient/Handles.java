package org.tidewright.husbandry.nutrient;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.model.WaterChange;

/** What of a plan's nutrients a keeper can change: as much as the plan has. */
public final class Handles {
    private static final double HUNDREDTH = 0.01;
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;

    /** Sliders go to this many times what the plan does. */
    private static final double FARTHEST = 3;

    /** And in steps of this part of it, so that the plan's own value is one of them. */
    private static final double STEPS = 10;

    private final Plan plan;
    private final UnitSystem units;
    private final List<Handle> handles = new ArrayList<>();

    private Handles(Plan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
    }

    /** All of them in a reader's units, food first. */
    public static List<Handle> of(Plan plan, UnitSystem units) {
        Handles all = new Handles(plan, units);
        if (!plan.feeding().isEmpty()) {
            all.share("feed", "Feed", Sentence.of("of every meal of the plan"));
        }
        for (Gear gear : plan.gear()) {
            if (gear.skims() != null) {
                all.share(gear.name() + " strength", capital(gear.name()), Sentence.of("of what it takes out"));
            } else if (gear.strains() != null) {
                all.share(gear.name() + " strength", capital(gear.name()), Sentence.of("of what it holds back"));
            }
        }
        if (plan.refugium() != null) {
            all.algae(plan.refugium().name(), plan.refugium().algae());
        }
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                all.algae(section.name(), section.algae());
            }
        }
        for (Gear gear : plan.gear()) {
            if (gear.media() != null) {
                all.amount(
                        gear.name() + " mass",
                        "Medium of the " + gear.name(),
                        Measure.SMALL_MASS,
                        gear.media().mass().in("kg"));
            }
        }
        if (!plan.waterChanges().isEmpty()) {
            all.share("water changes", "Water changes", told(plan.waterChanges()));
        }
        if (plan.waterChanges().stream().anyMatch(Handles::siphons)) {
            all.share("siphoning", "Siphoning", Sentence.of("of the waste it takes off the ground"));
        }
        return List.copyOf(all.handles);
    }

    private static boolean siphons(WaterChange change) {
        return change.siphoned() != null && change.siphoned().in("1") > 0;
    }

    private void algae(String place, @Nullable Algae algae) {
        if (algae == null) {
            return;
        }
        for (Light light : plan.lights()) {
            if (light.over().equals(place)) {
                double hours = light.daily().in("s") / HOUR;
                handles.add(new Handle(
                        key(light.name() + " hours", "h"),
                        light.name() + " hours",
                        capital(light.name()),
                        Sentence.of("a day"),
                        "h",
                        HOUR,
                        0,
                        24,
                        step(hours),
                        hours));
            }
        }
        amount(
                place + " lit area",
                "Lit area in the " + place,
                Measure.AREA,
                algae.litArea().in("m^2"));
    }

    private void share(String lever, String words, Sentence about) {
        handles.add(new Handle(key(lever, "percent"), lever, words, about, "%", HUNDREDTH, 0, 200, 5, 100));
    }

    private void amount(String lever, String words, Measure measure, double planned) {
        Measure.Unit unit = measure.unit(units);
        // A shown amount such as 199.99999999999997 g is what the plan wrote as 200 g.
        double shown = Math.rint(unit.shown(planned) * 1e6) / 1e6;
        handles.add(new Handle(
                key(lever, unit.suffix()),
                lever,
                words,
                Sentence.of(""),
                unit.symbol(),
                1 / unit.factor(),
                0,
                FARTHEST * shown,
                shown / STEPS,
                shown));
    }

    /** Half hours, or finer where the plan is. */
    private static double step(double hours) {
        return 2 * hours == Math.rint(2 * hours) ? 0.5 : 1 / 60.0;
    }

    private static Sentence told(List<WaterChange> changes) {
        if (changes.size() > 1) {
            return Sentence.of("of every change of the plan");
        }
        WaterChange change = changes.get(0);
        return Sentence.of(
                "of ",
                Figure.exact(Measure.VOLUME, change.volume().in("m^3")),
                " every " + FigureText.number(change.every().in("s") / DAY, 0) + " days");
    }

    private static String key(String lever, String suffix) {
        return lever.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]+", "_") + "_" + suffix;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
