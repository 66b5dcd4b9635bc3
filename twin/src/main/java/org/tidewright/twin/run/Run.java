package org.tidewright.twin.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.tidewright.numerics.ode.DormandPrince;
import org.tidewright.numerics.ode.Equations;
import org.tidewright.numerics.ode.Guard;
import org.tidewright.numerics.ode.Interpolant;
import org.tidewright.numerics.ode.StepListener;
import org.tidewright.numerics.ode.Stop;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
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

    private final Network network;
    private final State state;
    private final double[] settings;
    private final Moment present;
    private final DormandPrince stepper;
    private final List<Guard> guards = new ArrayList<>();
    private final boolean[] happened;
    private final List<Order> orders = new ArrayList<>();
    private final List<Occurrence> log = new ArrayList<>();
    private double time;

    /** A setting to be changed at a time. */
    private record Order(double time, Setting setting, double value) {}

    /**
     * A run from time 0.
     *
     * @param parameters values in the order of {@link Network#parameters()}
     * @param state where it starts; changed by the run
     */
    public Run(Network network, @Unit("*") double[] parameters, State state, Accuracy accuracy) {
        if (parameters.length != network.parameters().size()) {
            throw new IllegalArgumentException(
                    "the network has " + network.parameters().size() + " parameters, not " + parameters.length);
        }
        this.network = network;
        this.state = state;
        settings = network.settings().stream().mapToDouble(Setting::initial).toArray();
        present = new Moment(network, parameters, settings);
        Equations equations = new RightHandSide(network, parameters, settings);
        stepper = new DormandPrince(equations, accuracy.tolerance(network, state));
        Moment guarded = new Moment(network, parameters, settings);
        happened = new boolean[network.watches().size()];
        for (int i = 0; i < happened.length; i++) {
            guards.add(new WatchGuard(network.watches().get(i), i, guarded));
        }
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

    /** What the watches saw so far, in order of time. */
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
            double next = orders.isEmpty() ? end : Math.min(end, orders.get(0).time());
            double before = time;
            Stop stop = stepper.advance(time, state.stocks(), next, guards, sampling);
            time = stop.time();
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

    private void obeyOrders() {
        while (!orders.isEmpty() && orders.get(0).time() <= time) {
            Order order = orders.remove(0);
            change(order.setting(), order.value());
        }
    }

    /** A step that suited a still tank may be far too long once a pump runs: the next one is chosen afresh. */
    private void change(Setting setting, double value) {
        if (settings[setting.index()] != value) {
            settings[setting.index()] = value;
            stepper.suggestStep(Double.NaN);
        }
    }

    private void happen(int index) {
        Watch watch = network.watches().get(index);
        happened[index] = true;
        log.add(new Occurrence(time, watch.name()));
        watch.deed().happen(present.at(time, state.stocks()), new Watch.Switchboard() {
            @Override
            public void set(Setting setting, double value) {
                change(setting, value);
            }

            @Override
            public void setAt(double when, Setting setting, double value) {
                orders.removeIf(order -> order.setting().equals(setting));
                Run.this.setAt(when, setting, value);
            }
        });
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

    private static final class RightHandSide implements Equations {
        private final Mechanism[] mechanisms;
        private final Moment now;
        private final Flows flows;
        private final int size;

        RightHandSide(Network network, double[] parameters, double[] settings) {
            mechanisms = network.mechanisms().toArray(new Mechanism[0]);
            now = new Moment(network, parameters, settings);
            flows = new Flows(network, now);
            size = network.bodies().size() * Stock.COUNT;
        }

        @Override
        public int size() {
            return size;
        }

        @Override
        public void slopes(double time, double[] stocks, double[] slopes) {
            Arrays.fill(slopes, 0);
            now.at(time, stocks);
            flows.into(slopes);
            for (Mechanism mechanism : mechanisms) {
                mechanism.act(now, flows);
            }
        }
    }
}
