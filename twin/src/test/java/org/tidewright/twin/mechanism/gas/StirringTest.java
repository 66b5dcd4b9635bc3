package org.tidewright.twin.mechanism.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A surface that several pumps move, as each of them stops. */
class StirringTest {
    private static final double STILL = 1e-6;
    private static final double MOVED = 32e-6;
    private static final double STEP = 60;

    private final TestVessel vessel = new TestVessel(0.5, 0.4);
    private final Setting strong = vessel.builder().setting("strong", 1);
    private final Setting weak = vessel.builder().setting("weak", 1);

    private Run run() {
        Stirring stirring =
                new Stirring(List.of(new Stirrer(fedBy(strong), 15, null), new Stirrer(fedBy(weak), 1, null)));
        vessel.with(new SurfaceGases(
                vessel.water(),
                vessel.world(),
                AirOver.ledIn(vessel.world(), vessel.builder().setting("carbon dioxide", 420e-6)),
                0.5,
                SchmidtNumber.ofOxygen(25),
                vessel.exactly("still", "m/s", STILL),
                vessel.exactly("moved", "m/s", MOVED),
                null,
                stirring));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25, 0.05)
                .dissolve(vessel.water(), Stock.ALKALINITY, 2.4)
                .dissolve(vessel.water(), Stock.INORGANIC_CARBON, 2.1);
        return TestVessel.run(network, state);
    }

    private Supply fedBy(Setting switched) {
        return new Supply(List.of(new Supply.Source(vessel.world(), switched, null)), null);
    }

    /** Transfer velocity seen over a minute, k = -h/t ln of what is missing. */
    private double velocity(Run run) {
        double rest = OxygenSolubility.perVolume(25, 35);
        double before = rest - run.now().oxygen(vessel.water());
        run.until(run.time() + STEP);
        return 0.4 / STEP * Math.log(before / (rest - run.now().oxygen(vessel.water())));
    }

    /** A sixteenth of the power leaves half the velocity: k ~ P^(1/4), Lamont and Scott 1970. */
    @Test
    void aSixteenthOfThePowerLeavesHalfTheVelocity() {
        Run run = run();
        assertThat(velocity(run)).isCloseTo(MOVED, within(1e-5 * MOVED));
        run.set(strong, 0);
        assertThat(velocity(run)).isCloseTo(MOVED / 2, within(1e-5 * MOVED));
        run.set(weak, 0);
        assertThat(velocity(run)).isCloseTo(STILL, within(1e-5 * MOVED));
    }

    /** By hand: (15/16)^(1/4) = 0.98399. */
    @Test
    void withoutTheWeakOneHardlyAnythingIsLost() {
        Run run = run();
        run.set(weak, 0);
        assertThat(velocity(run)).isCloseTo(0.98399 * MOVED, within(1e-5 * MOVED));
    }
}
