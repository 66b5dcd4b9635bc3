package org.tidewright.husbandry.nutrient;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.system.Lever;

/** The twin of a plan settled, with its course as it is run: what every question about its nutrients begins from. */
public final class NutrientForecast {
    /** How far it looks ahead. */
    public static final double DAYS = 84;

    /** Share of its weight that a fish may lose unseen. */
    private static final double UNSEEN = 0.01;

    private static final int SAMPLES_A_DAY = 8;
    private static final double DAY = 86_400;
    private static final double WEEK = 7;
    private static final double LONGEST_AVERAGE = 4 * WEEK;
    private static final Set<Quantity> DRAWN = EnumSet.of(Quantity.NITRATE, Quantity.PHOSPHATE);
    private static final Set<Quantity> TOLD =
            EnumSet.of(Quantity.NITRATE, Quantity.PHOSPHATE, Quantity.AMMONIA, Quantity.FISH);

    private final Plan plan;
    private final Forecast forecast;
    private final double averaged;
    private final Course asRun;
    private volatile @Nullable Outlook outlook;

    private NutrientForecast(Plan plan) {
        this.plan = plan;
        forecast = Forecast.of(plan);
        averaged = averagedDays(plan);
        asRun = course(List.of());
    }

    /** Settles the twin of a plan and runs its course as it is: a second or two of computing. */
    public static NutrientForecast of(Plan plan) {
        return new NutrientForecast(plan);
    }

    /**
     * Runs it as it is many times, with other values of what is not known exactly; reports then tell in which band the
     * draws lie. From another thread, for it takes half a minute.
     */
    public void draw(int draws) {
        outlook = Outlook.of(forecast.twin(), DAYS, samples(), DRAWN, List.of(), draws, Ensemble.Progress.UNWATCHED);
    }

    /** Whether reports tell a band. */
    public boolean isDrawn() {
        return outlook != null;
    }

    private static int samples() {
        return (int) (DAYS * SAMPLES_A_DAY) + 1;
    }

    /**
     * What is told with some handles moved; only the changed course is run.
     *
     * @param units in which handles are told
     * @param values by key of the handle, in its shown unit; a handle without one stays where the plan has it
     */
    public NutrientReport report(UnitSystem units, Map<String, Double> values) {
        List<NutrientReport.Position> positions = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        for (Handle handle : Handles.of(plan, units)) {
            double value = values.getOrDefault(handle.key(), handle.planned());
            if (!(value >= handle.least() && value <= handle.most())) {
                throw new IllegalArgumentException(handle.words() + " cannot be " + value + " " + handle.symbol()
                        + "; it goes from " + handle.least() + " to " + handle.most());
            }
            positions.add(new NutrientReport.Position(handle, value));
            if (handle.isMoved(value)) {
                Lever lever = forecast.twin().levers().get(handle.lever());
                changes.add(Change.to(lever, value * handle.perUnit()));
            }
        }
        return report(positions, changes.isEmpty() ? null : course(changes));
    }

    private Course course(List<Change> changes) {
        return forecast.course(DAYS, samples(), TOLD, changes, averaged);
    }

    private NutrientReport report(List<NutrientReport.Position> positions, @Nullable Course changed) {
        Outlook drawn = outlook;
        List<NutrientCurve> curves = Stream.of(Quantity.NITRATE, Quantity.PHOSPHATE, Quantity.AMMONIA)
                .map(quantity -> NutrientCurve.of(
                        quantity,
                        TargetBand.of(plan, quantity),
                        asRun,
                        changed,
                        DRAWN.contains(quantity) ? drawn : null))
                .toList();
        String brokenOff = changed == null ? asRun.brokenOff() : changed.brokenOff();
        List<NutrientReport.Flows> flows = new ArrayList<>();
        if (asRun.brokenOff() == null && brokenOff == null) {
            for (Element element : Element.values()) {
                flows.add(new NutrientReport.Flows(
                        element, picture(element, asRun), changed == null ? null : picture(element, changed)));
            }
        }
        Sources sources = new Sources();
        NutrientWords words = new NutrientWords(
                positions, curves, fishLoseWeight(changed == null ? asRun : changed), brokenOff, sources);
        return new NutrientReport(
                words.lead(),
                words.doubt(drawn == null ? 0 : drawn.draws()),
                positions,
                flows,
                curves,
                drawn == null ? 0 : drawn.draws(),
                Unknowns.of(forecast.twin().network().parameters()),
                words.cautions(),
                words.keys(),
                sources.all());
    }

    /** Whether the fish end lighter than they began: they burn themselves, or have starved. */
    private boolean fishLoseWeight(Course course) {
        double[] mass = course.of(Quantity.FISH);
        return mass[mass.length - 1] < (1 - UNSEEN) * mass[0];
    }

    private FlowPicture picture(Element element, Course course) {
        return FlowPicture.of(element, course.account(), forecast.twin().waters());
    }

    /**
     * As few weeks as hold every meal, water change and harvest a whole number of times, so that none counts for more than
     * it is; four at the most.
     */
    static double averagedDays(Plan plan) {
        List<@Nullable Amount> rhythms = new ArrayList<>();
        plan.feeding().forEach(fed -> rhythms.add(fed.every()));
        plan.waterChanges().forEach(change -> rhythms.add(change.every()));
        plan.gear()
                .forEach(gear -> rhythms.add(
                        gear.strains() == null ? null : gear.strains().changedEvery()));
        if (plan.refugium() != null && plan.refugium().algae() != null) {
            rhythms.add(plan.refugium().algae().harvestedEvery());
        }
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                Algae algae = section.algae();
                rhythms.add(algae == null ? null : algae.harvestedEvery());
            }
        }
        double[] every = rhythms.stream().mapToDouble(NutrientForecast::days).toArray();
        double days = WEEK;
        while (days < LONGEST_AVERAGE && !holdsWhole(days, every)) {
            days += WEEK;
        }
        return days;
    }

    private static double days(@Nullable Amount every) {
        return every == null ? 1 : Math.max(1, Math.rint(every.in("s") / DAY));
    }

    private static boolean holdsWhole(double days, double[] every) {
        return DoubleStream.of(every).allMatch(each -> days % each == 0);
    }
}
