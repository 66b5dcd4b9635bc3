package org.tidewright.twin.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.numerics.ode.AdditiveRungeKutta;
import org.tidewright.numerics.ode.DormandPrince;
import org.tidewright.numerics.ode.Guard;
import org.tidewright.numerics.ode.Interpolant;
import org.tidewright.numerics.ode.SplitEquations;
import org.tidewright.numerics.ode.StepListener;
import org.tidewright.numerics.ode.StepRefused;
import org.tidewright.numerics.ode.Stepper;
import org.tidewright.numerics.ode.Stop;
import org.tidewright.numerics.ode.Tolerance;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * One course of a network from a state: it advances the state in place, lands on every watched event and keeps a log of
 * them. Not for several threads.
 */
public final class Run {
    /** Events without progress after which two watches are taken to answer each other for ever. */
    private static final int MOST_EVENTS_AT_ONCE = 1000;

    private static final double NO_PROGRESS = 1e-9;

    private static final double QUARTER_HOUR = 900;

    /** Far shorter than anything takes, and yet not lost when a time of day is worked out from it. */
    private static final double JUST_BEFORE = 1e-6;

    /** Relative accuracy below which stopping at the bends of rates pays, as measured. */
    private static final double CLOSE = 3e-5;

    private final Network network;
    private final State state;
    private final double[] settings;
    private final Moment present;
    private final Stepper stepper;
    private final List<Guard> guards = new ArrayList<>();
    private final boolean[] happened;
    private final List<Order> orders = new ArrayList<>();
    private final List<Occurrence> log = new ArrayList<>();
    private final double[] nextTimes;
    private final RightHandSide rightHandSide;
    private final double longestStep;
    private final boolean close;
    private final Hands hands;
    private boolean switched;
    private @Nullable Account account;
    private double time;
    private long steps;

    /** How a run steps. */
    public enum Method {
        /** As its network asks: fast exchange implicitly, where there is any. What a run does unless told otherwise. */
        AS_SUITS,
        /** All of it explicitly, fast exchange too. */
        EXPLICIT
    }

    /**
     * What a run took so far.
     *
     * @param evaluations of all rates
     * @param steps that were accepted
     */
    public record Effort(long evaluations, long steps) {}

    /** A setting to be changed at a time. */
    private record Order(double time, Setting setting, double value) {}

    /**
     * A run from time 0.
     *
     * @param parameters values in the order of {@link Network#parameters()}
     * @param state where it starts; changed by the run
     */
    public Run(Network network, @Unit("*") double[] parameters, State state, Accuracy accuracy) {
        this(network, parameters, state, accuracy, Method.AS_SUITS);
    }

    /** The same by a method of choice, to compare methods. */
    public Run(Network network, @Unit("*") double[] parameters, State state, Accuracy accuracy, Method method) {
        if (parameters.length != network.parameters().size()) {
            throw new IllegalArgumentException(
                    "the network has " + network.parameters().size() + " parameters, not " + parameters.length);
        }
        this.network = network;
        this.state = state;
        settings = network.settings().stream().mapToDouble(Setting::initial).toArray();
        present = new Moment(network, parameters, settings);
        rightHandSide = new RightHandSide(network, parameters, settings);
        longestStep = accuracy.longestStep();
        close = accuracy.relative() < CLOSE;
        Tolerance tolerance = accuracy.tolerance(network, state);
        stepper = method == Method.AS_SUITS && rightHandSide.exchanges()
                ? new AdditiveRungeKutta(rightHandSide, tolerance)
                : new DormandPrince(rightHandSide, tolerance);
        Moment guarded = new Moment(network, parameters, settings);
        happened = new boolean[network.watches().size()];
        for (int i = 0; i < happened.length; i++) {
            guards.add(new WatchGuard(network.watches().get(i), i, guarded));
        }
        hands = new Hands();
        nextTimes = new double[network.routines().size()];
        planRoutines();
    }

    /**
     * A run of its own that begins where another stands: at its time and with its settings, whose orders it does not know.
     *
     * @param parameters values in the order of {@link Network#parameters()}
     * @param state where it starts; changed by the run
     */
    public static Run from(Run before, @Unit("*") double[] parameters, State state, Accuracy accuracy, Method method) {
        Run run = new Run(before.network, parameters, state, accuracy, method);
        System.arraycopy(before.settings, 0, run.settings, 0, run.settings.length);
        System.arraycopy(before.nextTimes, 0, run.nextTimes, 0, run.nextTimes.length);
        run.time = before.time;
        return run;
    }

