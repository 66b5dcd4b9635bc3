package org.tidewright.twin.law.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.TotalConcentrations;

class CalciumReactorTest {
    private static final double LITRES_PER_DAY = 1e-3 / 86_400;
    private static final double DKH = 0.35665; // mol/m^3
    private static final CalciumReactor CHAMBER = CalciumReactor.at(25, 35);
    private static final double ALKALINITY = 8 * DKH;
    private static final double CALCIUM = 10.5;

    /** 43.2 L/day of 25 dKH into 400 L at 8 dKH: 1.836 dKH/day, and 20.04 mg of calcium for each meq, 13.1 mg/L. */
    @Test
    void theTankGainsWhatIsWorkedOut() {
        double dissolved = (25 - 8) * DKH / 2;
        double perDay = CalciumReactor.supply(43.2 * LITRES_PER_DAY, 1, 1, dissolved) * 86_400;
        assertThat(2 * perDay / 0.400 / DKH).isCloseTo(1.836, within(0.0005));
        assertThat(perDay / 0.400 * 40.078).isCloseTo(13.1, within(0.05));
    }

    /**
     * The effluent brought to saturation must be so by the full system, borate, sulfate and all, that the chamber
     * leaves out: within 1 % of aragonite's saturation.
     */
    @Test
    void theEffluentIsSaturatedByTheFullCarbonateSystem() {
        for (double ph = 6; ph <= 7.2; ph += 0.2) {
            double x = CHAMBER.saturatedAtPh(ph, ALKALINITY, CALCIUM, 0);
            assertThat(x).isPositive();
            var totals = TotalConcentrations.ofSeawater(35, BoronRatio.UPPSTROM_1974)
                    .withCalcium((CALCIUM + x) / CHAMBER.density());
            var state = CarbonateSystem.at(25, 35, totals)
                    .fromAlkalinityAndPh((ALKALINITY + 2 * x) / CHAMBER.density(), ph);
            assertThat(state.aragoniteSaturation()).as("pH %s", ph).isCloseTo(1, Percentage.withPercentage(1));
            assertThat(CHAMBER.inorganicCarbonAtPh(ALKALINITY + 2 * x, ph))
                    .isCloseTo(state.inorganicCarbon() * CHAMBER.density(), Percentage.withPercentage(1));
        }
    }

    @Test
    void aKnownPressureSaturatesByTheFullCarbonateSystemToo() {
        for (double pressure : new double[] {0.02, 0.05, 0.1, 0.3, 1}) {
            var gas = CarbonateSystem.at(25, 35)
                    .fromAlkalinityAndPartialPressure(2.3e-3, pressure)
                    .carbonDioxide();
            double x = CHAMBER.saturatedAtCarbonDioxide(gas * CHAMBER.density(), ALKALINITY, CALCIUM, 0);
            var totals = TotalConcentrations.ofSeawater(35, BoronRatio.UPPSTROM_1974)
                    .withCalcium((CALCIUM + x) / CHAMBER.density());
            var state = CarbonateSystem.at(25, 35, totals)
                    .fromAlkalinityAndPartialPressure((ALKALINITY + 2 * x) / CHAMBER.density(), pressure);
            assertThat(state.aragoniteSaturation()).as("%s atm", pressure).isCloseTo(1, Percentage.withPercentage(1));
            assertThat(CHAMBER.inorganicCarbonAtCarbonDioxide(ALKALINITY + 2 * x, gas * CHAMBER.density()))
                    .isCloseTo(state.inorganicCarbon() * CHAMBER.density(), Percentage.withPercentage(1));
            // and the pH that comes out asks for the same
            assertThat(CHAMBER.saturatedAtPh(state.ph(), ALKALINITY, CALCIUM, 0))
                    .isCloseTo(x, Percentage.withPercentage(2));
        }
    }

    /** Common practice: a chamber at pH 6.3 to 6.8 gives 15 to 40 dKH; four fifths of saturation must lie there. */
    @Test
    void theEffluentIsAsStrongAsPracticeKnows() {
        double strong = ALKALINITY + 2 * 0.8 * CHAMBER.saturatedAtPh(6.5 - 0.13, ALKALINITY, CALCIUM, 0.01);
        double weak = ALKALINITY + 2 * 0.8 * CHAMBER.saturatedAtPh(6.8 - 0.13, ALKALINITY, CALCIUM, 0.01);
        assertThat(strong / DKH).isBetween(25.0, 50.0);
        assertThat(weak / DKH).isBetween(15.0, 30.0);
    }

