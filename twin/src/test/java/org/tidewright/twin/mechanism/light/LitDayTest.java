package org.tidewright.twin.mechanism.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Drawn;

class LitDayTest {
    private final TestVessel tank = new TestVessel(1, 1);

    private Lamp lamp(double hours, double light) {
        return new Lamp(
                "lamp",
                tank.builder().setting("starts", 8 * 3600),
                tank.builder().setting("hours", hours * 3600),
                tank.builder().setting("strength", 1),
                0,
                Drawn.exactly(light),
                tank.mains());
    }

    /** A lamp that is fully on for nine hours: 9/24 tanh(I/I_k), at every I_k of the table and between. */
    @Test
    void aLampOfNineHoursGivesNineHoursOfTheHyperbolicTangent() {
        LitDay day = new LitDay(new Lamps(List.of(lamp(9, 110e-6))), 20e-6, 1200e-6);
        for (double saturation = 20e-6; saturation < 1200e-6; saturation *= 1.07) {
            assertThat(day.share(saturation)).isCloseTo(9.0 / 24 * Math.tanh(110e-6 / saturation), within(1e-6));
        }
    }

    @Test
    void withoutLampsThereIsNoDay() {
        assertThat(new LitDay(new Lamps(List.of()), 20e-6, 1200e-6).share(150e-6))
                .isZero();
    }
}
