package org.tidewright.twin.rehearsal;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.testkit.ChangedText;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.RandomPlans;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.Plumbing;

/** What must hold of the hours of an outage on any plan. */
class OutagePropertyTest {
    private static final int PLANS = 100;
    private static final int FEWER_PLANS = 20;
    private static final double HOUR = 3600;

    private static final List<Bound> BOUNDS = List.of(
            new Bound("warm", Bound.Quantity.TEMPERATURE, 28, false),
            new Bound("cold", Bound.Quantity.TEMPERATURE, 22, true),
            new Bound("short of oxygen", Bound.Quantity.OXYGEN, 0.1, true));

    private static Outage outage(Plan plan, OutageOrder order) {
        if (plan.sump() == null) {
            return new Outage(plan, order, Outage.volumesOf(plan), BOUNDS);
        }
        PowerCut cut = new PowerCut(plan, new Plumbing.Assumptions(true, false));
        return new Outage(plan, order, Outage.volumesAfter(cut, cut.everythingStops()), BOUNDS);
    }

    private static OutageOrder order(double hours, double outdoors, boolean backupUsed) {
        return new OutageOrder(hours, Outdoors.constant(outdoors), true, backupUsed);
    }

    /** All parameters within what they may be, from one draw. */
    private static double[] parameters(Outage outage, Draw draw) {
        return outage.twin().network().parameters().stream()
                .mapToDouble(parameter -> parameter.at(draw.between(-1.6, 1.6)))
                .toArray();
    }

    private static double size(State state, Balance balance, Outage outage) {
        double size = 0;
        for (Body body : outage.twin().network().bodies()) {
            for (Stock stock : body.held()) {
                size += Math.abs(balance.weight(stock) * state.get(body, stock));
            }
        }
        return size;
    }

    /** The ledgers of all that balances, over tank, room, air, weather, batteries and all that breathes. */
    @Test
    void waterSaltHeatOxygenAndEveryElementAreConservedOnAnyPlan() {
        SeededCases.check(PLANS, draw -> {
            Outage outage = outage(RandomPlans.any(draw), order(24, draw.between(-20, 45), draw.whole(0, 1) == 1));
            double[] parameters = parameters(outage, draw);
            Outage.Failure failure = outage.failure(parameters);
            State state = failure.state();
            State start = state.copy();
            failure.run().until(outage.begins() + 24 * HOUR);
            for (Balance balance : Balance.values()) {
                assertThat(state.total(balance))
                        .as(balance.name())
                        .isCloseTo(start.total(balance), within(1e-11 * size(state, balance, outage)));
            }
        });
    }

    /** Nobody feeds, no pump doses, no lamp shines, no house heats. */
    @Test
    void withoutMainsNothingIsFedDosedToppedUpHeatedOrLit() {
        SeededCases.check(FEWER_PLANS, draw -> {
            Outage outage = outage(RandomPlans.any(draw), order(36, draw.between(0, 30), false));
            SystemTwin twin = outage.twin();
            double[] parameters = twin.network().usualParameters();
            Outage.Failure failure = outage.failure(parameters);
            State state = failure.state();
            State start = state.copy();
            Run run = failure.run();
            for (int hour = 1; hour <= 36; hour++) {
                run.until(outage.begins() + hour * HOUR);
                assertThat(twin.lightOverDisplay(run.now())).as("light").isZero();
            }
            Body reservoir = twin.network().body("reservoir");
            assertThat(state.get(reservoir, Stock.WATER)).isEqualTo(start.get(reservoir, Stock.WATER));
            for (String giver : List.of("mains", "house")) {
                Body body = twin.network().body(giver);
                assertThat(state.get(body, Stock.HEAT)).as(giver).isEqualTo(start.get(body, Stock.HEAT));
            }
            Body store = twin.network().body("store");
            for (Stock stock : List.of(Stock.ORGANIC_NITROGEN, Stock.CALCIUM, Stock.SALT)) {
                assertThat(state.get(store, stock)).as(stock.name()).isEqualTo(start.get(store, stock));
            }
        });
    }

