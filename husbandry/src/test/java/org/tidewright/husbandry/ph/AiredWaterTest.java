package org.tidewright.husbandry.ph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;
import org.tidewright.testkit.SeededCases;

class AiredWaterTest {
    private static final AiredWater REEF = AiredWater.of(25.5, 35);
    private static final double EIGHT = Alkalinity.fromGermanDegrees(8);

    @Test
    void anElectrodesPhMeansThePressureAnotherCodeFinds() {
        for (Row row : ReferenceTable.read(AiredWaterTest.class, "/reference/ph/pyco2sys.csv")
                .rows()) {
            AiredWater water = AiredWater.of(row.number("temperature_c"), row.number("practical_salinity"));
            double alkalinity = 1e-6
                    * row.number("total_alkalinity_umol_kg")
                    * Density.ofSeawater(water.temperature(), water.salinity());
            CarbonateState state = water.reading(alkalinity, row.number("ph_nbs"));
            Close.relative(row, "pco2_uatm", 1e6 * state.partialPressure(), 1e-6);
            Close.absolute(row, "ph_total", state.ph(), 1e-7);
            CarbonateState back = water.under(alkalinity, 1e-6 * row.number("pco2_uatm"));
            Close.absolute(row, "ph_nbs", AiredWater.meter(back), 1e-7);
        }
    }

    @Test
    void atRestThePhIsThatOfTheTable() {
        for (Row row : ReferenceTable.read(AiredWaterTest.class, "/reference/ph/ph_at_rest.csv")
                .rows()) {
            double alkalinity = Alkalinity.fromGermanDegrees(row.number("alkalinity_dkh"));
            Close.absolute(
                    row,
                    "ph_total",
                    REEF.under(alkalinity, pressure(row.number("fugacity_uatm")))
                            .ph(),
                    0.0055);
        }
    }

    /** Of a fugacity in µatm. */
    private static double pressure(double fugacity) {
        return 1e-6 * fugacity / CarbonDioxide.fugacityFactor(25.5);
    }

    /** Worked by another script: 8 dKH at 420 µatm is 8.095 on the total scale, and some 0.13 ± 0.03 more on a meter. */
    @Test
    void aMeterReadsAboutThirteenHundredthsMoreThanTheTotalScale() {
        CarbonateState state = REEF.under(EIGHT, pressure(420));
        assertThat(state.ph()).isCloseTo(8.095, within(0.0005));
        assertThat(AiredWater.meter(state)).isCloseTo(8.095 + 0.13, within(0.03));
        assertThat(REEF.under(EIGHT, pressure(1000)).ph()).isCloseTo(7.78, within(0.005));
    }

    /** From 8 dKH and 450 µatm, worked by another script; two decimals printed. */
    @Test
    void carbonTakenOrGivenMovesThePhAsTheWorkedDaySays() {
        CarbonateState start = REEF.under(EIGHT, 450e-6);
        double[][] worked = {{-0.05, 0.07}, {-0.10, 0.13}, {0.05, -0.07}, {0.10, -0.15}};
        for (double[] step : worked) {
            double moved = REEF.withCarbon(start, step[0] * 1e-3).ph() - start.ph();
            assertThat(moved).as("after %s mmol/kg", step[0]).isCloseTo(step[1], within(0.006));
        }
    }

    @Test
    void moistAirHoldsLessThanDryAir() {
        // 420 ppm at 25 °C and 3.1 kPa of vapour over seawater: 420 × (101.325 − 3.1)/101.325 = 407.
        assertThat(1e6 * AiredWater.of(25, 35).pressure(420e-6)).isCloseTo(407, within(0.5));
    }

    @Test
    void carbonDioxideFallsAsThePhRises() {
        SeededCases.check(draw -> {
            AiredWater water = AiredWater.of(draw.between(15, 32), draw.between(25, 40));
            double alkalinity = draw.between(1, 6);
            double ph = draw.between(7.2, 8.8);
            assertThat(water.reading(alkalinity, ph + 0.01).partialPressure())
                    .isLessThan(water.reading(alkalinity, ph).partialPressure());
        });
    }

    @Test
    void readingAndRestAreEachOthersInverse() {
        SeededCases.check(draw -> {
            AiredWater water = AiredWater.of(draw.between(15, 32), draw.between(25, 40));
            double alkalinity = draw.between(1, 6);
            double share = draw.between(150e-6, 5000e-6);
            double ph = water.phAtRest(alkalinity, share);
            double found = water.share(water.reading(alkalinity, ph).partialPressure());
            assertThat(found).isCloseTo(share, within(1e-9 * share));
        });
    }
}
