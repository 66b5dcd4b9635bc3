package org.tidewright.twin.mechanism.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;

/** A vessel given more than it holds. */
class OverRimTest {
    private static final double DAY = 86_400;

    /** 10 L above the rim fall as e^(-t/2 min): 10 e^(-3) = 0.498 L are left after six minutes. */
    @Test
    void theSurplusIsOnTheFloorWithinMinutes() {
        TestVessel vessel = new TestVessel(0.5, 0.4);
        vessel.with(new OverRim(vessel.water(), vessel.world(), 0.19));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25, 0.2);
        TestVessel.run(network, state).until(360);
        assertThat(state.get(vessel.water(), Stock.WATER) - 0.19).isCloseTo(0.01 * Math.exp(-3), within(1e-7));
        assertThat(state.get(vessel.world(), Stock.WATER)).isCloseTo(0.01 * (1 - Math.exp(-3)), within(1e-7));
    }

    /** A float stuck on over a reservoir that somebody keeps filling: sooner or later the sump cannot hold it. */
    @Test
    void aTopOffThatNeverStopsFloodsTheFloorAndIsNoted() {
        SystemTwin twin = SystemTwin.of(TestPlans.example("harbour-room"));
        double[] parameters = twin.network().usualParameters();
        State state = twin.start(parameters);
        Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR);
        run.set(twin.levers().get("top-off").setting(), 2).until(40 * DAY);
        assertThat(run.log()).anyMatch(happened -> OverRim.isEvent(happened.event()));
        double spilt = state.get(twin.network().body("floor"), Stock.WATER);
        assertThat(spilt).isGreaterThan(0.01);
        assertThat(run.now().volume(twin.network().body("sump"))).isLessThan(0.165);
    }
}
