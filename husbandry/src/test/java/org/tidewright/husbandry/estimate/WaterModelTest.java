package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.CALCIUM;
import static org.tidewright.plan.method.WaterQuantity.MAGNESIUM;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;
import static org.tidewright.plan.method.WaterQuantity.SALINITY;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.numerics.filter.LinearFilter;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/** The model against the worked examples of the project's handbook and against balances worked by hand. */
class WaterModelTest {
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final TestMethod TEST = TestInputs.method(ALKALINITY, "test", 0.2, 0);

    private static WaterModel minerals(TestInputs inputs, double reaction) {
        return model(inputs, reaction, EnumSet.of(ALKALINITY, CALCIUM, MAGNESIUM, NITRATE, SALINITY));
    }

    private static WaterModel alkalinity(TestInputs inputs, double reaction) {
        return model(inputs, reaction, EnumSet.of(ALKALINITY));
    }

    private static WaterModel model(TestInputs inputs, double reaction, Set<WaterQuantity> quantities) {
        Inputs built = inputs.inputs();
        return new WaterModel(built, quantities, Kits.of(built, quantities), reaction, null);
    }

    /** Moves a belief of certain levels on for a day. */
    private static Belief dayLater(WaterModel model, Belief start) {
        LinearFilter filter = new LinearFilter(start);
        filter.pass(model.passage(model.structure().stretch(1), 0));
        return filter.belief();
    }

    /**
     * Example 3.1: level 8.0 ± 0.2, use 0.60 ± 0.3, doses 0.50 a day, noise 0.05 and 0.03, tests ± 0.2; to half of the last
     * printed digit.
     */
    @Test
    void followsTheWorkedExampleOfALevelAndItsUse() {
        // Kept systems have 8 ± 2 dKH; with this statement beside it the start is 8.0 ± 0.2.
        double stated = Math.sqrt(1 / (1 / (0.2 * 0.2) - 1 / (2.0 * 2.0)));
        Inputs inputs = new TestInputs()
                .expecting(ALKALINITY, new Known(8.0, stated), new Known(0.60, 0.3))
                .dosed(ALKALINITY, 0.50)
                .read(TEST, 1, 7.95)
                .read(TEST, 2, 7.80)
                .read(TEST, 4, 7.75)
                .read(TEST, 7, 7.30)
                .inputs();
        Set<WaterQuantity> alone = EnumSet.of(ALKALINITY);
        WaterModel model = new WaterModel(inputs, alone, Kits.of(inputs, alone), 0, null);
        Timeline timeline = Timeline.of(model);
        double[] sizes = new double[2];
        for (int i = 0; i < 2; i++) {
            boolean ofUse = model.noises().get(i).part() == WaterStates.Noise.Part.USE;
            sizes[i] = (ofUse ? 0.03 : 0.05) * DEGREE;
        }
        timeline.shake(sizes);
        Reckoning reckoning = Reckoning.kept(timeline, Evidence.of(timeline));
        double[][] printed = {
            {0.0500, 0.1728, 7.9384, 0.5738, 0.1753, 0.2087},
            {-0.0646, 0.1590, 7.8163, 0.6002, 0.1730, 0.1339},
            {0.1342, 0.2144, 7.7250, 0.5664, 0.1804, 0.0783},
            {-0.2257, 0.2037, 7.3443, 0.6024, 0.1793, 0.0603}
        };
        double[] level = model.trendRow(ALKALINITY);
        double[] use = model.useRow(ALKALINITY);
        for (int i = 0; i < printed.length; i++) {
            Innovation surprise = reckoning.surprises()[i];
            Belief belief = reckoning.moments().get(reckoning.arrivals()[i]).filtered();
            double[] found = {
                surprise.value() / DEGREE,
                surprise.variance() / DEGREE / DEGREE,
                belief.mean(level) / DEGREE,
                belief.mean(use) / DEGREE,
                belief.standardError(level) / DEGREE,
                belief.standardError(use) / DEGREE
            };
            assertThat(found).as("reading " + i).containsExactly(printed[i], within(5e-5));
        }
    }

    /** Example 2.10: for each dKH 7.008 mg/L of calcium and 0.0845 of magnesium, at a magnesium share of 0.0195. */
    @Test
    void skeletonsTakeCalciumAndMagnesiumAlong() {
        WaterModel model = minerals(new TestInputs().expecting(ALKALINITY, null, new Known(1, 0.1)), 0);
        Belief before = model.start();
        Belief after = dayLater(model, before);
        double alkalinity = fall(model, before, after, ALKALINITY);
        assertThat(alkalinity).isCloseTo(1, within(1e-9));
        assertThat(fall(model, before, after, CALCIUM)).isCloseTo(7.008, within(0.003));
        assertThat(fall(model, before, after, MAGNESIUM)).isCloseTo(0.0845, within(0.0002));
    }

