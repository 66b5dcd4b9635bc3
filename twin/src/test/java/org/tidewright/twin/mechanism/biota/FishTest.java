package org.tidewright.twin.mechanism.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.law.biota.Partition;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/**
 * Fish in a lake whose oxygen they cannot lower, at 25 °C, against the closed forms of stages in a row and of a fast. The
 * runs are held to 1e-9 of what moves; 1e-4 is asked for.
 */
class FishTest {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;
    private static final double MASS = 0.1;
    private static final double STAGE = 1 / (4.5 * HOUR);
    private static final double RESERVE = 1 / DAY;
    private static final double CLOSE = 0.01; // percent

    /** Oxygen burnt at rest by all, mol/s, and nitrogen lost while fasting. */
    private static final double RESTING = 2e-7;

    private static final double FASTING = 1e-8;
    private static final double MEAL = 0.02;

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Body stomach = pool("stomach");
    private final Body gut = pool("gut");
    private final Body reserve = lake.builder().pool("reserve", Stock.ORGANIC_CARBON);
    private final Body flesh = pool("flesh");
    private final Body ground = pool("ground");

    private Body pool(String name) {
        return lake.builder().pool(name, Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
    }

    /** Fish of ordinary flesh. What they drop comes to lie, what they excrete is ammonia. */
    private State fish(double activity) {
        lake.with(new Fish(
                new Fish.Places(lake.water(), stomach, gut, reserve, flesh, ground, lake.world()),
                new Fish.Diet(
                        new Partition(0.08, 0.68, 0.19, 0.05),
                        new Partition(0.10, 0.70, 0.15, 0.05),
                        new Partition(0.10, 0.30, 0.55, 0.05)),
                new Fish.Shoal(MASS, RESTING, FASTING),
                new Fish.Doubts(
                        lake.exactly("stage", "1/s", STAGE),
                        lake.exactly("activity", "1", activity),
                        lake.exactly("ammonia", "1", 1),
                        lake.exactly("labile", "1", 0))));
        network = lake.builder().build();
        return lake.filled(network, 25, 0.2)
                .set(flesh, Stock.ORGANIC_CARBON, MASS * BodyComposition.CARBON)
                .set(flesh, Stock.ORGANIC_NITROGEN, MASS * BodyComposition.NITROGEN)
                .set(flesh, Stock.ORGANIC_PHOSPHORUS, MASS * BodyComposition.PHOSPHORUS);
    }

    /** Of pellets, seven carbon to a nitrogen. */
    private State fed(State state) {
        return state.set(stomach, Stock.ORGANIC_CARBON, MEAL)
                .set(stomach, Stock.ORGANIC_NITROGEN, MEAL / 7)
                .set(stomach, Stock.ORGANIC_PHOSPHORUS, MEAL / 100);
    }

    private Network network = new TestVessel(1, 1).builder().build();

    // ── a meal ──

    /** Two equal first-order stages: k t e^(-kt) lies in the second, and 1 - (1 + kt) e^(-kt) has left it. */
    @Test
    void aMealLeavesTheGutByTheCurveOfTwoEqualStages() {
        State state = fed(fish(0));
        Run run = TestVessel.run(network, state);
        for (double hour : new double[] {1, 3, 4.5, 9, 24}) {
            run.until(hour * HOUR);
            double kt = STAGE * hour * HOUR;
            double left = 1 - (1 + kt) * Math.exp(-kt);
            double nitrogen = MEAL / 7;
            assertThat(state.get(gut, Stock.ORGANIC_NITROGEN))
                    .as("%s h", hour)
                    .isCloseTo(nitrogen * kt * Math.exp(-kt), withinPercentage(CLOSE));
            assertThat(state.get(ground, Stock.ORGANIC_NITROGEN))
                    .isCloseTo(nitrogen * 0.15 / 0.95 * left, withinPercentage(CLOSE));
            assertThat(state.get(lake.water(), Stock.AMMONIA))
                    .isCloseTo(nitrogen * 0.70 / 0.95 * left, withinPercentage(CLOSE));
        }
    }

    /**
     * A third stage of another rate r behind the two: k²/(k - r)² (e^(-rt) - e^(-kt) (1 + (k - r) t)), the textbook
     * solution of the chain. What it has lost was burnt, one oxygen a carbon.
     */
    @Test
    void theReserveFillsBehindTheGutAndIsBurntInADay() {
        State state = fed(fish(0));
        double oxygen = state.get(lake.world(), Stock.OXYGEN);
        Run run = TestVessel.run(network, state);
        for (double hour : new double[] {3, 9, 24, 72}) {
            run.until(hour * HOUR);
            double t = hour * HOUR;
            double apart = STAGE - RESERVE;
            double held =
                    STAGE * STAGE / (apart * apart) * (Math.exp(-RESERVE * t) - Math.exp(-STAGE * t) * (1 + apart * t));
            double breathed = MEAL * 0.68 / 0.95;
            assertThat(state.get(reserve, Stock.ORGANIC_CARBON))
                    .as("%s h", hour)
                    .isCloseTo(breathed * held, withinPercentage(CLOSE));
            double passed = 1 - (1 + STAGE * t) * Math.exp(-STAGE * t);
            assertThat(state.get(lake.world(), Stock.OXYGEN) - oxygen)
                    .isCloseTo(breathed * (passed - held), withinPercentage(CLOSE));
        }
    }

    @Test
    void intoADayAMealIsSharedOutAsItsPartitionSays() {
        State state = fed(fish(0));
        double carbon = state.get(flesh, Stock.ORGANIC_CARBON);
        double nitrogen = state.get(flesh, Stock.ORGANIC_NITROGEN);
        TestVessel.run(network, state).until(20 * DAY);
        assertThat(state.get(flesh, Stock.ORGANIC_CARBON) - carbon)
                .isCloseTo(MEAL * 0.08 / 0.95, withinPercentage(CLOSE));
        assertThat(state.get(flesh, Stock.ORGANIC_NITROGEN) - nitrogen)
                .isCloseTo(MEAL / 7 * 0.10 / 0.95, withinPercentage(CLOSE));
        assertThat(state.get(ground, Stock.ORGANIC_CARBON)).isCloseTo(MEAL * 0.19 / 0.95, withinPercentage(CLOSE));
        assertThat(state.get(ground, Stock.ORGANIC_PHOSPHORUS))
                .isCloseTo(MEAL / 100 * 0.55 / 0.95, withinPercentage(CLOSE));
    }

    /** Food of 16 g nitrogen to 1 g phosphorus would do; this meal has a sixth more than a body holds, which is excreted. */
    @Test
    void noMorePhosphorusIsKeptThanTheNitrogenKeptAsksFor() {
        State state = fed(fish(0));
        double phosphorus = state.get(flesh, Stock.ORGANIC_PHOSPHORUS);
        TestVessel.run(network, state).until(20 * DAY);
        // A body of 2.7 % nitrogen and 0.36 % phosphorus holds 16.6 moles of one to one of the other.
        double asked = MEAL / 7 * 0.10 / 0.95 / (2.7 / 14.007 / (0.36 / 30.974));
        double offered = MEAL / 100 * 0.10 / 0.95;
        assertThat(asked).isLessThan(offered);
        assertThat(state.get(flesh, Stock.ORGANIC_PHOSPHORUS) - phosphorus).isCloseTo(asked, withinPercentage(0.1));
        assertThat(state.get(lake.water(), Stock.PHOSPHATE))
                .isCloseTo(MEAL / 100 * 0.40 / 0.95 - asked, withinPercentage(0.1));
    }

    // ── a fast ──

    /**
     * Fat and flesh go in the ratio (1/p0 - 1) x, x the fat left over the flesh left, so that whatever the pace of the
     * breath the fat is the flesh to the power (1/p0 - 1)/a: separated by hand. a is the fat of an ordinary fish over the
     * carbon of its protein.
     */
    @Test
    void fatGoesAsAPowerOfTheFleshThatIsLeft() {
        State state = fish(1);
        double ordinary = BodyComposition.CARBON / BodyComposition.NITROGEN;
        double share = FASTING * 3.8 / RESTING;
        double power = (1 / share - 1) / ((ordinary - 3.8) / 3.8);
        double first = state.get(flesh, Stock.ORGANIC_NITROGEN);
        Run run = TestVessel.run(network, state);
        double before = 1;
        for (int day : new int[] {5, 10, 20, 40}) {
            run.until(day * DAY);
            double left = state.get(flesh, Stock.ORGANIC_NITROGEN) / first;
            double fat = (state.get(flesh, Stock.ORGANIC_CARBON) - 3.8 * left * first) / ((ordinary - 3.8) * first);
            assertThat(fat).as("day %d", day).isCloseTo(Math.pow(left, power), within(1e-6));
            assertThat(left).isLessThan(before);
            before = left;
        }
    }

    /** At first the flesh loses the nitrogen of a fast; without fat it is all there is to burn, 3.8 carbon to a nitrogen. */
    @Test
    void whatAFastCostsInNitrogenGoesFromTheFastingRateToAllTheBreath() {
        State state = fish(1);
        Run run = TestVessel.run(network, state);
        run.until(600);
        assertThat(state.get(lake.water(), Stock.AMMONIA)).isCloseTo(600 * FASTING, withinPercentage(0.1));
        run.until(120 * DAY);
        double many = state.get(flesh, Stock.ORGANIC_NITROGEN) / (MASS * BodyComposition.NITROGEN);
        double ammonia = state.get(lake.water(), Stock.AMMONIA);
        run.until(120 * DAY + 600);
        assertThat(state.get(lake.water(), Stock.AMMONIA) - ammonia)
                .isCloseTo(600 * many * RESTING / 3.8, withinPercentage(0.1));
    }

    @Test
    void bonesOutlastTheFlesh() {
        State state = fish(1);
        double half = MASS * BodyComposition.PHOSPHORUS / 2;
        TestVessel.run(network, state).until(400 * DAY);
        double left = state.get(flesh, Stock.ORGANIC_NITROGEN) / (MASS * BodyComposition.NITROGEN);
        assertThat(left).isLessThan(0.1);
        assertThat(state.get(flesh, Stock.ORGANIC_PHOSPHORUS)).isCloseTo(half * (1 + left), withinPercentage(CLOSE));
    }

    /** Wherever it is breathed, half the fish breathe half. */
    @Test
    void halfTheFleshBreathesHalf() {
        State state = fish(1);
        for (Stock stock : List.of(Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS)) {
            state.set(flesh, stock, state.get(flesh, stock) / 2);
        }
        double oxygen = state.get(lake.world(), Stock.OXYGEN);
        TestVessel.run(network, state).until(HOUR);
        assertThat(state.get(lake.world(), Stock.OXYGEN) - oxygen).isCloseTo(HOUR * RESTING / 2, withinPercentage(0.1));
    }

    @Test
    void aLeanFishLaysOnFatBeforeItBurnsWhatItDoesNotNeed() {
        State state = fed(fish(0)).set(flesh, Stock.ORGANIC_CARBON, 0.9 * MASS * BodyComposition.CARBON);
        double carbon = state.get(flesh, Stock.ORGANIC_CARBON);
        TestVessel.run(network, state).until(10 * DAY);
        assertThat(state.get(flesh, Stock.ORGANIC_CARBON) - carbon).isGreaterThan(1.5 * MEAL * 0.08 / 0.95);
    }
}