    /** What the drain-down moved is moved, to a few decilitres by which a running display stands off its usual level. */
    @Test
    void theHoursBeginWithTheWaterWhereTheMinutesLeftIt() {
        SeededCases.check(FEWER_PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            PowerCut cut = new PowerCut(plan, new Plumbing.Assumptions(true, false));
            Basins.Volumes settled = Outage.volumesAfter(cut, cut.everythingStops());
            Outage outage = new Outage(plan, order(24, 20, false), settled, BOUNDS);
            State start =
                    outage.failure(outage.twin().network().usualParameters()).state();
            double display = start.get(outage.twin().display(), Stock.WATER);
            double sump = start.get(requireNonNull(outage.twin().sump()), Stock.WATER);
            assertThat(display).isCloseTo(settled.display(), within(0.5e-3));
            assertThat(sump).isCloseTo(settled.sump(), within(0.05 * settled.sump()));
        });
    }

    @Test
    void noWaterGrowsWarmerThanTheWarmestOfStartRoomAndWeather() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.any(draw);
            double outdoors = draw.between(-10, 45);
            Outage outage = outage(plan, order(24, outdoors, false));
            double water = plan.water().temperature().in("degC");
            double[] warmest = {Double.NaN};
            follow(outage, 24, now -> {
                Body display = outage.twin().display();
                if (Double.isNaN(warmest[0])) {
                    // Where pumps and lamps gave more heat than the house can take, the room began above its usual.
                    warmest[0] = Math.max(
                            outdoors,
                            Math.max(water, now.temperature(outage.twin().room())));
                }
                assertThat(now.temperature(display)).as("display").isLessThanOrEqualTo(warmest[0] + 0.01);
                if (outage.twin().sump() != null) {
                    assertThat(now.temperature(outage.twin().sump())).as("sump").isLessThanOrEqualTo(warmest[0] + 0.01);
                }
            });
        });
    }

    @Test
    void oxygenNeverPassesSaturationNorFallsBelowNone() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.any(draw);
            Outage outage = outage(plan, order(48, draw.between(0, 40), false));
            Body display = outage.twin().display();
            double[] start = {Double.NaN};
            follow(outage, 48, now -> {
                start[0] = Double.isNaN(start[0]) ? now.oxygen(display) : start[0];
                double saturation = OxygenSolubility.perVolume(now.temperature(display), now.salinity(display));
                assertThat(now.oxygen(display)).isLessThanOrEqualTo(Math.max(start[0], saturation) + 1e-6);
                double each = now.stock(display, Stock.OXYGEN) / now.volume(display);
                assertThat(each).as("mol/m³ left").isGreaterThan(-1e-3);
            });
        });
    }

    @Test
    void hotterWeatherNeverLeavesTheTankCooler() {
        SeededCases.check(FEWER_PLANS, draw -> {
            Plan plan = RandomPlans.any(draw);
            double outdoors = draw.between(-10, 40);
            Outage.Result mild = outage(plan, order(24, outdoors, false)).rehearse(1);
            Outage.Result hot = outage(plan, order(24, outdoors + 5, false)).rehearse(1);
            for (int i = 0; i < mild.time().length; i++) {
                assertThat(hot.displayTemperature().middle()[i])
                        .isGreaterThanOrEqualTo(mild.displayTemperature().middle()[i] - 1e-3);
            }
        });
    }

    @Test
    void salinityRisesWithWhatEvaporatesAndSaltStaysInTheWater() {
        SeededCases.check(FEWER_PLANS, draw -> {
            Outage outage = outage(RandomPlans.any(draw), order(24, draw.between(10, 40), false));
            Body display = outage.twin().display();
            double[] salt = {-1, 0};
            follow(outage, 24, now -> {
                double mass = now.volume(display) * now.salinity(display);
                if (salt[0] < 0) {
                    salt[0] = mass;
                    salt[1] = now.volume(display);
                }
                assertThat(mass).as("salt of the display").isCloseTo(salt[0], within(1e-6 * salt[0]));
                assertThat(now.volume(display)).as("water of the display").isLessThanOrEqualTo(salt[1] * 1.001);
            });
        });
    }

    @Test
    void displayAndSumpPartWhenTheFlowStops() {
        Outage outage = outage(TestPlans.example("harbour-room"), order(24, 5, false));
        Outage.Result result = outage.rehearse(1);
        double[] display = result.displayTemperature().middle();
        double[] sump = requireNonNull(result.sumpTemperature()).middle();
        int last = display.length - 1;
        assertThat(sump[0]).as("one water while it still runs").isCloseTo(display[0], within(1e-9));
        assertThat(display[last] - sump[last])
                .as("the smaller body cools ahead of the larger")
                .isGreaterThan(0.1);
    }

    @Test
    void rangesAreInOrderAndTheSameOrderGivesTheSameFigures() {
        for (String name : List.of("harbour-room", "fifty-five-gallon", "window-nano")) {
            Plan plan = TestPlans.example(name);
            Outage.Result once = outage(plan, order(24, 35, true)).rehearse(50);
            Outage.Result again = outage(plan, order(24, 35, true)).rehearse(50);
            assertThat(again.displayTemperature().high())
                    .isEqualTo(once.displayTemperature().high());
            assertThat(again.displayOxygen().low())
                    .isEqualTo(once.displayOxygen().low());
            assertThat(again.firstTimes()).isEqualTo(once.firstTimes());
            once.firstTimes().forEach((bound, time) -> {
                assertThat(time.low()).as(bound).isLessThanOrEqualTo(time.middle());
                assertThat(time.middle()).as(bound).isLessThanOrEqualTo(time.high());
            });
            for (Band band : List.of(once.displayTemperature(), once.displayOxygen(), once.roomTemperature())) {
                for (int i = 0; i < band.low().length; i++) {
                    assertThat(band.low()[i]).isLessThanOrEqualTo(band.middle()[i]);
                    assertThat(band.middle()[i]).isLessThanOrEqualTo(band.high()[i]);
                }
            }
        }
    }

    @Test
    void aBatteryForTheAirPumpGivesTheAnimalsMoreTime() {
        Plan plan = TestPlans.example("harbour-room");
        assertThat(oxygenHours(plan, true)).isGreaterThan(oxygenHours(plan, false));
    }

    @Test
    void moreFishLeaveLessTime() {
        String few = Examples.text("window-nano");
        Plan many = TestPlans.read(ChangedText.of(few, "mass: 5 g, count: 2", "mass: 5 g, count: 8"));
        assertThat(oxygenHours(many, false)).isLessThan(oxygenHours(TestPlans.read(few), false));
    }

    private static double oxygenHours(Plan plan, boolean backupUsed) {
        Outage.Result result = outage(plan, order(72, 25, backupUsed)).rehearse(50);
        return requireNonNull(result.firstTimes().get("short of oxygen")).middle();
    }

    /** The usual course, looked at every half hour. */
    private static void follow(Outage outage, double hours, Consumer<View> look) {
        int samples = (int) (2 * hours) + 1;
        double[] times = new double[samples];
        for (int i = 0; i < samples; i++) {
            times[i] = outage.begins() + i * HOUR / 2;
        }
        outage.failure(outage.twin().network().usualParameters())
                .run()
                .until(outage.begins() + hours * HOUR, times, (sample, now) -> look.accept(now));
    }
}
