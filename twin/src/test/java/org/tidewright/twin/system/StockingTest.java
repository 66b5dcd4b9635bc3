package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.biota.Hunger;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Fish that come, go, eat and starve in the nano of the examples: a goby of 4 g and two clownfish of 9 g. */
class StockingTest {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;
    private static final double MASS = 0.013;

    private final SystemTwin twin = SystemTwin.of(TestPlans.example("window-nano"));
    private final State state = twin.start(twin.network().usualParameters());
    private final Run run = new Run(twin.network(), twin.network().usualParameters(), state, Accuracy.OF_A_YEAR);
    private final Body flesh = twin.pools().fish();

    private void set(String lever, double value) {
        run.set(twin.levers().get(lever).setting(), value);
    }

    @Test
    void theFishOfThePlanAreItsMass() {
        assertThat(twin.fish(run.now())).isCloseTo(MASS, withinPercentage(1e-9));
    }

    @Test
    void fishPutInAddTheirMassAndThoseTakenOutTakeTheirShareOfTheGuts() {
        set("added fish", MASS / 2);
        run.until(1);
        assertThat(twin.fish(run.now())).isCloseTo(1.5 * MASS, withinPercentage(0.01));
        // They are fed at 19:00; three hours later the guts are full.
        run.until(22 * HOUR);
        double gut = state.get(twin.pools().gut(), Stock.ORGANIC_NITROGEN);
        double mass = twin.fish(run.now());
        set("removed fish", mass / 2);
        run.until(22 * HOUR + 1);
        assertThat(twin.fish(run.now())).isCloseTo(mass / 2, withinPercentage(0.01));
        assertThat(state.get(twin.pools().gut(), Stock.ORGANIC_NITROGEN)).isCloseTo(gut / 2, withinPercentage(0.1));
    }

    @Test
    void twiceTheFishBurnTwiceTheReserveTheyHaveNot() {
        set("feed", 0);
        Run alone = new Run(twin.network(), twin.network().usualParameters(), state.copy(), Accuracy.OF_A_YEAR);
        alone.set(twin.levers().get("feed").setting(), 0);
        set("added fish", MASS);
        for (Run each : new Run[] {run, alone}) {
            each.until(4 * DAY);
        }
        double two = run.now().stock(flesh, Stock.ORGANIC_CARBON);
        double one = alone.now().stock(flesh, Stock.ORGANIC_CARBON);
        run.until(5 * DAY);
        alone.until(5 * DAY);
        double burntByTwo = two - run.now().stock(flesh, Stock.ORGANIC_CARBON);
        double burntByOne = one - alone.now().stock(flesh, Stock.ORGANIC_CARBON);
        // What is left of the one reserve spares both the same little.
        assertThat(burntByTwo / burntByOne).isCloseTo(2, within(0.1));
    }

    /** Fish that die are carrion with all they held; half of it has fallen apart within two days (Carrion). */
    @Test
    void fishThatDieAreFoundAsCarrion() {
        double held = state.get(flesh, Stock.ORGANIC_PHOSPHORUS);
        set("dying fish", 1);
        run.until(1);
        assertThat(state.get(flesh, Stock.ORGANIC_PHOSPHORUS)).isZero();
        assertThat(state.get(twin.pools().carrion(), Stock.ORGANIC_PHOSPHORUS)).isCloseTo(held, withinPercentage(0.01));
    }

    @Test
    void whereNoFishAreLeftTheMealRotsInTheWater() {
        set("dying fish", 1);
        run.until(19 * HOUR + 1);
        assertThat(state.get(twin.pools().stomach(), Stock.ORGANIC_NITROGEN)).isZero();
        run.until(20 * DAY);
        assertThat(state.get(flesh, Stock.ORGANIC_NITROGEN)).isZero();
        assertThat(twin.fish(run.now())).isZero();
    }

    /** Sardines without food at 20 °C lasted up to 57 days (Queiros et al. 2021, Mar. Environ. Res. 170, 105441, abstract). */
    @Test
    void withoutFoodFatGoesFirstThenFleshThenLife() {
        set("feed", 0);
        run.until(7 * DAY);
        double nitrogen = state.get(flesh, Stock.ORGANIC_NITROGEN);
        assertThat(twin.fish(run.now()) / MASS).isGreaterThan(0.93);
        assertThat(Hunger.fat(state.get(flesh, Stock.ORGANIC_CARBON), nitrogen)).isLessThan(0.7);
        run.until(57 * DAY);
        assertThat(twin.fish(run.now()) / MASS).isLessThan(0.05);
    }

    @Test
    void fedAsPlannedNoneDiesOfHunger() {
        run.until(84 * DAY);
        assertThat(state.get(twin.pools().carrion(), Stock.ORGANIC_NITROGEN))
                .isLessThan(1e-3 * state.get(flesh, Stock.ORGANIC_NITROGEN));
    }

