package org.tidewright.twin.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.hydraulic.WeirDraining;

/** Networks of a few bodies whose course has a closed form, derived beside each. */
class RunTest {
    private static final double DENSITY = 1000;
    private static final double SPECIFIC_HEAT = 4000;
    private static final double GRAVITY = 9.80665;
    private static final double DAY = 86_400;

    /** Far below what is asked of it here. */
    private static final Accuracy TIGHT = new Accuracy(1e-11, 1e-13, 1e-10, 1e-10, 100);

    private static final double PART_IN_A_MILLION = 1e-4; // per cent

    private final Network.Builder builder = new Network.Builder(Layout.OF_WATER_AND_HEAT, DENSITY, SPECIFIC_HEAT);

    private Run run(Network network, State state) {
        return new Run(network, network.usualParameters(), state, TIGHT);
    }

    private static State filled(Network network, Body body, double volume) {
        return new State(network).fill(body, volume, 20, 35, 0.2);
    }

    // ── closed forms ──

    @Test
    void aTankDrainsOverAWeirAsTheClosedFormSays() {
        // h(t) = (h0^(-1/2) + k t / 2)^(-2), k = weir factor / surface
        double surface = 0.675;
        double factor = 0.345;
        double crest = 0.55;
        Body tank = builder.body("tank", Shape.upright(surface, 0, 0), 0, 0);
        Body below = builder.body("below");
        builder.add((now, out) -> out.water(tank, below, factor * Math.pow(Math.max(0, now.level(tank) - crest), 1.5)));
        builder.watch(Watch.noting("5 mm", Watch.Crossing.FALLING, now -> now.level(tank) - crest - 0.005));
        Network network = builder.build();
        double head = 0.016;
        Run run = run(network, filled(network, tank, surface * (crest + head)));
        WeirDraining closed = new WeirDraining(surface, factor);

        for (double time : new double[] {1, 10, 60, 300}) {
            run.until(time);
            assertThat(run.now().level(tank) - crest)
                    .isCloseTo(closed.headAfter(time, head), withinPercentage(PART_IN_A_MILLION));
        }
        assertThat(run.firstTime("5 mm"))
                .isCloseTo(closed.timeBetween(head, 0.005), withinPercentage(PART_IN_A_MILLION));
    }

    @Test
    void anOrificeEmptiesATankAsTorricelliSays() {
        // A dh/dt = -a sqrt(2 g h): sqrt(h) falls by a/A sqrt(g/2) each second
        double surface = 0.2;
        double hole = 1e-4;
        Body tank = builder.body("tank", Shape.upright(surface, 0, 0), 0, 0);
        Body below = builder.body("below");
        builder.add((now, out) -> out.water(tank, below, hole * Math.sqrt(2 * GRAVITY * Math.max(0, now.level(tank)))));
        builder.watch(Watch.noting("a quarter", Watch.Crossing.FALLING, now -> now.level(tank) - 0.1));
        Network network = builder.build();
        Run run = run(network, filled(network, tank, surface * 0.4));
        double fall = hole / surface * Math.sqrt(GRAVITY / 2);

        run.until(200);
        double root = Math.sqrt(0.4) - fall * 200;
        assertThat(run.now().level(tank)).isCloseTo(root * root, withinPercentage(PART_IN_A_MILLION));
        run.until(400);
        assertThat(run.firstTime("a quarter"))
                .isCloseTo((Math.sqrt(0.4) - Math.sqrt(0.1)) / fall, withinPercentage(PART_IN_A_MILLION));
    }

    @Test
    void twoConnectedTanksLevelOutExponentially() {
        // flow = c (h1 - h2): the difference falls as exp(-c (1/A1 + 1/A2) t), whatever the bottoms' heights
        Body first = builder.body("first", Shape.upright(0.3, 0, 0), 1.0, 0);
        Body second = builder.body("second", Shape.upright(0.1, 0, 0), 0.8, 0);
        double c = 2e-3;
        builder.add((now, out) -> out.water(first, second, c * (now.height(first) - now.height(second))));
        Network network = builder.build();
        State state = filled(network, first, 0.3 * 0.5).fill(second, 0.1 * 0.2, 20, 35, 0.2);
        Run run = run(network, state);
        run.until(60);
        double rate = c * (1 / 0.3 + 1 / 0.1);
        assertThat(run.now().height(first) - run.now().height(second))
                .isCloseTo(0.5 * Math.exp(-rate * 60), withinPercentage(PART_IN_A_MILLION));
    }

