package org.tidewright.twin.rehearsal;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.mechanism.power.Battery;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.Climate;
import org.tidewright.twin.tank.RunningVolumes;

/** Temperature and oxygen through the hours of a power cut, with the doubt of everything that is not known exactly. */
public final class Outage {
    /** Draws of a rehearsal: the 5th and 95th of 100 are then known to about a twentieth of their distance. */
    public static final int DRAWS = 200;

    private static final long SEED = 20_260_101;
    private static final int SAMPLES = 145;

    private final Plan plan;
    private final OutageOrder order;
    private final List<Bound> bounds;
    private final Climate climate;

    /**
     * Bands along the hours. Temperatures in °C, oxygen in mol/m³.
     *
     * @param time of the samples
     * @param sumpTemperature null where there is no sump
     * @param firstTimes for each bound by name, when it is first met
     * @param batteryEmpty when the battery is empty; null without one
     * @param parameters what was drawn
     */
    public record Result(
            @Unit("s") double[] time,
            Band displayTemperature,
            @Nullable Band sumpTemperature,
            Band roomTemperature,
            Band displayOxygen,
            Map<String, FirstTime> firstTimes,
            @Nullable FirstTime batteryEmpty,
            List<Parameter> parameters) {}

    /**
     * One course.
     *
     * @param firstTimes in the order of the bounds
     */
    private record Course(
            double[] displayTemperature,
            double[] sumpTemperature,
            double[] roomTemperature,
            double[] displayOxygen,
            double[] firstTimes,
            double batteryEmpty) {}

    /**
     * An outage of a plan.
     *
     * @param volumes where the water stands once it has settled; see {@link #volumesAfter}
     */
    public Outage(Plan plan, OutageOrder order, Basins.Volumes volumes, List<Bound> bounds) {
        this.plan = plan;
        this.order = order;
        this.bounds = List.copyOf(bounds);
        this.climate = Climate.of(plan, volumes, order.outdoors().weather(), order.backupUsed(), this::watches);
    }

    /** The bodies' water when nothing falls back: a tank without a sump. */
    public static Basins.Volumes volumesOf(Plan plan) {
        return RunningVolumes.of(plan);
    }

    /** The bodies' water once a power cut has settled: display with its box, sump with what ran back, refugium. */
    public static Basins.Volumes volumesAfter(PowerCut cut, PowerCut.Result settled) {
        return RunningVolumes.gathered(cut.plumbing().places(), settled.end());
    }

    public Climate climate() {
        return climate;
    }

    /** All draws together. */
    public Result rehearse(int draws) {
        List<Parameter> parameters = climate.network().parameters();
        List<Course> courses = new Ensemble(parameters, draws, SEED).map(this::course);
        boolean hasSump = climate.sump() != null;
        boolean hasBattery =
                order.backupUsed() && plan.backup() != null && plan.backup().battery() != null;
        Map<String, FirstTime> firstTimes = new LinkedHashMap<>();
        for (int i = 0; i < bounds.size(); i++) {
            int bound = i;
            firstTimes.put(
                    bounds.get(i).name(),
                    FirstTime.of(courses.stream()
                            .mapToDouble(course -> course.firstTimes()[bound])
                            .toArray()));
        }
        return new Result(
                sampleTimes(),
                band(courses.stream().map(Course::displayTemperature).toList()),
                hasSump ? band(courses.stream().map(Course::sumpTemperature).toList()) : null,
                band(courses.stream().map(Course::roomTemperature).toList()),
                band(courses.stream().map(Course::displayOxygen).toList()),
                firstTimes,
                hasBattery
                        ? FirstTime.of(courses.stream()
                                .mapToDouble(Course::batteryEmpty)
                                .toArray())
                        : null,
                parameters);
    }

    /** The course at the parameters' usual values, for its ledger. */
    public Run usualRun() {
        double[] parameters = climate.network().usualParameters();
        Run run = new Run(climate.network(), parameters, climate.start(parameters), Accuracy.OF_SLOW_CHANGE);
        climate.supplies().schedule(run);
        return run;
    }

    private Course course(double[] parameters) {
        State state = climate.start(parameters);
        Run run = new Run(climate.network(), parameters, state, Accuracy.OF_SLOW_CHANGE);
        climate.supplies().schedule(run);
        double[] times = sampleTimes();
        Course course = new Course(
                new double[SAMPLES],
                new double[SAMPLES],
                new double[SAMPLES],
                new double[SAMPLES],
                new double[bounds.size()],
                0);
        run.until(order.hours() * 3600, times, (sample, now) -> write(course, sample, now));
        for (int i = 0; i < bounds.size(); i++) {
            course.firstTimes()[i] = run.firstTime(bounds.get(i).name());
        }
        return new Course(
                course.displayTemperature(),
                course.sumpTemperature(),
                course.roomTemperature(),
                course.displayOxygen(),
                course.firstTimes(),
                run.firstTime(Battery.EMPTY));
    }

    private void write(Course course, int sample, View now) {
        course.displayTemperature()[sample] = now.temperature(climate.display());
        course.roomTemperature()[sample] = now.temperature(climate.room());
        course.displayOxygen()[sample] = now.oxygen(climate.display());
        if (climate.sump() != null) {
            course.sumpTemperature()[sample] = now.temperature(requireNonNull(climate.sump()));
        }
    }

    private List<Watch> watches(Body display) {
        List<Watch> watches = new ArrayList<>();
        for (Bound bound : bounds) {
            Watch.Crossing crossing = bound.below() ? Watch.Crossing.FALLING : Watch.Crossing.RISING;
            watches.add(Watch.noting(
                    bound.name(),
                    crossing,
                    bound.quantity() == Bound.Quantity.TEMPERATURE
                            ? now -> now.temperature(display) - bound.value()
                            : now -> now.oxygen(display) - bound.value()));
        }
        return watches;
    }

    private double[] sampleTimes() {
        double[] times = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            times[i] = order.hours() * 3600 * i / (SAMPLES - 1);
        }
        return times;
    }

    private static Band band(List<double[]> courses) {
        double[] low = new double[SAMPLES];
        double[] middle = new double[SAMPLES];
        double[] high = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            int sample = i;
            Quantiles at = Quantiles.of(
                    courses.stream().mapToDouble(course -> course[sample]).toArray());
            low[i] = at.at(0.05);
            middle[i] = at.at(0.5);
            high[i] = at.at(0.95);
        }
        return new Band(low, middle, high);
    }
}
