package org.tidewright.twin.mechanism.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.heat.WallFit;
import org.tidewright.twin.mechanism.air.Weather;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Newton's law of cooling in closed form, two bodies and one conductance. */
class ConductanceTest {
    private static final double HOUR = 3600;
    private static final double PART_IN_A_MILLION = 1e-4; // per cent

    /** A wall whose transmittance is 4 W/(m² K) whatever the temperatures. */
    private static final WallFit FOUR = new WallFit(4, 0, 0);

    private final TestVessel vessel = new TestVessel(0.4, 0.5);
    private final double tank = 0.2 * TestVessel.DENSITY * TestVessel.SPECIFIC_HEAT;

    private Body room(double capacity) {
        return vessel.builder().body("room", Shape.none(), 0, capacity);
    }

    private Run run(Body room, double roomTemperature) {
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 27, 0.2);
        state.set(room, Stock.HEAT, room.solidHeatCapacity() * roomTemperature);
        return TestVessel.run(network, state);
    }

    /** U A = 1.1 (4 · 3 m · 0.5 m + 0.6) = 7.26 W/K; T - T_room = 7 e^(-t (1/C1 + 1/C2) UA), and the mean over both is kept. */
    @Test
    void waterAndRoomComeToTheSameTemperatureAsTheClosedFormSays() {
        double capacity = 3e6;
        Body room = room(capacity);
        vessel.with(new WallLoss(vessel.water(), room, FOUR, 3, 0.6, 0.6, vessel.exactly("factor", "1", 1.1)));
        Run run = run(room, 20);
        double rate = 7.26 * (1 / tank + 1 / capacity);
        double mean = (27 * tank + 20 * capacity) / (tank + capacity);
        for (double hours : new double[] {1, 6, 24, 96}) {
            run.until(hours * HOUR);
            double difference = 7 * Math.exp(-rate * hours * HOUR);
            assertThat(run.now().temperature(vessel.water()) - run.now().temperature(room))
                    .isCloseTo(difference, withinPercentage(PART_IN_A_MILLION));
            assertThat(run.now().temperature(vessel.water()))
                    .isCloseTo(mean + difference * capacity / (tank + capacity), within(1e-7));
        }
    }

    /** The unheated room: T = T_out + (T_0 - T_out) e^(-H t / C), 65 W/K and 3.9 MJ/K: 16.7 h. */
    @Test
    void anUnheatedRoomCoolsToTheWeatherAsTheClosedFormSays() {
        Body room = room(3.9e6);
        vessel.with(
                new RoomEnvelope(room, vessel.world(), Weather.constant(-5), vessel.exactly("heat loss", "W/K", 65)));
        Run run = run(room, 20);
        run.until(3.9e6 / 65);
        assertThat(run.now().temperature(room)).isCloseTo(-5 + 25 / Math.E, within(1e-6));
    }

    /**
     * A proportional controller of strength s against a loss H: T = (s T_set + H T_out) / (s + H), off by H/s of the
     * rest.
     */
    @Test
    void theHouseHoldsTheRoomWithinATenthOfAKelvin() {
        double capacity = 3.9e6;
        double strength = capacity / 1800;
        Body room = room(capacity);
        Setting held = vessel.builder().setting("room temperature", 21);
        Setting runs = vessel.builder().setting("room heating", 1);
        vessel.with(new RoomEnvelope(
                        room, vessel.world(), Weather.constant(19), vessel.exactly("heat loss", "W/K", 65)))
                .with(new HouseHeating(vessel.world(), room, held, runs, strength, 1e6));
        Run run = run(room, 15);
        run.until(24 * HOUR);
        double closed = (strength * 21 + 65 * 19) / (strength + 65);
        assertThat(run.now().temperature(room)).isCloseTo(closed, within(1e-6)).isBetween(20.9, 21.0);
        run.set(runs, 0);
        run.until(34 * HOUR);
        assertThat(run.now().temperature(room))
                .isCloseTo(19 + (closed - 19) * Math.exp(-65 * 10 * HOUR / capacity), within(1e-6));
    }

    /** Half the water wets half the panes: 1.1 (4 · 3 m · 0.25 m + 0.6) = 3.96 W/K; above the rim it wets no more. */
    @Test
    void heatLeavesThroughThePanesAsFarAsTheWaterStands() {
        Body room = room(1e15);
        vessel.with(new WallLoss(vessel.water(), room, FOUR, 3, 0.4, 0.6, vessel.exactly("factor", "1", 1.1)));
        Network network = vessel.builder().build();
        assertThat(coolingOf(network, room, 0.1)).isCloseTo(3.96 * 7, withinPercentage(1e-3));
        assertThat(coolingOf(network, room, 0.2)).isCloseTo(1.1 * (4 * 3 * 0.4 + 0.6) * 7, withinPercentage(1e-3));
    }

    private double coolingOf(Network network, Body room, double volume) {
        State state = vessel.filled(network, 27, 0.2).fill(vessel.water(), volume, 27, 35, 0.2);
        state.set(room, Stock.HEAT, room.solidHeatCapacity() * 20);
        double before = state.get(vessel.water(), Stock.HEAT);
        TestVessel.run(network, state).until(1);
        return before - state.get(vessel.water(), Stock.HEAT);
    }

    /** 600 W at most into 3.9 MJ/K that lose nothing: 1 K in 1.806 h, and as fast down. */
    @Test
    void aHouseThatGivesItsMostWarmsOrCoolsTheRoomEvenly() {
        double capacity = 3.9e6;
        Body room = room(capacity);
        Setting held = vessel.builder().setting("room temperature", 30);
        Setting runs = vessel.builder().setting("room heating", 1);
        vessel.with(new HouseHeating(vessel.world(), room, held, runs, capacity / 1800, 600));
        Run run = run(room, 15);
        run.until(5 * HOUR);
        assertThat(run.now().temperature(room)).isCloseTo(15 + 600 * 5 * HOUR / capacity, within(1e-9));
        run.set(held, 0);
        run.until(8 * HOUR);
        assertThat(run.now().temperature(room)).isCloseTo(15 + 600 * 2 * HOUR / capacity, within(1e-9));
    }
}