    @Test
    void aWarmTankCoolsByNewtonsLaw() {
        // C = rho cp V + rock: 4e6 J/(m³ K) x 0.1 m³ + 1e5 J/K = 5e5 J/K; 10 W/K: time constant 5e4 s
        Body tank = builder.body("tank", Shape.none(), 0, 1e5);
        Body room = builder.body("room");
        builder.add((now, out) -> out.heat(tank, room, 10 * (now.temperature(tank) - 20)));
        builder.watch(Watch.noting("23 degrees", Watch.Crossing.FALLING, now -> now.temperature(tank) - 23));
        Network network = builder.build();
        State state = new State(network).fill(tank, 0.1, 26, 35, 0.2);
        Run run = run(network, state);
        run.until(86_400);
        assertThat(run.now().temperature(tank) - 20)
                .isCloseTo(6 * Math.exp(-86_400 / 5e4), withinPercentage(PART_IN_A_MILLION));
        assertThat(run.firstTime("23 degrees")).isCloseTo(5e4 * Math.log(2), withinPercentage(PART_IN_A_MILLION));
    }

    @Test
    void freshWaterRunThroughATankDilutesItExponentially() {
        // V dS/dt = -Q S
        Body tank = builder.body("tank", Shape.upright(0.5, 0, 0), 0, 0);
        Body tap = builder.body("tap");
        Body drain = builder.body("drain");
        double flow = 1e-4;
        builder.add((now, out) -> {
            out.water(tap, tank, flow);
            out.water(tank, drain, flow);
        });
        Network network = builder.build();
        State state = filled(network, tank, 0.2).fill(tap, 10, 20, 0, 0);
        Run run = run(network, state);
        run.until(3000);
        assertThat(run.now().volume(tank)).isCloseTo(0.2, within(1e-15));
        assertThat(run.now().salinity(tank))
                .isCloseTo(35 * Math.exp(-flow * 3000 / 0.2), withinPercentage(PART_IN_A_MILLION));
        assertThat(run.now().oxygen(tank))
                .isCloseTo(0.2 * Math.exp(-flow * 3000 / 0.2), withinPercentage(PART_IN_A_MILLION));
    }

    @Test
    void waterTakesItsWarmthAlong() {
        // 30 of 40 L at 30 °C into 60 L at 15 °C: 20 °C, whatever the speed
        Body warm = builder.body("warm");
        Body cold = builder.body("cold");
        builder.add((now, out) -> out.water(warm, cold, 1e-3));
        Network network = builder.build();
        State state = new State(network).fill(warm, 0.04, 30, 35, 0.2).fill(cold, 0.06, 15, 35, 0.2);
        Run run = run(network, state);
        run.until(30);
        assertThat(run.now().temperature(cold)).isCloseTo(20, within(1e-9));
        assertThat(run.now().temperature(warm)).isCloseTo(30, within(1e-9));
    }

    @Test
    void vapourLeavesTheSaltAndTakesTheLatentHeat() {
        // 1 kg of vapour: 1/997.05 m³ less water; temperature falls by 2.44e6 J / (4e6 x 0.099 J/K)
        Body tank = builder.body("tank", Shape.upright(0.5, 0, 0), 0, 0);
        Body air = builder.body("air");
        builder.add((now, out) -> out.vapour(tank, air, 1e-3, 2.44e6));
        Network network = builder.build();
        Run run = run(network, filled(network, tank, 0.1));
        double salt = run.now().stock(tank, Stock.SALT);
        run.until(1000);
        double volume = 0.1 - 1 / 997.05;
        assertThat(run.now().volume(tank)).isCloseTo(volume, within(1e-12));
        assertThat(run.now().stock(tank, Stock.SALT)).isEqualTo(salt);
        assertThat(run.now().salinity(tank)).isCloseTo(35 * 0.1 / volume, within(1e-9));
        // d(T) = -L dm / (rho cp V): the logarithm of the shrinking volume, 1 % of 2.44e6/4e5 K at most
        double exact = 20 - 2.44e6 * 997.05 / (DENSITY * SPECIFIC_HEAT) * Math.log(0.1 / volume);
        assertThat(run.now().temperature(tank)).isCloseTo(exact, within(1e-7));
    }

