package org.tidewright.twin.mechanism.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.heat.LampHeat;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A lamp of 100 W over half a cubic metre: what it leaves in a day is the area under its trapezium. */
class LampTest {
    private static final double HOUR = 3600;
    private static final Accuracy MIDDLING = new Accuracy(1e-6, 1e-7, 1e-3, 1e-4, 7200);

    private final TestVessel vessel = new TestVessel(1, 0.5);

    private Network lit(double starts, double hours, double ramp) {
        Lamp lamp = new Lamp(
                "lamp",
                setting("starts", starts * HOUR),
                setting("hours", hours * HOUR),
                setting("strength", 1),
                ramp * HOUR,
                Drawn.exactly(200e-6),
                vessel.mains());
        vessel.builder().add(lamp.corners());
        vessel.with(new LampHeat(lamp, vessel.water(), vessel.world(), 100, 1));
        return vessel.builder().build();
    }

    private Setting setting(String name, double value) {
        return vessel.builder().setting(name, value);
    }

    private double left(Network network, Accuracy accuracy) {
        State state = vessel.filled(network, 25, 0.2);
        double before = state.get(vessel.water(), Stock.HEAT);
        new Run(network, network.usualParameters(), state, accuracy).until(3 * 24 * HOUR);
        return (state.get(vessel.water(), Stock.HEAT) - before) / 3;
    }

    /** (L - r) P; a ramp of more than half of the hours counts as half. Rounding of 5e7 J leaves 1e-6 per cent. */
    @ParameterizedTest
    @CsvSource({"11, 9, 1, 8", "20, 12, 3, 9", "23.5, 10, 0.4, 9.6", "6, 8, 6, 4", "9, 10, 0, 10"})
    void aCloseRunFindsADaysLightToRounding(double starts, double hours, double ramp, double full) {
        assertThat(left(lit(starts, hours, ramp), MIDDLING)).isCloseTo(full * HOUR * 100, withinPercentage(1e-6));
    }
}
