package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class CarbonDosingTest {
    private static final double CARBON_TO_NITROGEN = CarbonDosing.CARBON_TO_NITROGEN.usual();
    private static final double NITROGEN_TO_PHOSPHORUS = CarbonDosing.NITROGEN_TO_PHOSPHORUS.usual();

    /**
     * By hand: 1 mL of 5 % vinegar is 50 mg of acid, 20 mg of carbon; 8 mg go into cells with 1.6 mg N and 0.2 mg P.
     */
    @Test
    void aMillilitreOfVinegarBindsWhatIsWorkedOut() {
        double carbon = 2 * 50e-6 / 60.052e-3; // mol
        assertThat(carbon * ElementMass.CARBON * 1e6).isCloseTo(20, within(0.05));
        double nitrogen = carbon * CarbonDosing.nitrogenPerCarbon(0.4, CARBON_TO_NITROGEN);
        double phosphorus = carbon * CarbonDosing.phosphorusPerCarbon(0.4, CARBON_TO_NITROGEN, NITROGEN_TO_PHOSPHORUS);
        assertThat(nitrogen * ElementMass.NITROGEN * 1e6).isCloseTo(1.6, within(0.05));
        assertThat(phosphorus * ElementMass.PHOSPHORUS * 1e6).isCloseTo(0.2, within(0.05));
    }

    /**
     * Ebeling, Timmons and Bisogni 2006, Aquaculture 257, 346: NH4+ + 1.18 C6H12O6 + HCO3- + 2.06 O2 = C5H7O2N + ...,
     * which is a yield of 5 in 7.08 carbons. Three digits printed; from memory.
     */
    @Test
    void sugarTakesTheOxygenPublished() {
        double yield = 5 / (6 * 1.18);
        double oxygen = CarbonDosing.oxygenPerCarbon(1, yield, 5, 0);
        assertThat(oxygen * 6 * 1.18).isCloseTo(2.06, within(0.03));
    }

    /** Nitrate brings two oxygens for each nitrogen: growth on it and then its oxidation use what burning uses. */
    @Test
    void oxygenBalancesWithWhatTheCellsWouldBurn() {
        double kept = 0.4 * CarbonDosing.OXYGEN_OF_CELLS;
        double onAmmonia = CarbonDosing.oxygenPerCarbon(CarbonDosing.OXYGEN_OF_ETHANOL, 0.4, 5, 0);
        double onNitrate = CarbonDosing.oxygenPerCarbon(CarbonDosing.OXYGEN_OF_ETHANOL, 0.4, 5, 1);
        assertThat(onAmmonia + kept).isCloseTo(1.5, within(1e-12));
        assertThat(onAmmonia - onNitrate).isCloseTo(2 * CarbonDosing.nitrogenPerCarbon(0.4, 5), within(1e-12));
    }

    @Test
    void growthStopsWhenAnyOneThingIsGone() {
        SeededCases.check(draw -> {
            double[] water = {
                draw.between(1e-4, 1), draw.between(1e-5, 1), draw.between(1e-6, 0.1), draw.between(1e-3, 0.3)
            };
            assertThat(growth(water)).isPositive();
            int gone = draw.whole(0, 3);
            double more = water[gone] * 2;
            water[gone] = 0;
            assertThat(growth(water)).isZero();
            water[gone] = more;
            assertThat(growth(water)).isBetween(0.0, CarbonDosing.GROWTH.usual());
        });
    }

    private static double growth(double[] water) {
        return CarbonDosing.growth(CarbonDosing.GROWTH.usual(), water[0], water[1], water[2], water[3], 25);
    }
}
