package org.tidewright.twin.law.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;

/** Worked examples of emergency power; each row of the file names its law. */
class EmergencyPowerTest {
    private static final ReferenceTable WORKED =
            ReferenceTable.read(EmergencyPowerTest.class, "/reference/power/worked_examples.csv");

    private static final double HOUR = 3600;

    private static void check(String id, double got) {
        Close.relative(WORKED.row("id", id), "value", got, 1e-3);
    }

    @Test
    void aBatteryForANightIsAsLargeAsWorkedOut() {
        check("E7.4", new BatteryEnergy(0.88, 0, 0.80, 0.90, 0.85).needed(45, 12 * HOUR) / HOUR);
        check("E7.4b", new BatteryEnergy(0.88, 8, 0.80, 0.90, 0.85).needed(45, 12 * HOUR) / HOUR);
    }

    @Test
    void anAirPumpRunsAsLongAsWorkedOut() {
        var cells = new BatteryEnergy(1, 0, 1, 1, 1);
        check("E8.10", cells.runTime(2 * 18 * HOUR, 0.6) / HOUR);
        var pack = new BatteryEnergy(0.85, 0, 1, 1, 1);
        check("E8.11", pack.runTime(20 * HOUR, 2) / HOUR);
    }

    /** Peukert's law for 100 Ah at the 20 h rate, k = 1.2. */
    @Test
    void leadAcidRunsAsLongAsWorkedOut() {
        double atFifteen = Peukert.runTime(100 * HOUR, 20 * HOUR, 15, 1.20);
        check("E7.5", atFifteen / HOUR);
        check("E7.6", 15 * atFifteen / HOUR);
        check("E7.7", 0.5 * Peukert.runTime(100 * HOUR, 20 * HOUR, 5.5, 1.20) / HOUR);
    }

    @Test
    void theGeneratorIsAsLargeAndThirstyAsWorkedOut() {
        check("E7.8", Generator.power(430, 4 * 60, Generator.RESERVE));
        double idle = 0.22e-3 / HOUR;
        double perEnergy = 0.42e-3 / 3.6e6;
        double rate = Generator.fuelRate(idle, perEnergy, 430);
        check("E7.9", rate * 24 * HOUR * 1000);
        check("E7.10", rate * HOUR * 1000 / 0.430);
    }

    @Test
    void runTimeAndNeededEnergyAreInverse() {
        var battery = new BatteryEnergy(0.88, 8, 0.80, 0.90, 0.85);
        assertThat(battery.runTime(battery.needed(45, 1234), 45)).isCloseTo(1234, within(1e-9));
    }

    /** At the rated current, and with an exponent of 1 at any, Peukert's law is charge over current. */
    @Test
    void peukertsLawGivesTheRatedTimeAtTheRatedCurrent() {
        assertThat(Peukert.runTime(100 * HOUR, 20 * HOUR, 5, 1.25)).isCloseTo(20 * HOUR, within(1e-9));
        assertThat(Peukert.runTime(100 * HOUR, 20 * HOUR, 50, 1)).isCloseTo(2 * HOUR, within(1e-9));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new BatteryEnergy(88, 0, 0.8, 1, 1))
                .hasMessageContaining("efficiency of the inverter 88.0");
        assertThatThrownBy(() -> new BatteryEnergy(1, 0, 0.8, 1, 1).runTime(1e6, 0))
                .hasMessageContaining("draw from the battery");
        assertThatThrownBy(() -> Peukert.runTime(100, 20, Double.NaN, 1.2))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
