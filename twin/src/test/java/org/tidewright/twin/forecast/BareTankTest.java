package org.tidewright.twin.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;

/**
 * Ammonia in a bare quarantine tank, against a sum done by hand: 40 L, one fish of 10 g, 0.15 g of pellets a day of 7.7 %
 * nitrogen, three quarters of it to ammonia, no filter: 8.66 mg of nitrogen a day, 0.2166 mg/L a day, so that at 26 °C and
 * pH 8.1 (a share of 0.0604 un-ionised, Hampson 1977) 0.02 mg/L of free ammonia come after 1.52 days and 0.03 after 2.29.
 */
class BareTankTest {
    private static final double DAY = 86_400;
    private static final double BY_HAND = 0.2166;
    private static final Set<Quantity> TOLD =
            Set.of(Quantity.AMMONIA, Quantity.FREE_AMMONIA, Quantity.NITRITE, Quantity.PH);
    private static final String SPONGE =
            "    sponge: {foam: 0.6 L, state: live} # kept ripe in the sump of a system that is well\n";

    private static Plan oneFish(String sponge) {
        return TestPlans.read(ChangedText.of(
                Examples.text("quarantine-box"),
                "water_level: 26 cm",
                "water_level: 22.22 cm",
                "{name: wrasse, mass: 5 g, count: 4}",
                "{name: wrasse, mass: 10 g, count: 1}",
                "mass: 0.15 g, times",
                "mass: 0.075 g, times",
                SPONGE,
                sponge,
                "water_changes:\n  - {name: change, volume: 15 L, every: 2 d, at: \"19:00\", siphoned: 90 %}\n",
                ""));
    }

    private static Course course(Plan plan, int days) {
        return Forecast.of(plan).course(days, days * 24 + 1, TOLD);
    }

    @Test
    void oneFishWithoutAFilterGivesTheAmmoniaOfItsFood() {
        Course course = course(oneFish(""), 4);
        double aDay = (at(course, Quantity.AMMONIA, 3) - at(course, Quantity.AMMONIA, 1)) / 2;
        // An adult excretes 0.70 of what it eats, and eats 0.95 of 11.55 mg: 7.68 mg. Droppings rot later, which is the
        // rest of the three quarters.
        assertThat(aDay).isCloseTo(7.68 / 40, within(0.02));
        assertThat(aDay / BY_HAND).isBetween(0.8, 1.05);
    }

    @Test
    void freeAmmoniaComesLaterThanByHandByThePHAndTheDroppings() {
        Course course = course(oneFish(""), 6);
        double share = at(course, Quantity.FREE_AMMONIA, 2) / at(course, Quantity.AMMONIA, 2);
        // pH 7.9 on the total scale, 8.05 by NBS, by the air of the plan's room; 0.0604 at 8.1, a tenth less by the
        // newer
        // constants.
        assertThat(at(course, Quantity.PH, 2)).isCloseTo(7.91, within(0.05));
        assertThat(share / 0.0604).isBetween(0.7, 0.9);
        double load = 7.68 / 8.66;
        assertThat(reaches(course, 0.02)).isCloseTo(1.52 / load / (share / 0.0604), within(0.3));
        assertThat(reaches(course, 0.03)).isCloseTo(2.29 / load / (share / 0.0604), within(0.3));
    }

    @Test
    void aSpongeOfARunningTankHoldsAmmoniaAndAWashedOneDoesNot() {
        double ripe = most(course(oneFish(SPONGE), 12));
        double seeded = most(course(oneFish(SPONGE.replace("live", "seeded")), 12));
        double dry = most(course(oneFish(SPONGE.replace("live", "dry")), 12));
        double none = most(course(oneFish(""), 12));
        assertThat(ripe).isLessThan(0.01);
        assertThat(seeded).isBetween(2 * ripe, 0.8 * none);
        // It has more room for what drifts in, and no more.
        assertThat(dry).isBetween(0.75 * none, none);
        assertThat(none).isGreaterThan(0.06);
    }

    @Test
    void everyBatchBeginsInNewWaterWithWhatIsBrought() {
        Course course = course(oneFish(""), 1);
        assertThat(course.of(Quantity.AMMONIA)[0]).isZero();
        assertThat(course.of(Quantity.NITRITE)[0]).isZero();
        // A tank of the same kind that is no quarantine tank has its panes ripe: it is one that has run for months.
        String text = Examples.text("quarantine-box");
        Plan running = TestPlans.read(text.substring(0, text.indexOf("quarantine:\n")));
        assertThat(running.quarantine()).isNull();
        assertThat(most(course(running, 12))).isLessThan(most(course(TestPlans.example("quarantine-box"), 12)));
    }

    @Test
    void theExampleStaysUnderAmber() {
        assertThat(most(course(TestPlans.example("quarantine-box"), 30))).isLessThan(0.01);
    }

    private static double at(Course course, Quantity quantity, int day) {
        return course.of(quantity)[day * 24];
    }

    private static double reaches(Course course, double bound) {
        double[] free = course.of(Quantity.FREE_AMMONIA);
        int i = 0;
        while (i < free.length && free[i] < bound) {
            i++;
        }
        return i == free.length ? Double.POSITIVE_INFINITY : course.time()[i] / DAY;
    }

    private static double most(Course course) {
        double most = 0;
        for (double free : course.of(Quantity.FREE_AMMONIA)) {
            most = Math.max(most, free);
        }
        return most;
    }
}