    // ── settings, orders, parameters ──

    @Test
    void aSettingChangesExactlyWhenItWasOrderedTo() {
        Body tap = builder.body("tap");
        Body tank = builder.body("tank", Shape.upright(0.5, 0, 0), 0, 0);
        Setting valve = builder.setting("valve", 0);
        builder.add((now, out) -> out.water(tap, tank, 1e-3 * now.value(valve)));
        Network network = builder.build();
        Run run = run(network, filled(network, tap, 1));
        run.setAt(3.7, valve, 1).setAt(8.2, valve, 0);
        run.until(20);
        assertThat(run.now().volume(tank)).isCloseTo(4.5e-3, within(1e-17));
    }

    @Test
    void theLastOrderForATimeCountsAndOneForNowIsObeyedAtOnce() {
        Body tap = builder.body("tap");
        Body tank = builder.body("tank");
        Setting valve = builder.setting("valve", 0);
        builder.add((now, out) -> out.water(tap, tank, 1e-3 * now.value(valve)));
        Network network = builder.build();
        Run run = run(network, filled(network, tap, 1));
        run.setAt(0, valve, 1).setAt(4, valve, 5).setAt(4, valve, 2);
        run.until(4);
        assertThat(run.now().value(valve)).isEqualTo(2);
        run.until(6);
        assertThat(run.now().volume(tank)).isCloseTo(8e-3, within(1e-16));
    }

    @Test
    void aParameterIsReadAsTheRunWasGivenIt() {
        Body tap = builder.body("tap");
        Body tank = builder.body("tank");
        var rate = builder.parameter("rate", "m^3/s", 1e-3, 1e-4, 1e-2, Basis.COMPUTED, "for the test");
        builder.add((now, out) -> out.water(tap, tank, now.value(rate)));
        Network network = builder.build();
        State state = filled(network, tap, 1);
        Run run = new Run(network, new double[] {3e-3}, state, TIGHT);
        run.until(10);
        assertThat(state.get(tank, Stock.WATER)).isCloseTo(0.03, within(1e-16));
        assertThatThrownBy(() -> new Run(network, new double[2], state, TIGHT))
                .hasMessageContaining("the network has 1 parameters, not 2");
    }

    // ── watches ──

    /** A level that swings between 0.4 and 0.6 m about once a minute: h = 0.5 - 0.1 cos(0.1 t). */
    private Body swinging() {
        Body sea = builder.body("sea");
        Body pool = builder.body("pool", Shape.upright(1, 0, 0), 0, 0);
        builder.add((now, out) -> out.water(sea, pool, 0.01 * Math.sin(0.1 * now.time())));
        return pool;
    }

    private List<Double> times(Run run, String event) {
        return run.log().stream()
                .filter(occurrence -> occurrence.event().equals(event))
                .map(Occurrence::time)
                .toList();
    }

