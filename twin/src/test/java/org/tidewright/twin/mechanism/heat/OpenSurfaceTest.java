package org.tidewright.twin.mechanism.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.gas.Stirrer;
import org.tidewright.twin.mechanism.gas.Stirring;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** An open surface over air of 23 °C and 50 %, as worked in the examples of heat: 2.832 and 3.965 kg/(m² d). */
class OpenSurfaceTest {
    private static final double AREA = 0.72;
    private static final double ROOM = 23;

    private final TestVessel vessel = new TestVessel(AREA, 0.5);
    private final Body room = vessel.builder().body("room", Shape.none(), 0, 1e12);
    private final Setting power = vessel.builder().setting("power", 1);

    private final AirAbove air = new AirAbove() {
        @Override
        public Body body() {
            return vessel.world();
        }

        @Override
        public double vapourPressure(View now) {
            return MoistAir.vapourPressure(ROOM, 0.5);
        }

        @Override
        public double speed(View now) {
            return 0;
        }
    };

    /** Litres that a square metre gives off in a minute, told as kg a day; fresh water of 997.05 kg/m³. */
    private double evaporated(Run run) {
        double before = run.now().volume(vessel.water());
        run.until(run.time() + 60);
        return (before - run.now().volume(vessel.water())) * 997.05 / AREA * 1440;
    }

    /** Still surfaces 0.5, moved ones 0.7: the worked examples E5.4 and E5.5 of a 25.5 °C tank, 0.1 %. */
    @Test
    void itEvaporatesLessOnceNothingStirsIt() {
        Supply supply = new Supply(List.of(new Supply.Source(vessel.world(), power, null)), null);
        vessel.with(new OpenSurface(
                vessel.water(),
                room,
                air,
                AREA,
                vessel.exactly("still", "1", 0.5),
                vessel.exactly("moved", "1", 0.7),
                new Stirring(List.of(new Stirrer(supply, 10, null)))));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25.5, 0.2).set(room, Stock.HEAT, 1e12 * ROOM);
        Run run = TestVessel.run(network, state);
        assertThat(evaporated(run)).isCloseTo(3.965, withinPercentage(0.1));
        run.set(power, 0);
        assertThat(evaporated(run)).isCloseTo(2.832, withinPercentage(0.1));
    }
}
