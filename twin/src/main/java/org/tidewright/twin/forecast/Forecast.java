package org.tidewright.twin.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.BeyondTheModel;
import org.tidewright.twin.run.Network;
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
    private final double begins;

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
        this(twin, settled.parameters(), settled.state(), 0);
    }

    private Forecast(SystemTwin twin, double[] parameters, State start, double begins) {
        this.twin = twin;
        this.parameters = parameters;
        this.start = start;
        this.begins = begins;
    }

    /** Of the same animals by another regime, at the usual values of what is not known exactly. */
    Forecast runBy(Plan changed) {
        SystemTwin other = SystemTwin.of(changed);
        return settledBy(other, other.network().usualParameters());
    }

    /**
     * Of another twin with the same corals, settled by its own regime: its skeletons grow as they do here.
     *
     * @param drawn values in the order of the other's network's
     */
    public Forecast settledBy(SystemTwin other, @Unit("*") double[] drawn) {
        return new Forecast(other, other.settled(drawn, twin.skeletonGrowth(parameters)));
    }

    /**
     * The same system later on, with every lever where the plan has it.
     *
     * @param time since the first midnight, a moment at which nothing else happens
     * @param changes on the way
     */
    public Forecast at(@Unit("s") double time, List<Change> changes) {
        State then = start.copy();
        Run run = Run.at(begins, twin.network(), parameters, then, Accuracy.OF_A_YEAR);
        order(run, changes);
        run.until(time);
        return new Forecast(twin, parameters, then, time);
    }

    /**
     * The same system, which goes on by another plan from its present moment: another regime, other animals, the same waters.
     * Animals that only the other plan names are not in it yet.
     */
    public Forecast goingOnBy(SystemTwin other) {
        if (!names(other.network()).equals(names(twin.network()))) {
            throw new IllegalArgumentException("a system cannot go on by a plan with other unknowns; it needs "
                    + names(twin.network()) + ", not " + names(other.network()));
        }
        return new Forecast(other, parameters, start.in(other.network()), begins);
    }

    private static List<String> names(Network network) {
        return network.parameters().stream().map(Parameter::name).toList();
    }

    /** The same system with nitrifiers, and what they have not oxidised yet, as another in its place has them. */
    public Forecast withNitrifiersOf(Forecast other) {
        State mixed = start.copy();
        twin.bringNitrifiers(other.start, mixed);
        return new Forecast(twin, parameters, mixed, begins);
    }

    /**
     * The same system with nitrifiers that clear a dose within a day at least, as a test of the water has shown.
     *
     * @param dose of ammonia, and of nitrite, as nitrogen
     */
    public Forecast withNitrifiersThatClear(@Unit("mg/L") double dose) {
        State ripe = start.copy();
        twin.raiseNitrifiers(ripe, parameters, moles(dose), moles(NewTank.CLEAR));
        return new Forecast(twin, parameters, ripe, begins);
    }

    /** From mg/L of nitrogen to mol/m³. */
    private static double moles(double milligrams) {
        return milligrams * 1e-3 / ElementMass.NITROGEN;
    }

    public SystemTwin twin() {
        return twin;
    }

    /** Where its courses begin, since the first midnight. */
    public @Unit("s") double begins() {
        return begins;
    }

    /** What will happen. */
    public Course course(double days, int samples, Set<Quantity> quantities) {
        return course(days, samples, quantities, List.of());
    }

    /**
     * What would happen.
     *
     * @param days since the first midnight
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
    public Course courseAlone(double days, int samples, Set<Quantity> quantities, List<Change> changes) {
        return run(days, samples, quantities, changes, 0);
    }

    private Course run(double days, int samples, Set<Quantity> quantities, List<Change> changes, double accountedDays) {
        if (!(days * DAY > begins && days <= 3660) || samples < 2) {
            throw new IllegalArgumentException("a forecast of " + days + " days in " + samples
                    + " samples cannot be made; it needs more than " + begins / DAY
                    + " and at most 3660 days and 2 samples or more");
        }
        Run run = Run.at(begins, twin.network(), parameters, start.copy(), Accuracy.OF_A_YEAR);
        if (accountedDays > 0) {
            run.keepAccount();
        }
        order(run, changes);
        double[] times = new double[samples];
        for (int i = 0; i < samples; i++) {
            times[i] = begins + (days * DAY - begins) * i / (samples - 1);
        }
        Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
        List<Quantity> told = new ArrayList<>(quantities);
        told.forEach(quantity -> values.put(quantity, new double[samples]));
        int[] taken = new int[1];
        String brokenOff = null;
        try {
            double accountBegins = (days - accountedDays) * DAY;
            int before = 0;
            if (accountedDays > 0 && accountBegins > begins) {
                before = (int) Arrays.stream(times)
                        .filter(time -> time <= accountBegins)
                        .count();
                run.until(accountBegins, Arrays.copyOf(times, before), (sample, now) -> {
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
            if (change.from() <= run.time()) {
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
