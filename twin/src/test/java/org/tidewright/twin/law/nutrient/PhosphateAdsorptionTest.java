package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.testkit.SeededCases;

class PhosphateAdsorptionTest {
    private static final double DAY = 86_400;
    private static final double PHOSPHATE = 94.9714e-3; // kg/mol
    private static final double FLOW = 0.100 / 3600; // m^3/s, 100 L/h

    /** The isotherm of the class, worked by hand to the digits shown; mg of PO4 per litre and per gram. */
    @ParameterizedTest
    @CsvSource({"0.03, 9.8", "0.05, 11.6", "0.10, 14.6", "0.20, 18.4", "0.50, 25.0", "1.0, 31.5"})
    void mediaHoldWhatTheTableSays(double milligramsPerLitre, double milligramsPerGram) {
        double load = PhosphateAdsorption.equilibriumLoad(milligramsPerLitre * 1e-3 / PHOSPHATE);
        assertThat(load * PHOSPHATE * 1e3).isCloseTo(milligramsPerGram, within(0.05));
    }

    /** 100 L/h, 0.3 a pass, 200 L: 3.6 per day, half-time 4.6 h. */
    @Test
    void freshMediaStripATankWithinHours() {
        double concentration = 1e-3;
        double rate = PhosphateAdsorption.uptake(FLOW, 0.3, concentration, 0, 1) / (0.200 * concentration);
        assertThat(rate * DAY).isCloseTo(3.6, within(1e-9));
        assertThat(Math.log(2) / rate / 3600).isCloseTo(4.6, within(0.05));
    }

    @Test
    void nothingPassesAtEquilibriumAndALowerWaterGetsItBack() {
        SeededCases.check(draw -> {
            double concentration = draw.between(1e-6, 0.05);
            double usable = draw.between(0.3, 1);
            double load = usable * PhosphateAdsorption.equilibriumLoad(concentration);
            assertThat(PhosphateAdsorption.equilibriumConcentration(load, usable))
                    .isCloseTo(concentration, withinPercentage(1e-9));
            double scale = FLOW * concentration;
            assertThat(PhosphateAdsorption.uptake(FLOW, 0.3, concentration, load, usable))
                    .isCloseTo(0, within(1e-12 * scale));
            assertThat(PhosphateAdsorption.uptake(FLOW, 0.3, 0.9 * concentration, load, usable))
                    .isNegative();
            assertThat(PhosphateAdsorption.uptake(FLOW, 0.3, concentration, 0.9 * load, usable))
                    .isPositive();
        });
    }

    /**
     * Exhaustion at constant 0.1 mg/L of PO4: while q is small C(q) is far less, so the bed takes F e C; it ends at its
     * usable load.
     */
    @Test
    void aBedFillsToItsUsableLoadAndStops() {
        double concentration = 0.1e-3 / PHOSPHATE;
        double mass = 0.100; // kg
        double usable = 0.5;
        double load = 0;
        double hour = 3600;
        double previous = Double.POSITIVE_INFINITY;
        for (int hours = 0; hours < 3000; hours++) {
            double uptake = PhosphateAdsorption.uptake(FLOW, 0.3, concentration, load, usable);
            assertThat(uptake).isBetween(0.0, previous);
            previous = uptake;
            load += uptake / mass * hour;
        }
        assertThat(load * PHOSPHATE * 1e3).isCloseTo(0.5 * 14.6, withinPercentage(0.5));
    }

    @Test
    void rockFollowsTheWaterAndFeedsItWhenItFalls() {
        double balanced = PhosphateAdsorption.reservoirUptake(20, 1, 20, 1e-6);
        assertThat(balanced).isZero();
        assertThat(PhosphateAdsorption.reservoirUptake(20, 0.5, 20, 0.25)).isEqualTo(-2.5);
        assertThat(PhosphateAdsorption.reservoirUptake(0, 0, 20, 1e-6)).isZero();
    }
}
