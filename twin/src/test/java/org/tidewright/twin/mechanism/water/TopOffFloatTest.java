package org.tidewright.twin.mechanism.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A float averaged over its clicks beside one that clicks, and what follows when it sticks. */
class TopOffFloatTest {
    private static final double DAY = 86_400;
    private static final double LITRE = 1e-3;
    private static final double AREA = 0.1;
    private static final double FULL = 20 * LITRE;
    private static final double PUMP = 60 * LITRE / 3600;
    private static final double EVAPORATION = 4 * LITRE / DAY;
    private static final double PLAY = 0.8 * LITRE;
    private static final double RESERVOIR = 200 * LITRE;

    private final TestVessel section = new TestVessel(AREA, FULL / AREA);
    private final Body reservoir = section.builder().pool("reservoir", Stock.WATER, Stock.HEAT);

    private State filled(Network network) {
        return section.filled(network, 25, 0.2).set(reservoir, Stock.WATER, RESERVOIR);
    }

    private void evaporation() {
        Body water = section.water();
        section.with((now, out) -> out.move(Stock.WATER, water, section.world(), EVAPORATION));
    }

    /**
     * 4 L a day over 40 days are 160 L, whichever way; at the end the two may differ by one travel of the float, 0.8
     * L.
     */
    @Test
    void itPumpsInFortyDaysWhatAClickingFloatPumps() {
        evaporation();
        Setting state = section.builder().setting("top-off", 1);
        section.with(new TopOffFloat(reservoir, section.water(), FULL, PLAY, PUMP, state, null));
        Network network = section.builder().build();
        State averaged = filled(network);
        TestVessel.run(network, averaged).until(40 * DAY);
        double pumped = RESERVOIR - averaged.get(reservoir, Stock.WATER);

        TopOffFloatTest other = new TopOffFloatTest();
        assertThat(pumped)
                .isCloseTo(other.pumpedByClicks(), withinPercentage(1))
                .isCloseTo(0.160, within(PLAY));
        assertThat(averaged.get(section.water(), Stock.WATER)).isBetween(FULL - PLAY, FULL);
    }

    private double pumpedByClicks() {
        evaporation();
        Setting powered = section.builder().setting("powered", 1);
        Setting calls = section.builder().setting("calls", 0);
        section.with(new TopOffPump(reservoir, section.water(), PUMP, FULL / AREA, powered, calls));
        Network network = section.builder().build();
        State state = filled(network);
        Run run = TestVessel.run(network, state);
        run.until(40 * DAY);
        assertThat(run.log().size()).as("clicks").isGreaterThan(300);
        return RESERVOIR - state.get(reservoir, Stock.WATER);
    }

    /**
     * The share s = (V_full - V)/V_a, V_a what is pumped in half an hour, 30 L, settles at E/Q: V = V_full - V_a E/Q,
     * which is E over half an hour, 0.083 L.
     */
    @Test
    void itHoldsTheLevelToWhatEvaporatesInHalfAnHour() {
        evaporation();
        Setting state = section.builder().setting("top-off", 1);
        section.with(new TopOffFloat(reservoir, section.water(), FULL, PLAY, PUMP, state, null));
        Network network = section.builder().build();
        State end = filled(network);
        TestVessel.run(network, end).until(10 * DAY);
        assertThat(FULL - end.get(section.water(), Stock.WATER)).isCloseTo(EVAPORATION * 1800, within(1e-9));
    }

    /** 200 L at 60 L/h: 3 h 20 min, save for the last fifth of a litre, which comes slower and slower. */
    @Test
    void stuckOnItEmptiesTheReservoirAtTheFlowOfItsPump() {
        Setting state = section.builder().setting("top-off", 2);
        section.with(new TopOffFloat(reservoir, section.water(), FULL, PLAY, PUMP, state, null));
        Network network = section.builder().build();
        State end = filled(network);
        Run run = TestVessel.run(network, end);
        run.until(3 * 3600);
        assertThat(end.get(reservoir, Stock.WATER)).isCloseTo(20 * LITRE, within(1e-9));
        double lastFifth = (RESERVOIR - 0.2 * LITRE) / PUMP;
        run.until(lastFifth + 5 * 0.2 * LITRE / PUMP);
        assertThat(end.get(reservoir, Stock.WATER)).isCloseTo(0.2 * LITRE * Math.exp(-5), within(1e-9));
    }

    @Test
    void stuckOffItLeavesTheLossToTheSection() {
        evaporation();
        Setting state = section.builder().setting("top-off", 0);
        section.with(new TopOffFloat(reservoir, section.water(), FULL, PLAY, PUMP, state, null));
        Network network = section.builder().build();
        State end = filled(network);
        TestVessel.run(network, end).until(3 * DAY);
        assertThat(end.get(section.water(), Stock.WATER)).isCloseTo(8 * LITRE, within(1e-12));
        assertThat(end.get(reservoir, Stock.WATER)).isEqualTo(RESERVOIR);
    }

    @Test
    void aPumpWithoutMainsPoursNothing() {
        Setting state = section.builder().setting("top-off", 1);
        Setting mains = section.builder().setting("power", 1);
        evaporation();
        section.with(new TopOffFloat(reservoir, section.water(), FULL, PLAY, PUMP, state, mains));
        Network network = section.builder().build();
        State end = filled(network);
        Run run = TestVessel.run(network, end).set(mains, 0);
        run.until(2 * DAY);
        assertThat(end.get(reservoir, Stock.WATER)).isEqualTo(RESERVOIR);
        run.set(mains, 1).until(3 * DAY);
        assertThat(end.get(reservoir, Stock.WATER)).isLessThan(RESERVOIR);
    }
}
