package org.tidewright.twin.mechanism.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A pump of 12 W, slower by night, by the affinity law: power goes with the third power of speed. */
class StreamPumpTest {
    private static final double HOUR = 3600;

    private final TestVessel vessel = new TestVessel(1, 0.5);
    private final Setting factor = vessel.builder().setting("speed", 1);

    private double wattHoursOfADay(double factorNow, WaveProgramme.Part... parts) {
        WaveProgramme programme = new WaveProgramme(factor, List.of(parts));
        vessel.builder().add(programme.jumps("pump"));
        vessel.with(new StreamPump(vessel.water(), vessel.world(), 12, programme, vessel.mains()));
        Network network = vessel.builder().build();
        State state = vessel.filled(network, 25, 0.2);
        double before = state.get(vessel.water(), Stock.HEAT);
        Run run = TestVessel.run(network, state);
        run.set(factor, factorNow);
        run.until(24 * HOUR);
        return (state.get(vessel.water(), Stock.HEAT) - before) / HOUR;
    }

    /** 15 h of 12 W and 9 h, over midnight, of 0.064 times 12 W. */
    @Test
    void aNightAtFourTenthsOfTheSpeedTakesASixteenthOfThePower() {
        assertThat(wattHoursOfADay(1, new WaveProgramme.Part(22 * HOUR, 9 * HOUR, 0.4, 1)))
                .isCloseTo(15 * 12 + 9 * 0.064 * 12, withinPercentage(1e-6));
    }

    @Test
    void pulsesDrawPowerForTheShareOfTimeTheyRun() {
        assertThat(wattHoursOfADay(1, new WaveProgramme.Part(0, 24 * HOUR, 1, 0.25)))
                .isCloseTo(24 * 12 * 0.25, withinPercentage(1e-6));
    }

    @Test
    void aLeverSlowsThePump() {
        assertThat(wattHoursOfADay(0.5)).isCloseTo(24 * 12 / 8.0, withinPercentage(1e-6));
    }

    @Test
    void aLeverDrivesNoPumpBeyondFullSpeed() {
        assertThat(wattHoursOfADay(3)).isCloseTo(24 * 12, withinPercentage(1e-6));
    }
}