    /**
     * A run that begins later than at time 0, with every setting as it is at first. What is due at the very moment it begins
     * has been.
     *
     * @param parameters values in the order of {@link Network#parameters()}
     * @param state where it starts; changed by the run
     */
    public static Run at(
            @Unit("s") double time, Network network, @Unit("*") double[] parameters, State state, Accuracy accuracy) {
        Run run = new Run(network, parameters, state, accuracy);
        run.time = time;
        run.planRoutines();
        return run;
    }

    /** Switches a setting now. */
    public Run set(Setting setting, @Unit("*") double value) {
        change(setting, value);
        return this;
    }

    /** Switches a setting at a later time. */
    public Run setAt(@Unit("s") double when, Setting setting, @Unit("*") double value) {
        orders.removeIf(order -> order.setting().equals(setting) && order.time() == when);
        orders.add(new Order(when, setting, value));
        orders.sort(Comparator.comparingDouble(Order::time));
        return this;
    }

    /** Keeps account of what every cause moves from now on; begins a new account where there is one already. */
    public Run keepAccount() {
        if (account == null) {
            List<String> causes = new ArrayList<>();
            network.mechanisms().forEach(mechanism -> causes.add(mechanism.name()));
            network.routines().forEach(routine -> causes.add(routine.name()));
            network.watches().forEach(watch -> causes.add(watch.name()));
            account = new Account(network, causes);
            rightHandSide.keepAccount(account);
        }
        account.begin(time);
        return this;
    }

    /** The account so far; it goes on with the run. */
    public Account account() {
        if (account == null) {
            throw new IllegalStateException("no account was kept; ask for one before running");
        }
        account.reach(time);
        return account;
    }

    /** What the run took so far. */
    public Effort effort() {
        return new Effort(rightHandSide.evaluations, steps);
    }

    /** What the watches and routines did so far, in order of time. */
    public List<Occurrence> log() {
        return log;
    }

