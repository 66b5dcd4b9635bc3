package org.tidewright.twin.rehearsal;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.mechanism.air.Weather;
import org.tidewright.twin.mechanism.power.Battery;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.BeyondTheModel;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.RunningVolumes;
import org.tidewright.twin.tank.Water;

/**
 * The hours of a power cut on the complete twin, with the doubt of everything that is not known exactly. A week of its own
 * habits leads to the state it begins with; each draw lives the last night of it with numbers of its own. The mains fail at
 * the end of the night, when least oxygen is left, and the water that runs down in the first minutes is then already below.
 */
public final class Outage {
    /** Draws of a rehearsal: the 5th and 95th of 100 are then known to about a twentieth of their distance. */
    public static final int DRAWS = 200;

    private static final long SEED = 20_260_101;
    private static final int SAMPLES = 145;
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    /** A long night: in it gases in the water and the air of the room forget what they were before. */
    private static final double NIGHT = 16 * HOUR;

    private final Plan plan;
    private final OutageOrder order;
    private final Basins.Volumes volumes;
    private final List<Bound> bounds;
    private final double begins;
    private final SystemTwin twin;
    private final State usualState;
    private final double growth;
    private final Run usual;
    private final Run.Method method;

    /**
     * Bands along the hours. Temperatures in °C, oxygen in mol/m³.
     *
     * @param time of the samples, since the mains failed
     * @param sumpTemperature null where there is no sump
     * @param firstTimes for each bound by name, when it is first met
     * @param withoutBackup the same for oxygen were there neither battery nor generator; null where there is no battery
     * @param batteryEmpty when the battery is empty; null without one
     * @param parameters what was drawn and told on temperature or oxygen, the most telling first
     */
    public record Result(
            @Unit("s") double[] time,
            Band displayTemperature,
            @Nullable Band sumpTemperature,
            Band roomTemperature,
            Band displayOxygen,
            Map<String, FirstTime> firstTimes,
            @Nullable Map<String, FirstTime> withoutBackup,
            @Nullable FirstTime batteryEmpty,
            List<Parameter> parameters) {}

    /**
     * One course.
     *
     * @param drawn values of the parameters
     * @param firstTimes in the order of the bounds
     */
    private record Course(
            double[] drawn,
            double[] displayTemperature,
            double[] sumpTemperature,
            double[] roomTemperature,
            double[] displayOxygen,
            double[] firstTimes,
            double[] withoutBackup,
            double batteryEmpty) {}

    /**
     * An outage of a plan.
     *
     * @param volumes where the water stands once it has settled; see {@link #volumesAfter}
     */
    public Outage(Plan plan, OutageOrder order, Basins.Volumes volumes, List<Bound> bounds) {
        this.plan = plan;
        this.order = order;
        this.volumes = volumes;
        this.bounds = List.copyOf(bounds);
        double endOfNight = SystemTwin.endOfNight(plan);
        begins = DAY + endOfNight;
        Weather weather = Weather.from(
                begins, plan.room().temperature().in("degC"), order.outdoors().weather());
        twin = SystemTwin.of(plan, weather, order.backupUsed(), this::watches);
        SystemTwin.Settled settled = twin.settled(twin.network().usualParameters());
        usualState = settled.state();
        usual = new Run(twin.network(), settled.parameters(), usualState, Accuracy.OF_A_YEAR);
        usual.until(begins - NIGHT);
        growth = twin.skeletonGrowth(settled.parameters());
        boolean circulates = order.backupUsed() && twin.supplies().isBacked(Names.RETURN_PUMP);
        method = circulates ? Run.Method.AS_SUITS : Run.Method.EXPLICIT;
    }

    /** The bodies' water when nothing falls back: a tank without a sump. */
    public static Basins.Volumes volumesOf(Plan plan) {
        return RunningVolumes.of(plan);
    }

    /** The bodies' water once a power cut has settled: display with its box, sump with what ran back, refugium. */
    public static Basins.Volumes volumesAfter(PowerCut cut, PowerCut.Result settled) {
        return RunningVolumes.gathered(cut.plumbing().places(), settled.end());
    }

    public SystemTwin twin() {
        return twin;
    }

    /** When the mains fail, by the clock of the twin. */
    public @Unit("s") double begins() {
        return begins;
    }

