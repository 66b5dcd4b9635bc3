package org.tidewright.twin.mechanism.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.water.TopOffFloat;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Evaporation pays for alkalinity where the top-off is limewater. */
class LimewaterTopOffTest {
    private static final double DAY = 86_400;
    private static final double EVAPORATION = 3.0e-3 / DAY;

    /** 200 L, 3.0 L/day, 41 meq/L: 123 meq/day, 0.615 meq/L, 1.72 dKH a day (2.8038 to the meq/L); a worked example. */
    @Test
    void alkalinityRisesByEvaporationTimesStrength() {
        TestVessel tank = new TestVessel(0.4, 0.5);
        Body water = tank.water();
        Body reservoir = tank.builder().pool("reservoir", Stock.WATER, Stock.HEAT, Stock.ALKALINITY, Stock.CALCIUM);
        Setting works = tank.builder().setting("top-off", 1);
        tank.with(new TopOffFloat(reservoir, water, 0.2, 0.5e-3, 5e-3 / 3600, works, null))
                .with((now, out) -> out.move(Stock.WATER, water, tank.world(), EVAPORATION));
        Network network = tank.builder().build();
        State state = tank.filled(network, 25, 0.2).dissolve(water, Stock.ALKALINITY, 2.5);
        state.set(reservoir, Stock.WATER, 0.1)
                .set(reservoir, Stock.ALKALINITY, 0.1 * 41)
                .set(reservoir, Stock.CALCIUM, 0.1 * 20.5);
        Run run = TestVessel.run(network, state);
        run.until(5 * DAY);
        double alkalinity = run.now().concentration(water, Stock.ALKALINITY);
        double calcium = run.now().concentration(water, Stock.CALCIUM);
        double salinity = run.now().salinity(water);
        run.until(6 * DAY);
        double rise = run.now().concentration(water, Stock.ALKALINITY) - alkalinity;
        assertThat(rise * 0.2).isCloseTo(0.123, within(0.0005));
        assertThat(rise * 2.8038).isCloseTo(1.72, within(0.005));
        assertThat(run.now().concentration(water, Stock.CALCIUM) - calcium).isCloseTo(rise / 2, within(1e-9));
        assertThat(run.now().salinity(water)).isCloseTo(salinity, within(1e-6));
    }
}