    /** When an event first happened; infinite if it did not. */
    public @Unit("s") double firstTime(String event) {
        return log.stream()
                .filter(occurrence -> occurrence.event().equals(event))
                .mapToDouble(Occurrence::time)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    public @Unit("s") double time() {
        return time;
    }

    /** The present, for reading until the run goes on. */
    public View now() {
        return present.at(time, state.stocks());
    }

    /** Runs to a time. */
    public void until(@Unit("s") double end) {
        until(end, new double[0], (sample, now) -> {});
    }

    /** Sees the state at the sample times. */
    @FunctionalInterface
    public interface Sampler {
        /**
         * Called in order of time.
         *
         * @param now valid during the call only
         */
        void take(int sample, View now);
    }

    /**
     * Runs to a time and shows the state on the way.
     *
     * @param sampleTimes rising, none before the present
     */
    public void until(@Unit("s") double end, @Unit("s") double[] sampleTimes, Sampler sampler) {
        Sampling sampling = new Sampling(sampleTimes, sampler);
        int eventsAtOnce = 0;
        while (time < end) {
            obeyOrders();
            doRoutines();
            double next = nextAppointment(end);
            double before = time;
            rightHandSide.endAt(next);
            Stop stop = advance(next, sampling);
            time = stop.time();
            present.at(time, state.stocks());
            for (int index : stop.crossed()) {
                happen(index);
            }
            eventsAtOnce = time - before > NO_PROGRESS ? 0 : eventsAtOnce + 1;
            if (eventsAtOnce > MOST_EVENTS_AT_ONCE) {
                throw new IllegalStateException("events answer each other without end at " + time + " s: "
                        + log.subList(Math.max(0, log.size() - 4), log.size()));
            }
        }
        obeyOrders();
        sampling.finish();
    }

    private Stop advance(double next, StepListener sampling) {
        try {
            return stepper.advance(time, state.stocks(), next, guards, sampling);
        } catch (IllegalArgumentException beyondALaw) {
            throw new BeyondTheModel(time, String.valueOf(beyondALaw.getMessage()), beyondALaw);
        } catch (StepRefused refused) {
            IllegalArgumentException beyond = rightHandSide.lastRefusal;
            throw new BeyondTheModel(
                    time, String.valueOf(beyond == null ? refused.getMessage() : beyond.getMessage()), refused);
        }
    }

    private double nextAppointment(double end) {
        double next = orders.isEmpty() ? end : Math.min(end, orders.get(0).time());
        for (double due : nextTimes) {
            next = Math.min(next, due);
        }
        return next;
    }

    /** Does what is due, in the order of declaration, and then looks when each is due next. */
    private void doRoutines() {
        boolean done = false;
        for (int i = 0; i < nextTimes.length; i++) {
            if (nextTimes[i] <= time) {
                Routine routine = network.routines().get(i);
                if (routine.logged()) {
                    log.add(new Occurrence(time, routine.name()));
                }
                hands.doDeed(routine.deed(), network.mechanisms().size() + i);
                done = true;
            }
        }
        if (done || switched) {
            planRoutines();
        }
    }

    private void planRoutines() {
        switched = false;
        View now = present.at(time, state.stocks());
        for (int i = 0; i < nextTimes.length; i++) {
            Routine routine = network.routines().get(i);
            nextTimes[i] = routine.bend() && !close
                    ? Double.POSITIVE_INFINITY
                    : routine.next().after(time, now);
        }
    }

    private void obeyOrders() {
        while (!orders.isEmpty() && orders.get(0).time() <= time) {
            Order order = orders.remove(0);
            change(order.setting(), order.value());
        }
    }

    /**
     * A step that suited a still tank may be far too long once a pump runs: the next one is chosen afresh. Where fast
     * exchange is taken implicitly a quarter of an hour is never far wrong.
     */
    private void change(Setting setting, double value) {
        if (settings[setting.index()] != value) {
            settings[setting.index()] = value;
            switched = true;
            stepper.suggestStep(rightHandSide.exchanges() ? Math.min(QUARTER_HOUR, longestStep) : Double.NaN);
        }
    }

    private void happen(int index) {
        Watch watch = network.watches().get(index);
        happened[index] = true;
        log.add(new Occurrence(time, watch.name()));
        int cause = network.mechanisms().size() + network.routines().size() + index;
        hands.doDeed(watch.deed(), cause);
    }

    /** What an event may do: switch settings, and move amounts at once. */
    private final class Hands implements Watch.Switchboard, Transfers {
        private final Flows flows = new Flows(network, present);
        private final Tape tape = new Tape();

        void doDeed(Watch.Deed deed, int cause) {
            present.at(time, state.stocks());
            flows.into(state.stocks());
            flows.noteOn(account == null ? null : tape);
            tape.rewind();
            tape.by(cause);
            deed.happen(present, this);
            if (account != null) {
                account.add(tape, 1);
            }
        }

        @Override
        public void set(Setting setting, double value) {
            change(setting, value);
        }

        @Override
        public void setAt(double when, Setting setting, double value) {
            orders.removeIf(order -> order.setting().equals(setting));
            Run.this.setAt(when, setting, value);
        }

        @Override
        public Transfers atOnce() {
            return this;
        }

        @Override
        public void water(Body from, Body to, double amount) {
            flows.water(from, to, amount);
            present.refresh();
        }

        @Override
        public void vapour(Body from, Body to, double amount, double latentHeat) {
            flows.vapour(from, to, amount, latentHeat);
            present.refresh();
        }

        @Override
        public void heat(Body from, Body to, double amount) {
            flows.heat(from, to, amount);
            present.refresh();
        }

        @Override
        public void move(Stock stock, Body from, Body to, double amount) {
            flows.move(stock, from, to, amount);
            present.refresh();
        }

        @Override
        public void run(Recipe recipe, double times) {
            flows.run(recipe, times);
            present.refresh();
        }
    }

    /** Reads the samples that fall into each step off its dense output. */
    private final class Sampling implements StepListener {
        private final double[] times;
        private final Sampler sampler;
        private final double[] stocks = new double[state.stocks().length];
        private final Moment shown = new Moment(network, present.parameters(), settings);
        private int next;

        Sampling(double[] times, Sampler sampler) {
            this.times = times;
            this.sampler = sampler;
        }

        @Override
        public void step(Interpolant step) {
            steps++;
            while (next < times.length && times[next] <= step.to()) {
                step.at(Math.max(times[next], step.from()), stocks);
                sampler.take(next, shown.at(times[next], stocks));
                next++;
            }
        }

        /** Samples at the very end that no step reached by a rounding. */
        void finish() {
            while (next < times.length && times[next] <= time) {
                sampler.take(next, shown.at(times[next], state.stocks()));
                next++;
            }
        }
    }

    private final class WatchGuard implements Guard {
        private final Watch watch;
        private final int index;
        private final Moment now;

        WatchGuard(Watch watch, int index, Moment now) {
            this.watch = watch;
            this.index = index;
            this.now = now;
        }

        @Override
        public double value(double at, double[] stocks) {
            return watch.once() && happened[index] ? 1 : watch.distance().of(now.at(at, stocks));
        }

        @Override
        public Direction direction() {
            return watch.crossing() == Watch.Crossing.RISING ? Direction.RISING : Direction.FALLING;
        }
    }

    private static final class RightHandSide implements SplitEquations {
        private final Network network;
        private final Mechanism[] mechanisms;
        private final Moment now;
        private final Flows flows;
        private final int size;
        private final FastExchange exchange;
        private final Moment linearised;
        private final List<Tape> tapes = new ArrayList<>();
        private @Nullable Account account;
        private long evaluations;
        private int stage;
        private double end = Double.POSITIVE_INFINITY;
        private double lastBeforeEnd;
        private @Nullable IllegalArgumentException lastRefusal;

        RightHandSide(Network network, double[] parameters, double[] settings) {
            mechanisms = network.mechanisms().toArray(new Mechanism[0]);
            now = new Moment(network, parameters, settings);
            flows = new Flows(network, now);
            size = network.size();
            this.network = network;
            exchange = new FastExchange(network);
            linearised = new Moment(network, parameters, settings);
        }

        /**
         * Where this advance ends. Rates that change there by the clock are taken as they are just before: a step up to the
         * end must not see what begins at it.
         */
        void endAt(double newEnd) {
            end = newEnd;
            lastBeforeEnd = newEnd - JUST_BEFORE;
        }

        boolean exchanges() {
            return !exchange.isEmpty();
        }

        @Override
        public int unread() {
            return network.unread();
        }

        @Override
        public int[] exchanged() {
            return exchange.places();
        }

        @Override
        public void linearise(double[] state) {
            exchange.take(linearised.at(0, state));
        }

        @Override
        public void exchange(double[] state, double[] product) {
            exchange.apply(state, product);
        }

        @Override
        public void solve(double shift, double[] right) {
            exchange.solve(shift, right);
        }

        @Override
        public void damp(double shift, double[] change) {
            exchange.damp(shift, change);
        }

        void keepAccount(Account newAccount) {
            account = newAccount;
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public void slopes(double time, double[] stocks, double[] slopes) {
            evaluations++;
            Arrays.fill(slopes, 0);
            now.at(time < end ? time : lastBeforeEnd, stocks);
            flows.into(slopes);
            try {
                if (account == null) {
                    for (Mechanism mechanism : mechanisms) {
                        mechanism.act(now, flows);
                    }
                } else {
                    actNoting(tape(stage));
                }
            } catch (IllegalArgumentException beyondALaw) {
                flows.noteOn(null);
                if (stage == 0) {
                    throw beyondALaw;
                }
                // A step on trial may overshoot what a law is good for: it is refused and a shorter one is tried.
                lastRefusal = beyondALaw;
                Arrays.fill(slopes, Double.POSITIVE_INFINITY);
            }
        }

        private void actNoting(Tape tape) {
            tape.rewind();
            flows.noteOn(tape);
            for (int i = 0; i < mechanisms.length; i++) {
                tape.by(i);
                mechanisms[i].act(now, flows);
            }
            flows.noteOn(null);
        }

        private Tape tape(int index) {
            while (tapes.size() <= index) {
                tapes.add(new Tape());
            }
            return tapes.get(index);
        }

        @Override
        public void evaluating(int newStage) {
            stage = newStage;
        }

        @Override
        public void carriedOver(int last) {
            if (account != null) {
                tape(last);
                Collections.swap(tapes, 0, last);
            }
        }

        @Override
        public void advanced(double[] weights) {
            if (account != null) {
                for (int i = 0; i < weights.length; i++) {
                    if (weights[i] != 0) {
                        account.add(tape(i), weights[i]);
                    }
                }
            }
        }
    }
}