    /** All draws together. */
    public Result rehearse(int draws) {
        List<Course> courses = new Ensemble(twin.network().parameters(), draws, SEED).map(this::course);
        boolean hasBattery = twin.supplies().batteryOn() != null;
        return new Result(
                sampleTimes(),
                band(courses.stream().map(Course::displayTemperature).toList()),
                twin.sump() == null
                        ? null
                        : band(courses.stream().map(Course::sumpTemperature).toList()),
                band(courses.stream().map(Course::roomTemperature).toList()),
                band(courses.stream().map(Course::displayOxygen).toList()),
                firstTimes(courses.stream().map(Course::firstTimes).toList(), bounds),
                hasBattery
                        ? firstTimes(
                                courses.stream().map(Course::withoutBackup).toList(),
                                bounds.stream().filter(Outage::isOfOxygen).toList())
                        : null,
                hasBattery
                        ? FirstTime.of(courses.stream()
                                .mapToDouble(Course::batteryEmpty)
                                .toArray())
                        : null,
                Influence.of(
                        twin.network().parameters(),
                        courses.stream().map(Course::drawn).toList(),
                        List.of(
                                means(courses.stream()
                                        .map(Course::displayTemperature)
                                        .toList()),
                                means(courses.stream()
                                        .map(Course::displayOxygen)
                                        .toList()))));
    }

    /**
     * When each bound is first met, draw by draw in the order of the draws, since the mains failed; infinite for never. Draws of
     * two plans are alike: what differs between them is the plan.
     *
     * @param progress watches it and may cancel it
     */
    public Map<String, double[]> firstTimes(int draws, Ensemble.Progress progress) {
        List<double[]> met = new Ensemble(twin.network().parameters(), draws, SEED)
                .map(
                        parameters -> {
                            Failure failure = failure(parameters);
                            return follow(failure.run(), new double[0], (sample, now) -> {});
                        },
                        progress);
        Map<String, double[]> byBound = new LinkedHashMap<>();
        for (int i = 0; i < bounds.size(); i++) {
            int bound = i;
            byBound.put(
                    bounds.get(i).name(),
                    met.stream().mapToDouble(times -> times[bound]).toArray());
        }
        return byBound;
    }

    private static double[] means(List<double[]> courses) {
        return courses.stream()
                .mapToDouble(course -> DoubleStream.of(course).average().orElse(0))
                .toArray();
    }

    /**
     * The moment the mains have failed, the water run down.
     *
     * @param run from here on
     * @param state which the run moves
     */
    public record Failure(Run run, State state) {}

    /** How a course begins at some values of the parameters. */
    public Failure failure(@Unit("*") double[] parameters) {
        Failure eve = eve(parameters);
        return failed(eve, eve.state(), parameters, true);
    }

    private Failure eve(double[] drawn) {
        double[] parameters = twin.growing(drawn, growth);
        State state = usualState.copy();
        Run run = Run.from(usual, parameters, state, Accuracy.OF_A_YEAR, Run.Method.AS_SUITS);
        run.until(begins);
        asStated(state);
        twin.supplies().fill(state, parameters);
        runDown(state);
        return new Failure(run, state);
    }

    private Failure failed(Failure eve, State state, double[] parameters, boolean backupServes) {
        Run run = Run.from(eve.run(), parameters, state, Accuracy.OF_AN_OUTAGE, method);
        twin.failMains(run, backupServes);
        return new Failure(run, state);
    }

    /** Warmth as the plan states it; oxygen too, or as usual where it names nobody who breathes. */
    private void asStated(State state) {
        Water water = twin.water();
        boolean oxygenKnown = plan.inhabitants() != null && plan.water().oxygenSaturation() == null;
        for (Body body : twin.waters()) {
            double capacity = twin.network().density() * twin.network().specificHeat() * state.get(body, Stock.WATER);
            state.set(body, Stock.HEAT, (capacity + body.solidHeatCapacity()) * water.temperature());
            if (!oxygenKnown) {
                state.dissolve(body, Stock.OXYGEN, water.oxygen());
            }
        }
    }

    /** Moves down what the drain-down found to run down; what the sump could not take lies on the floor. */
    private void runDown(State state) {
        Body sump = twin.sump();
        if (sump == null) {
            return;
        }
        Basins.Volumes running = twin.runningVolumes();
        double fallen = Math.max(0, running.display() - volumes.display());
        double drained = Math.max(0, running.refugium() - volumes.refugium());
        double taken = fallen + drained > 0 ? (volumes.sump() - running.sump()) / (fallen + drained) : 0;
        double share = Math.max(0, Math.min(1, taken));
        Body floor = twin.network().body("waste");
        state.pour(twin.display(), sump, share * fallen).pour(twin.display(), floor, (1 - share) * fallen);
        Body refugium = twin.refugium();
        if (refugium != null) {
            state.pour(refugium, sump, share * drained).pour(refugium, floor, (1 - share) * drained);
        }
    }