    @Test
    void aWatchSeesEveryCrossingInItsDirectionAndANotingOneTheFirst() {
        Body pool = swinging();
        builder.watch(new Watch("rises", Watch.Crossing.RISING, now -> now.level(pool) - 0.5, (now, switches) -> {}));
        builder.watch(new Watch("falls", Watch.Crossing.FALLING, now -> now.level(pool) - 0.5, (now, switches) -> {}));
        builder.watch(Watch.noting("first rise", Watch.Crossing.RISING, now -> now.level(pool) - 0.5));
        Network network = builder.build();
        Run run = run(network, new State(network).fill(pool, 0.4, 20, 35, 0).fill(network.body("sea"), 9, 20, 35, 0));
        run.until(200);
        // cos is zero and falling at pi/2 + 2 k pi, rising half a turn later; 20 rad in all
        double quarter = Math.PI / 2 / 0.1;
        assertThat(times(run, "rises")).hasSize(3);
        assertThat(times(run, "falls")).hasSize(3);
        for (int turn = 0; turn < 3; turn++) {
            assertThat(times(run, "rises").get(turn)).isCloseTo((1 + 4 * turn) * quarter, within(1e-7));
            assertThat(times(run, "falls").get(turn)).isCloseTo((3 + 4 * turn) * quarter, within(1e-7));
        }
        assertThat(times(run, "first rise")).containsExactly(times(run, "rises").get(0));
        assertThat(run.firstTime("never")).isInfinite();
    }

    @Test
    void aDeedActsFromTheCrossingOn() {
        // A float closes the tap at 0.25 m, a clock opens a drain 10 s later: 1 L/s in, then 1 L/s out
        Body tap = builder.body("tap");
        Body tank = builder.body("tank", Shape.upright(0.4, 0, 0), 0, 0);
        Setting filling = builder.setting("filling", 1);
        Setting draining = builder.setting("draining", 0);
        builder.add((now, out) -> out.water(tap, tank, 1e-3 * (now.value(filling) - now.value(draining))));
        builder.watch(new Watch("full", Watch.Crossing.RISING, now -> now.level(tank) - 0.25, (now, switches) -> {
            switches.set(filling, 0);
            switches.setAt(now.time() + 99, draining, 1);
            switches.setAt(now.time() + 10, draining, 1);
        }));
        Network network = builder.build();
        Run run = run(network, filled(network, tap, 1));
        run.until(105);
        assertThat(run.firstTime("full")).isCloseTo(100, within(1e-9));
        assertThat(run.now().volume(tank)).isCloseTo(0.1, within(1e-12));
        run.until(120);
        assertThat(run.now().volume(tank)).isCloseTo(0.09, within(1e-12));
    }

    @Test
    void twoWatchesThatAnswerEachOtherForEverAreRefused() {
        // A float without play: full closes the tap and opens the drain, not full does the opposite
        Body tap = builder.body("tap");
        Body tank = builder.body("tank", Shape.upright(0.4, 0, 0), 0, 0);
        Setting filling = builder.setting("filling", 1);
        builder.add((now, out) -> out.water(tap, tank, 1e-3 * (2 * now.value(filling) - 1)));
        builder.watch(new Watch(
                "full", Watch.Crossing.RISING, now -> now.level(tank) - 0.25, (now, out) -> out.set(filling, 0)));
        builder.watch(new Watch(
                "not full", Watch.Crossing.FALLING, now -> now.level(tank) - 0.25, (now, out) -> out.set(filling, 1)));
        Network network = builder.build();
        Run run = run(network, filled(network, tap, 1));
        assertThatThrownBy(() -> run.until(200))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("events answer each other without end at 100")
                .hasMessageContaining("not full");
    }

    // ── samples ──

    @Test
    void samplesShowWhatASeparateRunToThatTimeEndsWith() {
        Body pool = swinging();
        Network network = builder.build();
        State start = new State(network).fill(pool, 0.4, 20, 35, 0).fill(network.body("sea"), 9, 20, 35, 0);
        double[] times = {0, 7.3, 40, 40.5, 99, 120};
        double[] levels = new double[times.length];
        run(network, start.copy()).until(120, times, (sample, now) -> {
            assertThat(now.time()).isEqualTo(times[sample]);
            levels[sample] = now.level(pool);
        });
        for (int i = 0; i < times.length; i++) {
            Run alone = run(network, start.copy());
            alone.until(times[i]);
            assertThat(levels[i]).isCloseTo(alone.now().level(pool), within(1e-8));
            assertThat(levels[i]).isCloseTo(0.5 - 0.1 * Math.cos(0.1 * times[i]), within(1e-8));
        }
    }

