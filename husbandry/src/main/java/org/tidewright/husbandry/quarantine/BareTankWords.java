package org.tidewright.husbandry.quarantine;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Advice.Told;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sentence.Part;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.source.Basis;

/** Tells what ammonia does in a quarantine tank and which change of water holds it. */
public final class BareTankWords {
    private static final double PER_LITRE = 1e-3;

    private final BareTankWater water;
    private final Sources sources;
    private final String bounds;

    private BareTankWords(BareTankWater water, Sources sources) {
        this.water = water;
        this.sources = sources;
        bounds = sources.key(
                "Free ammonia as nitrogen: watch from 0.02, harm from 0.03 mg/L",
                Basis.FROM_MEMORY,
                "bounds of our own, below the 0.05 mg/L that reviews name for long stays; fish of reefs died at 0.75 to 0.89"
                        + " within four days (Medeiros 2014, Rodrigues et al. 2014)");
    }

    public static Advice of(BareTankWater water) {
        return of(water, new Sources());
    }

    /** The same, its letters among those of other advice. */
    public static Advice of(BareTankWater water, Sources sources) {
        return new BareTankWords(water, sources).advice();
    }

    private Advice advice() {
        return new Advice(
                lead(), remarks(), figures(), working(), List.of(Caution.BINDER, Caution.CHANGE), sources.all());
    }

    private Sentence lead() {
        if (water.fish() <= 0 || water.food() <= 0) {
            return Sentence.of("Put its fish and their food into the plan: without them no ammonia can be reckoned.");
        } else if (water.unchanged().isCalm()) {
            return Sentence.of(
                    "Ammonia is held without any change of water: at most ",
                    Sentence.figure(free(water.unchanged().peak()), bounds),
                    " free, ",
                    Days.span(water.unchanged().peakDay()),
                    " after they came. Measure it all the same, every day of the first week.");
        } else if (water.planned().isCalm()) {
            return Sentence.of(
                    "Keep to the changes of the plan: with them free ammonia stays under ",
                    Sentence.figure(free(BareTankWater.AMBER), bounds),
                    " and is highest ",
                    Days.span(water.planned().peakDay()),
                    " after they came, at ",
                    free(water.planned().peak()),
                    ". Without any change it would pass that after ",
                    Days.span(water.unchanged().amber()),
                    ".");
        }
        return Sentence.of(change(water.unchanged(), "Change "), late());
    }

    private Sentence change(BareTankWater.Run run, String act) {
        if (Double.isInfinite(run.held())) {
            return Sentence.of(
                    Sentence.alarm("No change of water holds it."),
                    " Fewer fish, less food or more ripe sponge: even nine tenths changed every day let free ammonia pass ",
                    Sentence.figure(free(BareTankWater.AMBER), bounds),
                    ".");
        }
        return Sentence.of(
                act,
                volume(run.held()),
                " every day (",
                Figure.exact(Measure.SHARE, run.held()),
                " of the water): that keeps free ammonia under ",
                Sentence.figure(free(BareTankWater.AMBER), bounds),
                ".");
    }

    /** What happens where nothing, or only what the plan says, is done. */
    private Sentence late() {
        BareTankWater.Run run = water.plannedChange() == null ? water.unchanged() : water.planned();
        Sentence.Part by = new Part.Words(
                water.plannedChange() == null
                        ? " Left alone it gets there "
                        : " By the plan's own changes it gets there ");
        return Double.isInfinite(run.red())
                ? Sentence.of(by, Days.span(run.amber()), " after they came.")
                : Sentence.of(
                        by,
                        Days.span(run.amber()),
                        " after they came, and to ",
                        free(BareTankWater.RED),
                        ", which harms, after ",
                        Days.span(run.red()),
                        ".");
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (water.isFiltered() && !water.unfiltered().isCalm()) {
            remarks.add(Sentence.of(
                    "If the sponge stops working, as some medicines make it: ", change(water.unfiltered(), "change ")));
        }
        double nitrite = water.planned().nitrite();
        if (nitrite >= BareTankWater.NITRITE) {
            remarks.add(Sentence.of(
                    "Nitrite comes to ",
                    Figure.exact(Measure.TRACE, nitrite * PER_LITRE),
                    " of nitrogen; the sea's chloride shields fish from it, other animals less."));
        }
        remarks.add(Sentence.of(
                "How many bacteria a sponge brings is known to a factor of three: a test every day decides, and"
                        + " the first sign of ammonia is a reason to change more."));
        return remarks;
    }

    private List<Told> figures() {
        List<Told> figures = new ArrayList<>(List.of(
                new Told(
                        "most free ammonia, by the plan's changes",
                        free(water.planned().peak()),
                        bounds),
                new Told("amber without a change", Days.span(water.unchanged().amber()), bounds),
                new Told("red without a change", Days.span(water.unchanged().red()), bounds)));
        if (Double.isFinite(water.unchanged().held()) && water.unchanged().held() > 0) {
            figures.add(new Told(
                    "daily change that holds it", volume(water.unchanged().held()), ""));
        }
        return figures;
    }

    private List<Sentence> working() {
        String plan = sources.key("Fish, food, sponge, water and changes", Basis.YOUR_PLAN, "");
        List<Sentence> working = new ArrayList<>();
        working.add(Sentence.of(
                "The twin of the plan, from the day they come: ",
                Sentence.figure(Figure.exact(Measure.VOLUME, water.volume()), plan),
                " of new water, ",
                Sentence.figure(Figure.exact(Measure.SMALL_MASS, water.fish()), plan),
                " of fish, ",
                Sentence.figure(Figure.exact(Measure.SMALL_MASS, water.food()), plan),
                " of food a day, washed panes, and what the sponge brings."));
        WaterChange change = water.plannedChange();
        if (change != null) {
            working.add(Sentence.of(
                    "The plan changes ",
                    Figure.exact(Measure.VOLUME, change.volume().in("m^3")),
                    " every ",
                    Figure.exact(Measure.DURATION, change.every().in("s")),
                    "."));
        }
        working.add(Sentence.of("A daily change is sought by halving until thirty days of the twin stay under amber."));
        return working;
    }

    private Figure volume(double share) {
        return Figure.exact(Measure.VOLUME, PER_LITRE * Math.ceil(share * water.volume() / PER_LITRE));
    }

    private static Figure free(double milligrams) {
        return Figure.exact(Measure.TRACE, milligrams * PER_LITRE);
    }
}
