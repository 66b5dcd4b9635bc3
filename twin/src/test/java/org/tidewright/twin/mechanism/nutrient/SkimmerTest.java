package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A skimmer on a cubic metre nobody feeds, which loses its organic matter exponentially; to the 1e-9 of the run. */
class SkimmerTest {
    private static final double DAY = 86_400;
    private static final double MOST = 0.1 / DAY;
    private static final double CLOSE = 1e-4; // percent

    private final TestVessel tank = new TestVessel(1, 1);
    private final Setting strength = tank.builder().setting("strength", 1);

    private Network network = new TestVessel(1, 1).builder().build();

    /** With a flow of so many times the water a day, a share of 0.3 in one pass and of 0.25 that foam can take. */
    private State skimmed(double turnovers, double skimmate) {
        tank.with(new Skimmer(
                "skimmer",
                tank.water(),
                tank.world(),
                strength,
                turnovers / DAY,
                skimmate,
                tank.exactly("pass", "1", 0.3),
                tank.exactly("foam", "1", 0.25),
                tank.exactly("most", "1/s", MOST),
                1,
                tank.mains()));
        network = tank.builder().build();
        return tank.filled(network, 25, 0.2)
                .dissolve(tank.water(), Stock.ORGANIC_CARBON, 0.1)
                .dissolve(tank.water(), Stock.ORGANIC_NITROGEN, 0.01)
                .dissolve(tank.water(), Stock.ORGANIC_PHOSPHORUS, 0.001);
    }

    private double left(State state, Stock stock, double first) {
        return state.get(tank.water(), stock) / first;
    }

    /** k = 1/(V/(F e s) + 1/k_most): ten turnovers a day take 0.75 a day at most, the matter 0.1: 0.075/0.85. */
    @Test
    void allThreeElementsFallExponentiallyByTheTwoResistancesInARow() {
        State state = skimmed(10, 0);
        Run run = TestVessel.run(network, state);
        for (int day : new int[] {1, 10, 60}) {
            run.until(day * DAY);
            double closed = Math.exp(-0.075 / 0.85 * day);
            assertThat(left(state, Stock.ORGANIC_CARBON, 0.1))
                    .as("day %d", day)
                    .isCloseTo(closed, withinPercentage(CLOSE));
            assertThat(left(state, Stock.ORGANIC_NITROGEN, 0.01)).isCloseTo(closed, withinPercentage(CLOSE));
            assertThat(left(state, Stock.ORGANIC_PHOSPHORUS, 0.001)).isCloseTo(closed, withinPercentage(CLOSE));
        }
    }

    @Test
    void withPlentyOfFlowTheMatterAloneSetsThePace() {
        State state = skimmed(1e6, 0);
        TestVessel.run(network, state).until(10 * DAY);
        assertThat(left(state, Stock.ORGANIC_CARBON, 0.1)).isCloseTo(Math.exp(-1), withinPercentage(1e-3));
    }

    @Test
    void withLittleFlowTheFlowAlone() {
        State state = skimmed(0.01, 0);
        TestVessel.run(network, state).until(100 * DAY);
        assertThat(left(state, Stock.ORGANIC_CARBON, 0.1)).isCloseTo(Math.exp(-0.075), withinPercentage(0.1));
    }

    @Test
    void halfTheStrengthTakesHalfOfIt() {
        State state = skimmed(10, 0);
        Run run = TestVessel.run(network, state);
        run.set(strength, 0.5);
        run.until(20 * DAY);
        assertThat(left(state, Stock.ORGANIC_CARBON, 0.1))
                .isCloseTo(Math.exp(-0.075 / 0.85 * 10), withinPercentage(CLOSE));
    }

    @Test
    void skimmateTakesWaterAndItsSaltAlong() {
        State state = skimmed(10, 1e-3 / DAY);
        double salt = state.get(tank.water(), Stock.SALT);
        TestVessel.run(network, state).until(100 * DAY);
        assertThat(state.get(tank.water(), Stock.WATER)).isCloseTo(0.9, withinPercentage(CLOSE));
        assertThat(state.get(tank.water(), Stock.SALT)).isCloseTo(0.9 * salt, withinPercentage(CLOSE));
    }
}