    private Course course(double[] parameters) {
        Failure eve = eve(parameters);
        double[] withoutBackup = new double[bounds.size()];
        if (twin.supplies().batteryOn() != null) {
            Run bare = failed(eve, eve.state().copy(), parameters, false).run();
            withoutBackup = untilShortOfOxygen(bare);
        }
        Run run = failed(eve, eve.state(), parameters, true).run();
        double[][] samples = new double[4][SAMPLES];
        double[] firstTimes = follow(run, clockTimes(), (sample, now) -> write(samples, sample, now));
        return new Course(
                parameters,
                samples[0],
                samples[1],
                samples[2],
                samples[3],
                firstTimes,
                withoutBackup,
                run.firstTime(Battery.EMPTY) - begins);
    }

    /**
     * Runs to the end and tells when each bound was first met. Where it comes beyond the laws of the twin, as water that
     * freezes, the rest of the samples stay as they are.
     */
    private double[] follow(Run run, double[] times, Run.Sampler sampler) {
        boolean[] beyondAtOnce = beyond(run.now());
        int[] taken = {0};
        try {
            run.until(begins + order.hours() * HOUR, times, (sample, now) -> {
                sampler.take(sample, now);
                taken[0] = sample + 1;
            });
        } catch (BeyondTheModel end) {
            for (int sample = taken[0]; sample < times.length; sample++) {
                sampler.take(sample, run.now());
            }
        }
        return firstTimes(run, beyondAtOnce);
    }

    /** The same until every bound of oxygen is met; the others are then told no further. */
    private double[] untilShortOfOxygen(Run run) {
        boolean[] beyondAtOnce = beyond(run.now());
        double end = begins + order.hours() * HOUR;
        try {
            while (run.time() < end && !isShortOfOxygen(firstTimes(run, beyondAtOnce))) {
                run.until(Math.min(end, run.time() + HOUR));
            }
        } catch (BeyondTheModel early) {
            return firstTimes(run, beyondAtOnce);
        }
        return firstTimes(run, beyondAtOnce);
    }

    private boolean isShortOfOxygen(double[] first) {
        for (int i = 0; i < first.length; i++) {
            if (isOfOxygen(bounds.get(i)) && Double.isInfinite(first[i])) {
                return false;
            }
        }
        return true;
    }

    private static boolean isOfOxygen(Bound bound) {
        return bound.quantity() == Bound.Quantity.OXYGEN;
    }

    private boolean[] beyond(View now) {
        boolean[] beyond = new boolean[bounds.size()];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = distance(bounds.get(i), twin.display(), now) <= 0;
        }
        return beyond;
    }

    private double[] firstTimes(Run run, boolean[] beyondAtOnce) {
        double[] first = new double[bounds.size()];
        for (int i = 0; i < first.length; i++) {
            first[i] = beyondAtOnce[i] ? 0 : run.firstTime(bounds.get(i).name()) - begins;
        }
        return first;
    }

    private void write(double[][] samples, int sample, View now) {
        samples[0][sample] = now.temperature(twin.display());
        samples[1][sample] = twin.sump() == null ? 0 : now.temperature(requireNonNull(twin.sump()));
        samples[2][sample] = now.temperature(twin.room());
        samples[3][sample] = now.oxygen(twin.display());
    }

    private List<Watch> watches(Body display) {
        return bounds.stream()
                .map(bound -> Watch.noting(bound.name(), Watch.Crossing.FALLING, now -> distance(bound, display, now)))
                .toList();
    }

    /** Positive on the side that is allowed. */
    private static double distance(Bound bound, Body display, View now) {
        double value = bound.quantity() == Bound.Quantity.TEMPERATURE ? now.temperature(display) : now.oxygen(display);
        return bound.below() ? value - bound.value() : bound.value() - value;
    }

    private Map<String, FirstTime> firstTimes(List<double[]> courses, List<Bound> told) {
        Map<String, FirstTime> firstTimes = new LinkedHashMap<>();
        for (Bound each : told) {
            int bound = bounds.indexOf(each);
            firstTimes.put(
                    each.name(),
                    FirstTime.of(courses.stream()
                            .mapToDouble(course -> course[bound])
                            .toArray()));
        }
        return firstTimes;
    }

    private double[] clockTimes() {
        double[] times = sampleTimes();
        for (int i = 0; i < times.length; i++) {
            times[i] += begins;
        }
        times[SAMPLES - 1] = begins + order.hours() * HOUR;
        return times;
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
