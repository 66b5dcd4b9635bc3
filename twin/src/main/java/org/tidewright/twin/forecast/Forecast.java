package org.tidewright.twin.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.BeyondTheModel;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.SystemTwin;

/**
 * Runs the complete twin of a plan forward, as it is run and with changes. It starts from the values the plan states of its
 * water; what the plan cannot state is what weeks of its own regime lead to.
 */
public final class Forecast {
    private static final double DAY = 86_400;

    private final SystemTwin twin;
    private final double[] parameters;
    private final State start;

    /** Of a plan, at the usual values of what is not known exactly. */
    public static Forecast of(Plan plan) {
        SystemTwin twin = SystemTwin.of(plan);
        return new Forecast(twin, twin.network().usualParameters());
    }

    /**
     * Of a twin.
     *
     * @param parameters values in the order of its network's
     */
    public Forecast(SystemTwin twin, @Unit("*") double[] parameters) {
        this(twin, twin.settled(parameters));
    }

    private Forecast(SystemTwin twin, SystemTwin.Settled settled) {
        this.twin = twin;
        parameters = settled.parameters();
        start = settled.state();
    }

    /** Of the same animals by another regime, at the usual values of what is not known exactly. */
    Forecast runBy(Plan changed) {
        SystemTwin other = SystemTwin.of(changed);
        return new Forecast(other, other.settled(other.network().usualParameters(), twin.skeletonGrowth(parameters)));
    }

    public SystemTwin twin() {
        return twin;
    }

    /** What will happen. */
    public Course course(double days, int samples, Set<Quantity> quantities) {
        return course(days, samples, quantities, List.of());
    }

    /**
     * What would happen.
     *
     * @param days from the first midnight
     * @param samples evenly spread, the first at the start and the last at the end
     * @param changes in any order; where two move the same lever, the later in time holds
     */
    public Course course(double days, int samples, Set<Quantity> quantities, List<Change> changes) {
        return run(days, samples, quantities, changes, days);
    }

    /**
     * The same with an account of its end alone: what a day brings and takes once the changes have worked through.
     *
     * @param accountedDays of the end; more than 0 and at most all of it
     */
    public Course course(
            double days, int samples, Set<Quantity> quantities, List<Change> changes, double accountedDays) {
        if (!(accountedDays > 0 && accountedDays <= days)) {
            throw new IllegalArgumentException("an account of " + accountedDays
                    + " days cannot be kept; it needs more than 0 and at most the " + days + " days of the forecast");
        }
        return run(days, samples, quantities, changes, accountedDays);
    }

    /** The same with an account of nothing, which is quicker. */
    Course courseAlone(double days, int samples, Set<Quantity> quantities, List<Change> changes) {
        return run(days, samples, quantities, changes, 0);
    }

    private Course run(double days, int samples, Set<Quantity> quantities, List<Change> changes, double accountedDays) {
        if (!(days > 0 && days <= 3660) || samples < 2) {
            throw new IllegalArgumentException("a forecast of " + days + " days in " + samples
                    + " samples cannot be made; it needs more than 0 and at most 3660 days and 2 samples or more");
        }
        Run run = new Run(twin.network(), parameters, start.copy(), Accuracy.OF_A_YEAR);
        if (accountedDays > 0) {
            run.keepAccount();
        }
        order(run, changes);
        double[] times = new double[samples];
        for (int i = 0; i < samples; i++) {
            times[i] = days * DAY * i / (samples - 1);
        }
        Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
        List<Quantity> told = new ArrayList<>(quantities);
        told.forEach(quantity -> values.put(quantity, new double[samples]));
        int[] taken = new int[1];
        String brokenOff = null;
        try {
            double begins = (days - accountedDays) * DAY;
            int before = 0;
            if (accountedDays > 0 && begins > 0) {
                before = (int)
                        Arrays.stream(times).filter(time -> time <= begins).count();
                run.until(begins, Arrays.copyOf(times, before), (sample, now) -> {
                    write(values, sample, now);
                    taken[0] = sample + 1;
                });
                run.keepAccount();
            }
            int already = before;
            run.until(days * DAY, Arrays.copyOfRange(times, already, samples), (sample, now) -> {
                write(values, already + sample, now);
                taken[0] = already + sample + 1;
            });
        } catch (BeyondTheModel beyond) {
            brokenOff = beyond.getMessage();
            values.replaceAll((quantity, all) -> Arrays.copyOf(all, taken[0]));
        }
        if (accountedDays == 0) {
            run.keepAccount();
        }
        return new Course(Arrays.copyOf(times, taken[0]), values, List.copyOf(run.log()), run.account(), brokenOff);
    }

    private void write(Map<Quantity, double[]> values, int sample, View now) {
        values.forEach((quantity, samples) -> samples[sample] = quantity.of(now, twin));
    }

    private static void order(Run run, List<Change> changes) {
        for (Change change : changes) {
            Lever lever = change.lever();
            if (change.from() == 0) {
                run.set(lever.setting(), change.value());
            } else {
                run.setAt(change.from(), lever.setting(), change.value());
            }
            if (Double.isFinite(change.lasts())) {
                run.setAt(
                        change.from() + change.lasts(),
                        lever.setting(),
                        lever.setting().initial());
            }
        }
    }
}
