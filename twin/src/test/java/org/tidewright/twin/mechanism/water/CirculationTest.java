package org.tidewright.twin.mechanism.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Display and sump with a return pump, which a run takes implicitly, against closed forms. */
class CirculationTest {
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final double UPPER = 0.4;
    private static final double LOWER = 0.08;

    /** 30 turnovers of the sump an hour. */
    private static final double FLOW = 30 * LOWER / HOUR;

    private final TestVessel display = new TestVessel(0.8, UPPER / 0.8);
    private final Body sump = display.builder().body("sump", Shape.upright(0.3, 0, 0), 0, 0);
    private final Supply pump = display.mains();

    private State filled(Network network) {
        return display.filled(network, 25, 0.2).fill(sump, LOWER, 25, 35, 0.2);
    }

    private static Run run(Network network, State state, double relative) {
        Accuracy accuracy = new Accuracy(relative, relative * 0.1, relative * 10, relative, 7200);
        return new Run(network, network.usualParameters(), state, accuracy);
    }

    /** As much up as down: volumes stay as they are. */
    private Circulation level(Supply supply) {
        return new Circulation(display.water(), sump, FLOW, 0, 0, 0, supply);
    }

    /** The difference falls as e^(-Q t (1/V1 + 1/V2)): a time constant of 100 s. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 1e-6})
    void whatIsPouredIntoTheSumpIsEvenWithinMinutes(double relative) {
        display.with(level(pump));
        Network network = display.builder().build();
        State state = filled(network);
        state.set(sump, Stock.NITRATE, 0.048);
        Run run = run(network, state, relative);
        run.until(300);
        double constant = FLOW * (1 / UPPER + 1 / LOWER);
        double difference = 0.048 / LOWER * Math.exp(-constant * 300);
        double even = 0.048 / (UPPER + LOWER);
        assertThat(state.get(sump, Stock.NITRATE) / LOWER)
                .isCloseTo(even + difference * UPPER / (UPPER + LOWER), withinPercentage(0.5));
        run.until(HOUR);
        assertThat(state.get(sump, Stock.NITRATE) / LOWER).isCloseTo(even, withinPercentage(1e-3));
        assertThat(state.get(display.water(), Stock.NITRATE) / UPPER).isCloseTo(even, withinPercentage(1e-3));
        assertThat(state.get(sump, Stock.NITRATE) + state.get(display.water(), Stock.NITRATE))
                .isCloseTo(0.048, withinPercentage(1e-10));
    }

    /** A source s in the display and a sink in the sump of the same size: C1 - C2 = s / Q once it has settled. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 1e-6})
    void aSourceAboveAndASinkBelowStandApartByTheirRateOverTheFlow(double relative) {
        double source = 1e-6;
        display.with(level(pump))
                .with((now, out) -> out.move(Stock.NITRATE, display.world(), display.water(), source))
                .with((now, out) -> out.move(Stock.NITRATE, sump, display.world(), source));
        Network network = display.builder().build();
        State state = filled(network).dissolve(sump, Stock.NITRATE, 0.2);
        state.dissolve(display.water(), Stock.NITRATE, 0.2);
        run(network, state, relative).until(2 * DAY);
        double above = state.get(display.water(), Stock.NITRATE) / UPPER;
        double below = state.get(sump, Stock.NITRATE) / LOWER;
        assertThat(above - below).isCloseTo(source / FLOW, withinPercentage(0.01));
    }

    /** Water lost above comes over the crest a little less: V - V0 = -E/r; the rest of the loss is the sump's. */
    @Test
    void theCrestHoldsTheDisplayAndTheSumpTakesTheLoss() {
        double lost = 6e-3 / DAY;
        double head = 0.012;
        Circulation circulation = Circulation.overCrest(display.water(), sump, FLOW, UPPER, head, 0.8, 10e-3, pump);
        display.with(circulation).with((now, out) -> out.move(Stock.WATER, display.water(), display.world(), lost));
        Network network = display.builder().build();
        State state = filled(network);
        run(network, state, 1e-6).until(2 * DAY);
        double below = UPPER - state.get(display.water(), Stock.WATER);
        assertThat(below).isCloseTo(lost * 1800, within(2e-6));
        assertThat(below / 0.8).as("metres of level").isLessThan(0.2e-3);
        assertThat(state.get(sump, Stock.WATER)).isCloseTo(LOWER - 2 * 6e-3 + below, within(1e-9));
    }

    /**
     * A sump that nobody tops up falls to the pump's intake within its last litre and stays there; from then on the
     * display loses what evaporates.
     */
    @Test
    void aPumpThatDrawsAirLeavesTheSumpItsLastWater() {
        double lost = 20e-3 / DAY;
        double least = 30e-3;
        Circulation circulation = Circulation.overCrest(display.water(), sump, FLOW, UPPER, 0.012, 0.8, least, pump);
        display.with(circulation).with((now, out) -> out.move(Stock.WATER, display.water(), display.world(), lost));
        Network network = display.builder().build();
        State state = filled(network);
        run(network, state, 1e-6).until(5 * DAY);
        assertThat(state.get(sump, Stock.WATER)).as("to a twentieth of a litre").isCloseTo(least, within(0.05e-3));
        assertThat(state.get(sump, Stock.WATER) + state.get(display.water(), Stock.WATER))
                .isCloseTo(UPPER + LOWER - 5 * 20e-3, within(1e-12));
    }

    @Test
    void aPumpThatStandsStillMovesNothing() {
        display.with(level(TestVessel.noPower()));
        Network network = display.builder().build();
        State state = filled(network);
        state.set(sump, Stock.NITRATE, 0.048);
        run(network, state, 1e-4).until(DAY);
        assertThat(state.get(sump, Stock.NITRATE)).isEqualTo(0.048);
    }
}
