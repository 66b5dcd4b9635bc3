package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.water.SteadyDose;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Water changes are a series of dilutions. */
class WaterChangesTest {
    private static final double DAY = 86_400;
    private static final double WEEK = 7 * DAY;
    private static final double TEN_O_CLOCK = 10 * 3600;
    private static final double VOLUME = 0.2;
    private static final double CHANGED = 0.02;
    private static final double ROUNDING = 1e-10; // per cent

    private Network network = new Network.Builder(Layout.OF_ALL, 1023, 3990).build();
    private final Network.Builder builder = new Network.Builder(Layout.OF_ALL, 1023, 3990);
    private final World world = World.in(builder);
    private final Body water = builder.body("water", Shape.upright(0.4, 0, 0), 0, 0);
    private final Levers levers = new Levers(builder);

    private final Body ground =
            builder.pool("ground", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private WaterChanges weekly(Map<Stock, Double> holds) {
        return weekly(holds, 0);
    }

    private WaterChanges weekly(Map<Stock, Double> holds, double siphoned) {
        return new WaterChanges(
                builder,
                levers,
                world,
                water,
                ground,
                new Brew(holds),
                List.of(new WaterChanges.Change("weekly change", CHANGED, TEN_O_CLOCK, 7, siphoned)));
    }

    private Run run(State state) {
        return new Run(network, network.usualParameters(), state, Accuracy.OF_A_YEAR);
    }

    private State filled() {
        network = builder.build();
        return new State(network).fill(water, VOLUME, 25, 35, 0.2);
    }

    /** C_n = C0 (1 - w)^n. */
    @Test
    void anNthChangeLeavesTheNthPowerOfWhatOneLeaves() {
        weekly(Map.of());
        Run run = run(filled().dissolve(water, Stock.NITRATE, 0.8));
        for (int n = 1; n <= 52; n++) {
            run.until((n - 1) * WEEK + 12 * 3600);
            assertThat(run.now().concentration(water, Stock.NITRATE))
                    .as("after %d changes", n)
                    .isCloseTo(0.8 * Math.pow(0.9, n), withinPercentage(ROUNDING));
            assertThat(run.now().volume(water)).isCloseTo(VOLUME, within(1e-15));
        }
    }

    /** C_n = C_new + (C0 - C_new) (1 - w)^n. */
    @Test
    void changesApproachWhatTheNewWaterHoldsAsAGeometricSeries() {
        weekly(Map.of(Stock.CALCIUM, 10.7));
        Run run = run(filled().dissolve(water, Stock.CALCIUM, 8));
        run.until(29 * WEEK + 12 * 3600);
        assertThat(run.now().concentration(water, Stock.CALCIUM))
                .isCloseTo(10.7 + (8 - 10.7) * Math.pow(0.9, 30), withinPercentage(ROUNDING));
    }

    /**
     * Salt left by a balanced dosing of 0.8 dKH/day into 200 L: 500 mg/L in 30 days, so 0.1167 g/L a week; with a
     * tenth changed every week it climbs to 1.167 g/L before each change. Before the k-th change it is r (1 - (1 -
     * w)^k) / w, r of a week. Both figures are of a worked example, four digits.
     */
    @Test
    void aSteadyDoseAndChangesClimbToThePlateauWorkedOut() {
        double perDay = 0.500 / 30; // kg/m³
        Setting mean = builder.setting("dose", 1e-9);
        SteadyDose.Pouring pouring =
                (now, out, rate) -> out.move(Stock.SALT, world.store(), water, rate / 1e-9 * perDay * VOLUME / DAY);
        builder.add(new SteadyDose("salt left over", mean, 0, DAY, pouring));
        weekly(Map.of());
        State state = filled();
        state.set(water, Stock.SALT, 0);
        Run run = run(state);
        run.until(TEN_O_CLOCK + 1);
        double afterFirst = 0.9 * perDay * TEN_O_CLOCK / DAY;
        assertThat(salt(run)).isCloseTo(afterFirst, within(1e-6));
        for (int k = 1; k <= 150; k++) {
            run.until(k * WEEK + TEN_O_CLOCK - 1);
            double closed = 0.11667 * (1 - Math.pow(0.9, k)) / 0.1 + afterFirst * Math.pow(0.9, k - 1);
            assertThat(salt(run)).as("before change %d", k).isCloseTo(closed, withinPercentage(0.01));
        }
        assertThat(salt(run)).isCloseTo(1.167, within(0.0005));
    }

    private double salt(Run run) {
        return run.now().concentration(water, Stock.SALT);
    }

    /** A dose spread over nine hours from ten at night brings in a day what a dose spread over all of it does. */
    @Test
    void aDoseSpreadOverANightBringsItsWholeDay() {
        double mean = 2e-3 / DAY;
        Setting perDay = builder.setting("dose", mean);
        double from = 22 * 3600;
        builder.add(new SteadyDose(
                "limewater",
                perDay,
                from,
                9 * 3600,
                (now, out, rate) -> out.move(Stock.CALCIUM, world.store(), water, rate)));
        builder.add(Routine.quiet("begins", Routine.daily(from, 1)));
        builder.add(Routine.quiet("ends", Routine.daily(7 * 3600, 1)));
        State state = filled();
        Run run = run(state);
        run.until(7 * 3600);
        assertThat(run.now().stock(water, Stock.CALCIUM)).isCloseTo(2e-3 * 7 / 9, withinPercentage(1e-8));
        run.until(22 * 3600);
        assertThat(run.now().stock(water, Stock.CALCIUM)).isCloseTo(2e-3 * 7 / 9, withinPercentage(1e-8));
        run.until(10 * DAY);
        assertThat(run.now().stock(water, Stock.CALCIUM)).isCloseTo(20e-3, withinPercentage(1e-8));
    }

    @Test
    void aChangeDueInTheSecondInWhichItsLeverMovesIsMadeAsTheLeverThenSays() {
        WaterChanges changes = weekly(Map.of());
        Run run = run(filled().dissolve(water, Stock.NITRATE, 1));
        run.setAt(TEN_O_CLOCK, changes.factor(), 2);
        run.setAt(WEEK + TEN_O_CLOCK, changes.factor(), 0);
        run.until(TEN_O_CLOCK + 1);
        assertThat(run.now().concentration(water, Stock.NITRATE)).isCloseTo(0.8, within(1e-12));
        run.until(WEEK + TEN_O_CLOCK + 1);
        assertThat(run.now().concentration(water, Stock.NITRATE)).isCloseTo(0.8, within(1e-12));
        run.until(2 * WEEK + TEN_O_CLOCK + 1);
        assertThat(run.now().concentration(water, Stock.NITRATE)).isCloseTo(0.8, within(1e-12));
    }

    /** Nobody empties a tank: nine tenths are the most that goes at once. */
    @Test
    void noChangeTakesMoreThanNineTenths() {
        WaterChanges changes = weekly(Map.of());
        Run run = run(filled().dissolve(water, Stock.NITRATE, 1));
        run.set(changes.factor(), 100);
        run.until(DAY);
        assertThat(run.now().concentration(water, Stock.NITRATE)).isCloseTo(0.1, within(1e-12));
    }

    /** W_n = W_0 (1 - s)^n of all three elements, and what is missing lies in the world's waste. */
    @Test
    void siphoningTakesItsShareOfTheGroundEachTime() {
        weekly(Map.of(), 0.3);
        State state = filled().set(ground, Stock.ORGANIC_CARBON, 2).set(ground, Stock.ORGANIC_NITROGEN, 0.2);
        Run run = run(state);
        run.until(4 * WEEK + 12 * 3600);
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN)).isCloseTo(0.2 * Math.pow(0.7, 5), withinPercentage(1e-9));
        assertThat(state.get(ground, Stock.ORGANIC_CARBON)).isCloseTo(2 * Math.pow(0.7, 5), withinPercentage(1e-9));
        assertThat(state.get(world.waste(), Stock.ORGANIC_NITROGEN))
                .isCloseTo(0.2 * (1 - Math.pow(0.7, 5)), withinPercentage(1e-9));
    }

    @Test
    void twiceTheSiphoningTakesTwiceAsMuchAndAChangeThatFallsOutNone() {
        WaterChanges changes = weekly(Map.of(), 0.3);
        State state = filled().set(ground, Stock.ORGANIC_NITROGEN, 1);
        Run run = run(state);
        run.set(levers.get("siphoning").setting(), 2);
        run.until(DAY);
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN)).isCloseTo(0.4, within(1e-12));
        run.set(changes.factor(), 0);
        run.until(WEEK + DAY);
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN)).isCloseTo(0.4, within(1e-12));
    }
}