    // ── all fish together ──

    /** Harbour room: (95/50)^0.8 of one growing among 95, 2 of 14, 22, 5 of 6 and 2 of 5 g, worked by hand: 0.403. */
    @Test
    void growingFishCountByTheirShareOfTheBreath() {
        Shoal shoal = Shoal.of(TestPlans.example("harbour-room").inhabitants());
        // 0.10 for grown and 0.25 for growing fish.
        assertThat(shoal.diet().nitrogen().retained()).isCloseTo(0.10 + 0.15 * 0.4031, within(1e-5));
        assertThat(shoal.mass()).isCloseTo(0.185, within(1e-12));
    }

    /** 100 mg/(kg d) of 50 g, and by mass^0.75: 3 g lose 0.606 mg a day and 5 g 0.889. */
    @Test
    void everyFishFastsByItsOwnMass() {
        Shoal shoal = Shoal.of(TestPlans.example("window-nano").inhabitants());
        double milligrams = shoal.measures().fasting() * 14.007e3 * DAY;
        assertThat(milligrams).isCloseTo(0.606 + 2 * 0.889, withinPercentage(0.2));
    }

    // ── a plan that names no fish ──

    private static SystemTwin without(String kept) {
        String text = ChangedText.of(
                Examples.text("window-nano"),
                "    - {name: goby, mass: 3 g, count: 1}\n    - {name: clownfish, mass: 5 g, count: 2}\n",
                kept);
        return SystemTwin.of(TestPlans.read(kept.isEmpty() ? text.replace("  fish:\n", "") : text));
    }

    private static Run begun(SystemTwin twin, State state) {
        return new Run(twin.network(), twin.network().usualParameters(), state, Accuracy.OF_A_YEAR);
    }

    private static State clean(SystemTwin twin) {
        return twin.newlyFilled(twin.network().usualParameters(), 1e-3, 1e-3);
    }

    /** What is not known of them is taken for a grown fish of ten grams: such a fish in the plan gives the same course. */
    @Test
    void theFirstFishOfAnEmptySystemLivesAsOneThatWasPlanned() {
        SystemTwin empty = without("");
        SystemTwin planned = without("    - {name: fish, mass: 10 g, count: 1}\n");
        assertThat(empty.network().parameters()).hasSameSizeAs(planned.network().parameters());
        State first = clean(empty);
        State second = clean(planned);
        for (SystemTwin each : new SystemTwin[] {empty, planned}) {
            State from = each == empty ? first : second;
            Run run = begun(each, from);
            run.set(each.levers().get("added fish").setting(), 0.010);
            run.until(14 * DAY);
        }
        assertThat(first.get(empty.pools().reserve(), Stock.ORGANIC_CARBON)).isPositive();
        for (Stock stock : new Stock[] {Stock.AMMONIA, Stock.OXYGEN, Stock.PHOSPHATE}) {
            assertThat(first.get(empty.display(), stock))
                    .as(stock.name())
                    .isCloseTo(second.get(planned.display(), stock), withinPercentage(1e-9));
        }
    }

    @Test
    void whereNoFishWereAddedTheMealsRotAsInAnySystemWithoutFish() {
        SystemTwin empty = without("");
        State from = clean(empty);
        begun(empty, from).until(10 * DAY);
        for (Body body : new Body[] {
            empty.pools().fish(), empty.pools().stomach(), empty.pools().reserve()
        }) {
            assertThat(from.get(body, Stock.ORGANIC_CARBON)).isZero();
        }
        assertThat(from.get(empty.display(), Stock.AMMONIA)).isPositive();
    }

    @Test
    void fishThatComeGoAndDieInAnEmptySystemMakeAndLoseNothing() {
        SystemTwin empty = without("");
        State from = clean(empty);
        Map<Balance, Double> before = new EnumMap<>(Balance.class);
        for (Balance balance : Balance.values()) {
            before.put(balance, from.total(balance));
        }
        double water = from.total(Balance.WATER);
        Run run = begun(empty, from);
        run.set(empty.levers().get("added fish").setting(), 0.020);
        run.setAt(20 * DAY, empty.levers().get("removed fish").setting(), 0.005);
        run.setAt(40 * DAY, empty.levers().get("dying fish").setting(), 0.005);
        run.until(60 * DAY);
        assertThat(empty.fish(run.now())).isBetween(0.005, 0.015);
        for (Balance balance : new Balance[] {Balance.CARBON, Balance.NITROGEN, Balance.PHOSPHORUS, Balance.OXYGEN}) {
            // A cubic metre of this water holds some 2 mol of carbon and 0.2 of each of the others.
            assertThat(from.total(balance))
                    .as(balance.name())
                    .isCloseTo(before.getOrDefault(balance, Double.NaN), within(1e-9 * water));
        }
    }
}