    @Test
    void aRunThatIsTakenInPartsEndsWhereItWouldInOne() {
        Body pool = swinging();
        Network network = builder.build();
        State whole = new State(network).fill(pool, 0.4, 20, 35, 0).fill(network.body("sea"), 9, 20, 35, 0);
        State parts = whole.copy();
        run(network, whole).until(90);
        Run inParts = run(network, parts);
        for (int second = 1; second <= 90; second++) {
            inParts.until(second);
        }
        assertThat(inParts.time()).isEqualTo(90);
        assertThat(parts.get(pool, Stock.WATER)).isCloseTo(whole.get(pool, Stock.WATER), within(1e-9));
    }

    /** A routine at a full hour and a flow that a hand has set: a run from there knows of both. */
    @Test
    void aRunFromWhereAnotherStandsHasItsTimeItsSettingsAndWhatIsDueThen() {
        Body drain = builder.outside("drain");
        Body tank = builder.body("tank", Shape.upright(0.4, 0, 0), 0, 0);
        Setting rate = builder.setting("rate", 0);
        Setting hours = builder.setting("hours", 0);
        builder.add((now, out) -> out.move(Stock.OXYGEN, tank, drain, now.value(rate)));
        builder.add(new Routine(
                "full hour", Routine.daily(3600, 1), (now, switches) -> switches.set(hours, now.value(hours) + 1)));
        Network network = builder.build();
        State before = filled(network, tank, 0.1);
        Run first = run(network, before).set(rate, 1e-6);
        first.until(3600);
        State copy = before.copy();
        Run second = Run.from(first, network.usualParameters(), copy, TIGHT, Run.Method.AS_SUITS);
        assertThat(second.time()).isEqualTo(3600);
        second.until(7200);
        assertThat(second.now().value(hours)).as("due at the very moment").isEqualTo(1);
        assertThat(copy.get(tank, Stock.OXYGEN)).isCloseTo(0.02 - 7200e-6, within(1e-12));
        assertThat(before.get(tank, Stock.OXYGEN)).isCloseTo(0.02 - 3600e-6, within(1e-12));
    }

    @Test
    void namesAreGivenOnce() {
        builder.body("tank");
        builder.setting("tank", 0);
        assertThatThrownBy(() -> builder.body("tank")).hasMessageContaining("there is already a body tank");
        assertThatThrownBy(() -> builder.setting("tank", 1)).hasMessageContaining("there is already a setting tank");
        Network network = builder.build();
        assertThatThrownBy(() -> network.body("vat")).hasMessageContaining("no body is called vat");
    }

    @Test
    void anEmptyBodyIsAtNoughtAndHoldsNothing() {
        Body tank = builder.body("tank", Shape.upright(0.4, 0, 0), 0, 0);
        Network network = builder.build();
        View now = run(network, new State(network)).now();
        assertThat(now.temperature(tank)).isZero();
        assertThat(now.salinity(tank)).isZero();
        assertThat(now.oxygen(tank)).isZero();
        assertThat(now.level(tank)).isZero();
    }

    /** Ten litres every day at 08:00: a run that begins on the third day at 08:00 has had that one. */
    @Test
    void aRunThatBeginsLaterDoesWhatIsDueAfterItsBeginning() {
        Body store = builder.body("store");
        Body tank = builder.body("tank");
        double eight = 8 * 3600;
        builder.add(new Routine(
                "dose",
                Routine.daily(eight, 1),
                (now, switches) -> switches.atOnce().water(store, tank, 0.010)));
        Network network = builder.build();
        for (double[] beginAndDoses : new double[][] {{0, 5}, {2 * DAY, 3}, {2 * DAY + eight, 2}}) {
            State state = filled(network, store, 1);
            Run run = Run.at(beginAndDoses[0], network, network.usualParameters(), state, TIGHT);
            assertThat(run.time()).isEqualTo(beginAndDoses[0]);
            run.until(5 * DAY);
            assertThat(state.get(tank, Stock.WATER)).isCloseTo(beginAndDoses[1] * 0.010, within(1e-12));
        }
    }
}
