package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/**
 * Worked by hand, 1 %: 200 L fed 1.0 g of pellets and 3.0 g of drained mysids a day, 20 % of the nitrogen kept by the
 * fish, 20 % of the rest skimmed, 53.6 mg/d taken by algae, a tenth of the water changed a week, 0.015 per day
 * denitrified.
 */
class NutrientBoxTest {
    private static final double DAY = 86_400;

    private static double milligramsPerDay(double milligrams, double molarMass) {
        return milligrams * 1e-6 / molarMass / DAY;
    }

    @Test
    void nitrateSettlesWhereWorkedOut() {
        double waterChange = NutrientBox.waterChange(0.10, 7 * DAY);
        assertThat(waterChange * DAY).isCloseTo(0.015052, within(5e-7));
        double input = 1.0 * 77 + 3.0 * 18.5;
        double toWater = input * (1 - 0.20);
        assertThat(toWater).isCloseTo(106.0, within(0.05));
        double net = toWater * (1 - 0.20) - 53.6;
        assertThat(net).isCloseTo(31.2, within(0.05));
        var box = new NutrientBox(milligramsPerDay(net, ElementMass.NITROGEN), 0.200, waterChange + 0.015 / DAY);
        assertThat(box.steady() * ElementMass.NITROGEN * 1e3).isCloseTo(5.196, withinPercentage(1));
        assertThat(box.steady() * 62.0049).isCloseTo(23.0, withinPercentage(1));
        assertThat(Math.log(2) / box.loss() / DAY).isCloseTo(23.1, withinPercentage(1));
        double start = 2.0e-3 / 62.0049e-3;
        assertThat(box.after(start, 30 * DAY) * 62.0049).isCloseTo(14.5, withinPercentage(1));
        assertThat(box.after(start, 0)).isCloseTo(start, within(1e-15));
    }

    /** Phosphorus alike, without denitrification: 18.6 mg/d in, 25 % kept, 20 % skimmed, 5.36 mg/d to algae. */
    @Test
    void phosphateSettlesFarAboveItsTargetAndSoNeedsMedia() {
        double input = 1.0 * 12 + 3.0 * 2.2;
        double net = input * (1 - 0.25) * (1 - 0.20) - 5.36;
        assertThat(net).isCloseTo(5.80, within(0.005));
        var box = new NutrientBox(
                milligramsPerDay(net, ElementMass.PHOSPHORUS), 0.200, NutrientBox.waterChange(0.10, 7 * DAY));
        assertThat(box.steady() * 94.9714).isCloseTo(5.9, withinPercentage(1));

        double held = 0.05e-3 / 94.9714e-3;
        double toMedia = box.load() - box.loss() * 0.200 * held;
        double grams = toMedia * 30 * DAY / PhosphateAdsorption.equilibriumLoad(held) * 1e3;
        assertThat(grams).isCloseTo(45.6, withinPercentage(1));
    }
}
