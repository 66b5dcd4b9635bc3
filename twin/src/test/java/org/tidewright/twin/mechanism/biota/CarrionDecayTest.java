package org.tidewright.twin.mechanism.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** A carcass whose half-time is known, to the 1e-9 of the run. */
class CarrionDecayTest {
    private static final double HALF_TIME = 1.7 * 86_400;

    private final TestVessel tank = new TestVessel(1, 1);
    private final Body carrion =
            tank.builder().pool("carrion", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private State after(double seconds, double temperature) {
        tank.with(new CarrionDecay(carrion, tank.water(), tank.exactly("half-time", "s", HALF_TIME)));
        Network network = tank.builder().build();
        State state = tank.filled(network, temperature, 0.2)
                .set(carrion, Stock.ORGANIC_CARBON, 1)
                .set(carrion, Stock.ORGANIC_NITROGEN, 0.2)
                .set(carrion, Stock.ORGANIC_PHOSPHORUS, 0.01);
        TestVessel.run(network, state).until(seconds);
        return state;
    }

    @Test
    void afterItsHalfTimeHalfOfEveryElementIsInTheWater() {
        State state = after(HALF_TIME, 25);
        assertThat(state.get(carrion, Stock.ORGANIC_CARBON)).isCloseTo(0.5, withinPercentage(1e-4));
        assertThat(state.get(tank.water(), Stock.ORGANIC_CARBON)).isCloseTo(0.5, withinPercentage(1e-4));
        assertThat(state.get(tank.water(), Stock.ORGANIC_NITROGEN)).isCloseTo(0.1, withinPercentage(1e-4));
        assertThat(state.get(tank.water(), Stock.ORGANIC_PHOSPHORUS)).isCloseTo(0.005, withinPercentage(1e-4));
    }

    /** Three times as slow for ten kelvin less, by which trout of 8.6 °C half gone in ten days meet it. */
    @Test
    void tenKelvinColderItTakesThreeTimesAsLong() {
        assertThat(after(3 * HALF_TIME, 15).get(carrion, Stock.ORGANIC_CARBON)).isCloseTo(0.5, withinPercentage(1e-4));
    }
}