    /** 5 kg and 43 L/day, 5e-7 m^3/s: 4e-7 5 / (5e-7 + 4e-7 5) = 0.80. */
    @Test
    void gravelBringsTheFlowFourFifthsOfTheWay() {
        assertThat(CalciumReactor.approach(5e-7, 5, CalciumReactor.RATE_USUAL)).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void withoutFlowOrGravelNothingComesOut() {
        assertThat(CalciumReactor.supply(0, 5, 4e-7, 3)).isZero();
        assertThat(CalciumReactor.supply(5e-7, 0, 4e-7, 3)).isZero();
        assertThat(CalciumReactor.supply(0, 0, 4e-7, 3)).isZero();
        assertThat(CalciumReactor.supply(Double.MIN_VALUE, Double.MIN_VALUE, 4e-7, 3))
                .isZero();
        assertThat(CalciumReactor.approach(0, 5, 4e-7)).isEqualTo(1);
    }

    /** A slow flow carries what it can hold; a fast one what the gravel gives, k m x_sat. */
    @Test
    void supplyGrowsWithFlowUpToWhatTheGravelGives() {
        double last = 0;
        for (double flow = 1e-8; flow < 1e-2; flow *= 2) {
            double now = CalciumReactor.supply(flow, 5, 4e-7, 3);
            assertThat(now).isGreaterThan(last).isLessThan(4e-7 * 5 * 3);
            last = now;
        }
        assertThat(last).isCloseTo(6e-6, Percentage.withPercentage(0.1));
    }

    /** The feed of 8 dKH has 2.5 mol/m^3 of carbon; one mole of gas for each mole dissolved is the least. */
    @Test
    void aMoleOfGasIsTheLeastForAMoleDissolved() {
        for (double ph = 6; ph <= 7; ph += 0.1) {
            double x = 0.8 * CHAMBER.saturatedAtPh(ph, ALKALINITY, CALCIUM, 0.01);
            double effluent = CHAMBER.inorganicCarbonAtPh(ALKALINITY + 2 * x, ph);
            assertThat(CalciumReactor.carbonDioxideUsed(effluent, 2.5, x)).isGreaterThan(x);
        }
        assertThat(CalciumReactor.carbonDioxideUsed(2, 2.5, 0)).isZero();
    }

    @Test
    void theMoreAcidTheMoreDissolves() {
        double last = Double.POSITIVE_INFINITY;
        for (double ph = 5; ph < 8.5; ph += 0.1) {
            double now = CHAMBER.saturatedAtPh(ph, ALKALINITY, CALCIUM, 0.01);
            assertThat(now).isLessThanOrEqualTo(last);
            last = now;
        }
        assertThat(last).isZero(); // the tank's own pH: saturated as it comes
    }

    @Test
    void anyFeedGivesAFiniteAnswer() {
        double[] feeds = {0, 1e-300, 1e-9, 1e-3, 1, 10, 1e4};
        for (double alkalinity : feeds) {
            for (double calcium : feeds) {
                assertThat(CHAMBER.saturatedAtPh(6.5, alkalinity, calcium, 0.01))
                        .isBetween(0.0, 100.0);
                for (double gas : new double[] {0, 1e-12, 1e-3, 1, 1000}) {
                    double x = CHAMBER.saturatedAtCarbonDioxide(gas, alkalinity, calcium, 0.01);
                    assertThat(x).isBetween(0.0, 1000.0);
                    assertThat(CHAMBER.inorganicCarbonAtCarbonDioxide(alkalinity, gas))
                            .isBetween(0.0, 2e4);
                }
            }
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> CHAMBER.saturatedAtPh(65, 2.8, 10, 0)).hasMessageContaining("pH of the chamber 65.0");
        assertThatThrownBy(() -> CHAMBER.saturatedAtPh(6.5, Double.NaN, 10, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CalciumReactor.approach(-1, 5, 1e-7)).isInstanceOf(IllegalArgumentException.class);
    }
}
