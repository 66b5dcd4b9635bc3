package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A filter sock in water nobody feeds. */
class StrainerTest {
    private static final double DAY = 86_400;
    private static final double CLOSE = 1e-4; // percent

    private final TestVessel tank = new TestVessel(1, 1);
    private final Setting strength = tank.builder().setting("strength", 1);
    private final Body held =
            tank.builder().pool("held", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    /** Three turnovers a day, 0.6 of the particles held back, a third of the waste particles. */
    private TestVessel strained() {
        return tank.with(new Strainer(
                "sock",
                tank.water(),
                held,
                strength,
                3 / DAY,
                Drawn.exactly(0.6),
                tank.exactly("caught", "1", 1.0 / 3),
                1,
                tank.mains()));
    }

    private State dirty(Network network) {
        return tank.filled(network, 25, 0.2)
                .dissolve(tank.water(), Stock.ORGANIC_CARBON, 0.1)
                .dissolve(tank.water(), Stock.ORGANIC_NITROGEN, 0.01)
                .dissolve(tank.water(), Stock.ORGANIC_PHOSPHORUS, 0.001);
    }

    /** 0.6 a day by flow and 0.2/2 = 0.1 a day by what the matter allows, in a row: 0.06/0.7. */
    @Test
    void whatIsAfloatFallsExponentiallyAndLiesInTheSock() {
        Network network = strained().builder().build();
        State state = dirty(network);
        Run run = TestVessel.run(network, state);
        for (int day : new int[] {1, 10, 40}) {
            run.until(day * DAY);
            double left = Math.exp(-0.06 / 0.7 * day);
            assertThat(state.get(tank.water(), Stock.ORGANIC_CARBON))
                    .as("day %d", day)
                    .isCloseTo(0.1 * left, withinPercentage(CLOSE));
            assertThat(state.get(tank.water(), Stock.ORGANIC_PHOSPHORUS))
                    .isCloseTo(0.001 * left, withinPercentage(CLOSE));
            assertThat(state.get(held, Stock.ORGANIC_NITROGEN)).isCloseTo(0.01 * (1 - left), withinPercentage(CLOSE));
        }
    }

    @Test
    void aSockTakenOutHoldsNothing() {
        Network network = strained().builder().build();
        State state = dirty(network);
        Run run = TestVessel.run(network, state);
        run.set(strength, 0);
        run.until(5 * DAY);
        assertThat(state.get(held, Stock.ORGANIC_CARBON)).isZero();
        assertThat(state.get(tank.water(), Stock.ORGANIC_CARBON)).isCloseTo(0.1, withinPercentage(CLOSE));
    }

    /**
     * Caught at a steady r and rotting at k it holds r (1 - e^(-k t))/k after t, so that of what was caught a share
     * (1 - e^(-k t))/(k t) goes out with it: 0.82 after two days, 0.21 after three weeks at 0.22 a day.
     */
    @Test
    void aSockChangedLateGivesLittle() {
        assertThat(shareThrownOut(2)).isCloseTo(shareByHand(2), withinPercentage(0.02));
        assertThat(shareThrownOut(21)).isCloseTo(shareByHand(21), withinPercentage(0.02));
        assertThat(shareByHand(2)).isGreaterThan(3.5 * shareByHand(21));
    }

    private static final double ROTS = 0.22;

    private static double shareByHand(int days) {
        return -Math.expm1(-ROTS * days) / (ROTS * days);
    }

    /** Nitrogen of a lake too large to become poorer, where 1 mmol/m³ drifts and no cells grow on what rots. */
    private static double shareThrownOut(int days) {
        TestVessel lake = new TestVessel(1e5, 1);
        Body sock = lake.builder().pool("sock", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
        lake.with(new Strainer(
                "sock",
                lake.water(),
                sock,
                lake.builder().setting("strength", 1),
                1 / DAY,
                Drawn.exactly(0.6),
                lake.exactly("caught", "1", 1.0 / 3),
                1e5,
                lake.mains()));
        double aerobic = 0.2 / 0.21;
        lake.with(new Decay(
                "decay in the sock",
                sock,
                lake.water(),
                lake.world(),
                lake.exactly("rate", "1/s", ROTS / DAY / (0.3 + 0.7 * aerobic)),
                lake.exactly("phosphorus", "1", 2),
                0));
        lake.builder()
                .add(new Routine(
                        "changed",
                        Routine.daily(0.5, days),
                        (now, switches) -> switches.atOnce()
                                .move(
                                        Stock.ORGANIC_NITROGEN,
                                        sock,
                                        lake.world(),
                                        now.stock(sock, Stock.ORGANIC_NITROGEN))));
        Network network = lake.builder().build();
        State state = lake.filled(network, 25, 0.2)
                .dissolve(lake.water(), Stock.ORGANIC_CARBON, 0.01)
                .dissolve(lake.water(), Stock.ORGANIC_NITROGEN, 0.001);
        double before = state.get(lake.world(), Stock.ORGANIC_NITROGEN);
        Run run = TestVessel.run(network, state);
        run.until(days * DAY + 1);
        double thrownOut = state.get(lake.world(), Stock.ORGANIC_NITROGEN) - before;
        // Flow of 0.2 of a cubic metre cleared a day, and hardly any resistance of the matter: 1e5 m³ at 0.1 a day.
        double perDay = 1e-3 / (1 / 0.2 + 1 / (0.1 * 1e5));
        return thrownOut / (perDay * days);
    }
}
