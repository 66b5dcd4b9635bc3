package org.tidewright.twin.law.gas;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;

/** Worked examples of oxygen in an outage; each row of the file names the publication of its law. */
class OxygenWorkedExamplesTest {
    private static final ReferenceTable WORKED =
            ReferenceTable.read(OxygenWorkedExamplesTest.class, "/reference/gas/worked_examples.csv");

    private static final double HOUR = 3600;
    private static final double GRAM_PER_MOL = 31.9988;
    private static final double VOLUME = 0.400;
    private static final double SURFACE = 0.675;
    private static final double SATURATION = OxygenSolubility.perVolume(25.5, 35);
    private static final double RESPIRATION = 0.5 / GRAM_PER_MOL / HOUR; // mol/(m^3 s), from 0.5 mg/(L h)
    private static final double BUBBLES = Bubbles.standardRate(2e-3 / 60, 0.40, 0.04);

    private static void check(String id, double got) {
        Close.relative(WORKED.row("id", id), "value", got, 1e-3);
    }

    private static double velocity(double centimetresPerHour) {
        return centimetresPerHour / 100 / HOUR;
    }

    private static OxygenDecline decline(double respiration, double centimetresPerHour) {
        return new OxygenDecline(
                SATURATION, respiration / GRAM_PER_MOL / HOUR, velocity(centimetresPerHour), VOLUME / SURFACE);
    }

    private static double hours(OxygenDecline decline) {
        return decline.timeTo(6.2 / GRAM_PER_MOL, 3.0 / GRAM_PER_MOL).orElseThrow() / HOUR;
    }

    /** Garcia and Gordon 1992. */
    @Test
    void theWaterHoldsTheOxygenWorkedOut() {
        check("E8.1", SATURATION * GRAM_PER_MOL);
    }

    /** Closed form of thin-film gas transfer against constant respiration. */
    @Test
    void oxygenFallsAsTheClosedFormSays() {
        check("E8.2a", hours(decline(0.2, 1)));
        check("E8.2b", hours(decline(0.5, 1)));
        check("E8.2c", hours(decline(1.0, 1)));
        check("E8.2d", hours(decline(0.5, 4)));
        var settles = decline(0.5, 12);
        check("E8.2e", settles.equilibrium() * GRAM_PER_MOL);
        assertThat(settles.timeTo(6.2 / GRAM_PER_MOL, 3.0 / GRAM_PER_MOL)).isEmpty();
    }

    @Test
    void aStillSurfaceWouldNeedTheDeficitWorkedOut() {
        var still = decline(0.5, 1);
        check("E8.7", (SATURATION - still.equilibrium()) * GRAM_PER_MOL);
        assertThat(still.equilibrium()).isNegative();
    }

    /** ASCE/EWRI 2-06. */
    @Test
    void bubblesTransferAsWorkedOut() {
        check("E8.3", BUBBLES * GRAM_PER_MOL * HOUR);
        check("E8.4", Bubbles.rate(BUBBLES, 0.95, SATURATION, 4 / GRAM_PER_MOL, 25.5) * GRAM_PER_MOL * HOUR);
        check("E8.9", Bubbles.conductance(BUBBLES, 0.95, 25.5) / SURFACE * HOUR * 100);
        check("E8.5", steady(2, 1) * GRAM_PER_MOL);
        check("E8.6", steady(3, 2) * GRAM_PER_MOL);
    }

    private static double steady(double centimetresPerHour, int pumps) {
        double exchange = velocity(centimetresPerHour) + pumps * Bubbles.conductance(BUBBLES, 0.95, 25.5) / SURFACE;
        return new OxygenDecline(SATURATION, RESPIRATION, exchange, VOLUME / SURFACE).equilibrium();
    }

    /** Wanninkhof 2014, exponent of a rippled surface. */
    @Test
    void theTransferVelocityScalesAsWorkedOut() {
        check("E8.8a", SchmidtNumber.ofOxygen(25.5));
        double k600 = 3e-6;
        double velocity = GasTransfer.velocity(k600, SchmidtNumber.ofOxygen(25.5), GasTransfer.RIPPLED);
        check("E8.8", velocity / k600);
    }
}
