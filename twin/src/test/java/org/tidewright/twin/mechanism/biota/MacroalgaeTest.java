package org.tidewright.twin.mechanism.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.light.Lamp;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A mat of macroalgae under a lamp that never goes out, in a lake that it cannot use up, against Verhulst's curve. */
class MacroalgaeTest {
    private static final double DAY = 86_400;
    private static final double LIT = 0.09;

    /** 0.3 kg of dry mass to the lit square metre. */
    private static final double GREATEST = 0.3 * LIT;

    /** 0.12 a day over days of twelve lit hours is 0.24 while lit. */
    private static final double WHILE_LIT = 0.24;

    /** tanh(200/100), half-saturations of 2 and 0.2 µmol/L in water of 100 and 10, nitrate found to 100 in 100.1. */
    private static final double SHARE = Math.tanh(2) * (100.0 / 102) * (10 / 10.2) * (100 / 100.1);

    /** Nitrogen is 2.5 % of dry mass. */
    private static final double NITROGEN = 0.025 / 14.0067e-3;

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Body algae = pool("algae");
    private final Body waste = pool("waste");

    private Body pool(String name) {
        return lake.builder().pool(name, Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
    }

    private Setting setting(String name, double value) {
        return lake.builder().setting(name, value);
    }

    private State stand(double lossPerDay, double grams, double lightStrength) {
        Lamp lamp = new Lamp(
                "lamp",
                setting("starts", 0),
                setting("hours", DAY),
                setting("strength", lightStrength),
                0,
                Drawn.exactly(200e-6),
                lake.mains());
        Parameter loss = lake.exactly("loss", "1/s", lossPerDay / DAY);
        lake.with(new Macroalgae(
                "mat",
                lake.water(),
                algae,
                waste,
                lake.world(),
                new Lamps(List.of(lamp)),
                setting("lit area", LIT),
                Drawn.exactly(0.3),
                lake.exactly("growth", "1/s", 0.12 / DAY),
                loss,
                lake.exactly("light saturation", "mol/(m^2*s)", 100e-6)));
        network = lake.builder().build();
        double nitrogen = Macroalgae.nitrogenOf(grams * 1e-3);
        return lake.filled(network, 25, 0.2)
                .dissolve(lake.water(), Stock.ALKALINITY, 2.5)
                .dissolve(lake.water(), Stock.INORGANIC_CARBON, 2.2)
                .dissolve(lake.water(), Stock.NITRATE, 0.1)
                .dissolve(lake.water(), Stock.PHOSPHATE, 0.01)
                .set(algae, Stock.ORGANIC_NITROGEN, nitrogen)
                .set(algae, Stock.ORGANIC_CARBON, nitrogen * Macroalgae.TISSUE.carbon())
                .set(algae, Stock.ORGANIC_PHOSPHORUS, nitrogen * Macroalgae.TISSUE.phosphorus());
    }

    private Network network = new TestVessel(1, 1).builder().build();

    private double dry(State state) {
        return state.get(algae, Stock.ORGANIC_NITROGEN) / NITROGEN;
    }

    @Test
    void aMatThatLosesNothingGrowsToItsGreatestMass() {
        State state = stand(0, 1, 1);
        Run run = TestVessel.run(network, state);
        for (int day : new int[] {5, 10, 20, 80}) {
            run.until(day * DAY);
            double closed = GREATEST / (1 + (GREATEST / 1e-3 - 1) * Math.exp(-WHILE_LIT * SHARE * day));
            assertThat(dry(state)).as("day %d", day).isCloseTo(closed, withinPercentage(0.05));
        }
        assertThat(dry(state)).isCloseTo(GREATEST, withinPercentage(0.01));
    }

    /** With a loss r it is Verhulst's curve of g = mu f - r and W_max (1 - r / (mu f)). */
    @Test
    void aMatThatBreathesSettlesWhereGrowthMeetsLoss() {
        State state = stand(0.02, 1, 1);
        Run run = TestVessel.run(network, state);
        double grown = WHILE_LIT * SHARE;
        double settled = GREATEST * (1 - 0.02 / grown);
        for (int day : new int[] {5, 10, 20, 80}) {
            run.until(day * DAY);
            double closed = settled / (1 + (settled / 1e-3 - 1) * Math.exp(-(grown - 0.02) * day));
            assertThat(dry(state)).as("day %d", day).isCloseTo(closed, withinPercentage(0.05));
        }
    }

    @Test
    void inTheDarkItDwindlesAndHalfOfThatComesToLieOnTheGround() {
        State state = stand(0.02, 20, 0);
        double before = state.get(algae, Stock.ORGANIC_NITROGEN);
        TestVessel.run(network, state).until(30 * DAY);
        assertThat(dry(state)).isCloseTo(20e-3 * Math.exp(-0.6), withinPercentage(0.01));
        double lost = before - state.get(algae, Stock.ORGANIC_NITROGEN);
        // It breathes as in well-aired water, but for the few millionths of its oxygen that the lake loses.
        assertThat(state.get(waste, Stock.ORGANIC_NITROGEN)).isCloseTo(lost / 2, withinPercentage(1e-4));
    }

    /** In water without oxygen nothing breathes: it only falls apart, by r/2, exp(-0.3) in thirty days. */
    @Test
    void inTheDarkWithoutOxygenItOnlyFallsApart() {
        State state = stand(0.02, 20, 0);
        state.dissolve(lake.water(), Stock.OXYGEN, 0);
        TestVessel.run(network, state).until(30 * DAY);
        assertThat(dry(state)).isCloseTo(20e-3 * Math.exp(-0.3), withinPercentage(0.01));
    }

    /** Ammonia and nitrate both run out in a closed vessel, and neither falls below none. */
    @Test
    void nitrateIsNotTakenWhereThereIsNone() {
        State state = stand(0, 20, 1);
        state.dissolve(lake.water(), Stock.NITRATE, 1e-9).dissolve(lake.water(), Stock.AMMONIA, 1e-6);
        Run run = TestVessel.run(network, state);
        run.until(2 * DAY);
        assertThat(run.now().stock(lake.water(), Stock.NITRATE)).isGreaterThan(-1e-9);
        assertThat(run.now().concentration(lake.water(), Stock.AMMONIA)).isLessThan(1e-6);
    }

    /** Grown on nitrate: alkalinity +1 for each nitrogen and for each phosphorus, Wolf-Gladrow et al. 2007. */
    @Test
    void growthOnNitrateLeavesTheAlkalinityThatChargeAsksFor() {
        State state = stand(0, 1, 1);
        double alkalinity = state.get(lake.water(), Stock.ALKALINITY);
        double nitrogen = state.get(algae, Stock.ORGANIC_NITROGEN);
        double phosphorus = state.get(algae, Stock.ORGANIC_PHOSPHORUS);
        TestVessel.run(network, state).until(20 * DAY);
        double built = state.get(algae, Stock.ORGANIC_NITROGEN)
                - nitrogen
                + state.get(algae, Stock.ORGANIC_PHOSPHORUS)
                - phosphorus;
        assertThat(built).isGreaterThan(1e-2);
        assertThat(state.get(lake.water(), Stock.ALKALINITY) - alkalinity).isCloseTo(built, within(1e-6));
    }

    @Test
    void withoutNitrateTheMatGrowsOnAmmoniaAndTakesNone() {
        State state =
                stand(0, 1, 1).dissolve(lake.water(), Stock.NITRATE, 0).dissolve(lake.water(), Stock.AMMONIA, 1e-3);
        TestVessel.run(network, state).until(20 * DAY);
        assertThat(dry(state)).isGreaterThan(2e-3);
        assertThat(state.get(lake.water(), Stock.NITRATE)).isZero();
    }
}
