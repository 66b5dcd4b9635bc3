package org.tidewright.twin.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Room;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.law.gas.OxygenDecline;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.tank.Water;

/**
 * Whole outages against worked examples: the 400 L tank whose heat balance (Churchill and Chu 1975, Carrier's equation,
 * Stefan-Boltzmann, a lid by common practice) was integrated elsewhere, and the closed form of oxygen.
 */
class OutageTest {
    private static final ReferenceTable HEAT =
            ReferenceTable.read(OutageTest.class, "/reference/heat/worked_examples.csv");

    private static final double HOUR = 3600;
    private static final double GRAM_PER_MOL = 31.9988;
    private static final double HOURS = 60;
    private static final double LARGE = 400; // m² of floor, so that the tank does not warm the room

    private static final Bound WARM = new Bound("30 °C", Bound.Quantity.TEMPERATURE, 30, false);
    private static final Bound COLD = new Bound("20 °C", Bound.Quantity.TEMPERATURE, 20, true);

    /** A room that follows the weather with a time constant in hours, whatever the tank does. */
    private static Plan inRoomOf(double temperature, double timeConstant, String cover) {
        double capacity = LARGE * Room.Construction.MEDIUM.capacityPerArea();
        return TestPlans.workedTank(temperature, LARGE, capacity / (timeConstant * HOUR), cover);
    }

    private static double hoursTo(Bound bound, Plan plan, double outdoors) {
        OutageOrder order = new OutageOrder(HOURS, Outdoors.constant(outdoors), true, false);
        Outage outage = new Outage(plan, order, Outage.volumesOf(plan), List.of(bound));
        return (usual(outage).firstTime(bound.name()) - outage.begins()) / HOUR;
    }

    private static Run usual(Outage outage) {
        Run run = outage.failure(outage.twin().network().usualParameters()).run();
        run.until(outage.begins() + HOURS * HOUR);
        return run;
    }

    private static void check(String id, double got) {
        Close.relative(HEAT.row("id", id), "value", got, 1e-2);
    }

    @Test
    void aTankUnderALidWarmsWithTheRoomAsWorkedOut() {
        check("E5.21", hoursTo(WARM, inRoomOf(23, 4, "lid"), 35));
    }

    @Test
    void anOpenTankWarmsMoreSlowlySinceItEvaporatesAsWorkedOut() {
        check("E5.22a", hoursTo(WARM, inRoomOf(23, 4, "open"), 35));
    }

    @Test
    void aTankUnderALidCoolsWithTheRoomAsWorkedOut() {
        check("E5.26", hoursTo(COLD, inRoomOf(21, 8, "lid"), 10));
    }

    /**
     * The room of 12 m² and 40 W/K in frost, with the tank as its only heat. The example lets the room's vapour fall with
     * its temperature, from 1240 to 660 Pa; in the twin it follows from frosty air that comes in and water that comes off
     * the tank, and stays between 800 and 1040 Pa.
     */
    @Test
    void aRoomLeftToTheFrostTakesTheTankWithIt() {
        Plan plan = TestPlans.workedTank(21, 12, 40, "open");
        OutageOrder order = new OutageOrder(HOURS, Outdoors.constant(0), true, false);
        Outage outage = new Outage(plan, order, Outage.volumesOf(plan), List.of(COLD));
        double got = usual(outage).firstTime(COLD.name()) - outage.begins();
        check("E5.39", got / HOUR);
        Run run = outage.failure(outage.twin().network().usualParameters()).run();
        run.until(outage.begins() + got);
        check("E5.40", run.now().temperature(outage.twin().room()));
    }

    /**
     * Oxygen to 3 mg/L between the closed form (mass balance of thin-film gas transfer) with all breathing kept up, and
     * the one with as little as is left at 3 mg/L, both with the warmth of a room at the water's temperature.
     */
    @Test
    void oxygenFallsBetweenTheClosedFormsThatBracketIt() {
        Plan plan = inRoomOf(25.5, 8, "lid");
        Bound low = new Bound("3 mg/L", Bound.Quantity.OXYGEN, 3 / GRAM_PER_MOL, true);
        OutageOrder order = new OutageOrder(HOURS, Outdoors.constant(25.5), true, false);
        Outage outage = new Outage(plan, order, Outage.volumesOf(plan), List.of(low));
        Water water = outage.twin().water();
        double got = usual(outage).firstTime(low.name()) - outage.begins();

        double saturation = water.saturation();
        double full = 0.5 / GRAM_PER_MOL / HOUR; // mol/(m³ s), from 0.5 mg/(L h), for a tank of unnamed animals
        double km = 1.5; // mg/L, Michaelis and Menten 1913
        double left = 3 / (3 + km) / (6.714 / (6.714 + km)); // 6.714 mg/L: Garcia and Gordon 1992
        double velocity = 0.7 * 1.2 / 100 / HOUR; // m/s, a lid over still water
        double depth = 0.400 / 0.675;
        double start = water.oxygen();
        assertThat(got)
                .isBetween(
                        new OxygenDecline(saturation, full, velocity, depth)
                                .timeTo(start, 3 / GRAM_PER_MOL)
                                .orElseThrow(),
                        new OxygenDecline(saturation, left * full, velocity, depth)
                                .timeTo(start, 3 / GRAM_PER_MOL)
                                .orElseThrow());
    }

    @Test
    void timesDrawByDrawAreThoseOfTheRehearsal() {
        Plan plan = TestPlans.example("window-nano");
        Bound breathless = new Bound("breathless", Bound.Quantity.OXYGEN, 0.10, true);
        OutageOrder order = new OutageOrder(12, Outdoors.constant(10), true, true);
        Outage outage = new Outage(plan, order, Outage.volumesOf(plan), List.of(COLD, breathless));
        Map<String, FirstTime> rehearsed = outage.rehearse(20).firstTimes();
        Map<String, double[]> drawn = outage.firstTimes(20, Ensemble.Progress.UNWATCHED);
        assertThat(drawn).containsOnlyKeys(COLD.name(), breathless.name());
        // Where samples are taken a run does not stop, so that the two are the same bit for bit.
        drawn.forEach((name, times) -> assertThat(FirstTime.of(times)).isEqualTo(rehearsed.get(name)));
    }
}