    private static double fall(WaterModel model, Belief before, Belief after, WaterQuantity quantity) {
        double[] row = model.trendRow(quantity);
        return (before.mean(row) - after.mean(row)) / TestInputs.one(quantity);
    }

    /** Example 3.4: nitrate that rises by 10 mg/L costs 0.1613 meq/L, 0.452 dKH. */
    @Test
    void nitrateThatBuildsUpTakesAlkalinity() {
        WaterModel model = minerals(
                new TestInputs()
                        .expecting(ALKALINITY, null, new Known(0, 0.1))
                        .expecting(NITRATE, null, new Known(-10, 0.1)),
                0);
        Belief after = dayLater(model, model.start());
        assertThat(fall(model, model.start(), after, NITRATE)).isCloseTo(-10, within(1e-9));
        assertThat(fall(model, model.start(), after, ALKALINITY)).isCloseTo(0.452, within(0.0005));
    }

    @Test
    void dilutionTakesEverythingInProportion() {
        WaterModel model = minerals(
                new TestInputs()
                        .expecting(ALKALINITY, new Known(7, 1), new Known(0, 0.1))
                        .expecting(SALINITY, new Known(35, 1), new Known(0.35, 0.1)),
                0);
        Belief after = dayLater(model, model.start());
        assertThat(fall(model, model.start(), after, SALINITY)).isCloseTo(0.35, within(1e-9));
        assertThat(fall(model, model.start(), after, ALKALINITY)).isCloseTo(0.07, within(1e-9));
        assertThat(fall(model, model.start(), after, CALCIUM)).isCloseTo(4.2, within(1e-9));
    }

    /** Dosed 0.2 dKH a day more than is used at 8 dKH, of which 2 % a day for each per cent: at rest 0.8 dKH higher. */
    @Test
    void calcificationFollowsAlkalinityToWhereDosesAreUsed() {
        double reaction = 0.25;
        WaterModel model = minerals(
                new TestInputs().expecting(ALKALINITY, null, new Known(1, 0.1)).dosed(ALKALINITY, 1.2), reaction);
        LinearFilter filter = new LinearFilter(model.start());
        filter.pass(model.passage(model.structure().stretch(60), 0));
        double[] level = model.trendRow(ALKALINITY);
        assertThat(filter.belief().mean(level) / DEGREE).isCloseTo(8.8, within(1e-5));
        assertThat(filter.belief().mean(model.useRow(ALKALINITY)) / DEGREE).isCloseTo(1.2, within(1e-5));
        // Half way after ln 2 / k.
        LinearFilter sooner = new LinearFilter(model.start());
        sooner.pass(model.passage(model.structure().stretch(Math.log(2) / reaction), 0));
        assertThat(sooner.belief().mean(level) / DEGREE).isCloseTo(8.4, within(1e-9));
    }

    @Test
    void whatIsKnownOfTheUseAtTheStartDoesNotDependOnTheLevel() {
        WaterModel model = alkalinity(new TestInputs().expecting(ALKALINITY, null, new Known(1, 0.1)), 0.25);
        assertThat(model.start().mean(model.useRow(ALKALINITY)) / DEGREE).isCloseTo(1, within(1e-12));
        assertThat(model.start().standardError(model.useRow(ALKALINITY)) / DEGREE)
                .isCloseTo(0.1, within(1e-9));
    }

    /** A fifth changed: levels move by a fifth of the difference, what is not known of them shrinks to four fifths. */
    @Test
    void aWaterChangeMovesLevelsAndTheirDoubtButNotTheUse() {
        WaterModel model = minerals(new TestInputs().expecting(ALKALINITY, null, new Known(1, 0.1)), 0);
        LinearFilter filter = new LinearFilter(model.start());
        filter.pass(model.renewal(new Renewal(0, 0.2, Map.of(ALKALINITY, new Known(7 * DEGREE, 0.5 * DEGREE)))));
        double[] level = model.trendRow(ALKALINITY);
        assertThat(filter.belief().mean(level) / DEGREE).isCloseTo(8 - 0.2, within(1e-8));
        assertThat(filter.belief().standardError(level) / DEGREE)
                .isCloseTo(Math.hypot(0.8 * 2, 0.2 * 0.5), within(1e-8));
        assertThat(filter.belief().mean(model.useRow(ALKALINITY)) / DEGREE).isCloseTo(1, within(1e-8));
        assertThat(filter.belief().mean(model.trendRow(CALCIUM)))
                .isEqualTo(model.start().mean(model.trendRow(CALCIUM)));
    }
}
