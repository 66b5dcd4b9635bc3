package org.tidewright.twin.mechanism.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A thermostat averaged over its clicks beside one that clicks. */
class HeldHeaterTest {
    private static final double DAY = 86_400;
    private static final double ROOM = 18;
    private static final double SETPOINT = 25.5;
    private static final double BAND = 0.3;
    private static final double POWER = 100;

    /** What two days of a heater come to, its heat less what the water has stored of it. */
    private record TwoDays(double heat, double mean, double end, int clicks) {}

    /** 100 L that lose 8 W/K to a room of 18 °C, from the setpoint; the first day is not counted. */
    private static TwoDays twoDays(double conductance, BiFunction<TestVessel, Supply, Mechanism> heater) {
        TestVessel vessel = new TestVessel(0.25, 0.4);
        Body water = vessel.water();
        vessel.with((now, out) -> out.heat(water, vessel.world(), conductance * (now.temperature(water) - ROOM)));
        Body socket = vessel.builder().pool("socket", Stock.HEAT);
        Supply supply =
                new Supply(List.of(new Supply.Source(socket, vessel.builder().setting("power", 1), null)), null);
        vessel.with(heater.apply(vessel, supply));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, SETPOINT, 0.2);
        Run run = TestVessel.run(network, state);
        run.until(DAY);
        double before = state.get(socket, Stock.HEAT) + state.get(water, Stock.HEAT);
        int clicks = run.log().size();
        double[] times = new double[5760];
        double[] sum = new double[1];
        for (int i = 0; i < times.length; i++) {
            times[i] = DAY + (i + 0.5) * 30;
        }
        run.until(3 * DAY, times, (sample, now) -> sum[0] += now.temperature(water));
        return new TwoDays(
                before - state.get(socket, Stock.HEAT) - state.get(water, Stock.HEAT),
                sum[0] / times.length,
                run.now().temperature(water),
                run.log().size() - clicks);
    }

    private static TwoDays held(double conductance) {
        return twoDays(
                conductance,
                (vessel, supply) ->
                        new HeldHeater("heater", vessel.water(), vessel.world(), POWER, SETPOINT, BAND, supply));
    }

    /** The same heater with its clicks. */
    private record Clicking(Body water, Body room, Supply supply, Setting heating) implements Mechanism {
        @Override
        public void act(View now, Transfers out) {
            if (now.value(heating) > 0) {
                supply.draw(now, out, POWER, 1, water, room);
            }
        }

        @Override
        public List<Watch> watches() {
            return List.of(
                    new Watch(
                            "on",
                            Watch.Crossing.FALLING,
                            now -> now.value(heating) > 0 ? 1 : now.temperature(water) - SETPOINT + BAND / 2,
                            (now, switches) -> switches.set(heating, 1)),
                    new Watch(
                            "off",
                            Watch.Crossing.RISING,
                            now -> now.value(heating) > 0 ? now.temperature(water) - SETPOINT - BAND / 2 : -1,
                            (now, switches) -> switches.set(heating, 0)));
        }
    }

    private static TwoDays clicking(double conductance) {
        return twoDays(
                conductance,
                (vessel, supply) -> new Clicking(
                        vessel.water(), vessel.world(), supply, vessel.builder().setting("heater calls", 0)));
    }

    @Test
    void twoDaysTakeTheSameHeatWithinOnePerCentAndKeepTheMeanWithinTheBand() {
        for (double conductance : new double[] {5, 8, 9}) {
            TwoDays averaged = held(conductance);
            TwoDays real = clicking(conductance);
            assertThat(real.clicks()).as("it does click").isGreaterThan(20);
            assertThat(averaged.clicks()).isZero();
            assertThat(averaged.heat()).isCloseTo(real.heat(), withinPercentage(1));
            assertThat(averaged.mean()).isCloseTo(real.mean(), within(BAND / 2));
            assertThat(averaged.mean()).isBetween(SETPOINT - BAND / 2, SETPOINT + BAND / 2);
        }
    }

    /** P s = U A (T - T_room) with s = (T_set + d/2 - T)/d gives T = (P (T_set + d/2)/d + UA T_room) / (P/d + UA). */
    @Test
    void itSettlesWhereItsShareMeetsTheLoss() {
        double slope = POWER / BAND;
        double settled = (slope * (SETPOINT + BAND / 2) + 8 * ROOM) / (slope + 8);
        TwoDays averaged = held(8);
        assertThat(averaged.end()).isCloseTo(settled, within(1e-6));
        assertThat(averaged.heat()).isCloseTo(8 * (settled - ROOM) * 2 * DAY, withinPercentage(1e-4));
    }

    /** 20 W/K ask for 150 W: it runs without end and the water settles at 18 + 100/20 = 23 °C. */
    @Test
    void oneThatIsTooWeakRunsAllTheTime() {
        TwoDays averaged = held(20);
        // On the second day it still cools by a few hundredths of a kelvin.
        assertThat(averaged.heat()).isCloseTo(POWER * 2 * DAY, withinPercentage(0.1));
        assertThat(averaged.end()).isCloseTo(23, within(0.001));
    }
}
