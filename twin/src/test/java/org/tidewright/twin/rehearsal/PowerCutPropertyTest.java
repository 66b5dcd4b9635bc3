package org.tidewright.twin.rehearsal;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.RandomPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Occurrence;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Place;
import org.tidewright.twin.tank.Plumbing;

/** What must hold of a power cut on any plan. */
class PowerCutPropertyTest {
    private static final int PLANS = 200;
    private static final int FEWER_PLANS = 40;

    private static final double MILLILITRE = 1e-6;

    /**
     * Within the step in which water begins to run over a rim, the state is read off a polynomial that is smooth where
     * the flow is not: the floor may be a few tenths of a millilitre short there.
     */
    private static final double LEAST_ON_THE_FLOOR = -0.5 * MILLILITRE;

    private static final double LEAST_ELSEWHERE = -1e-9;

    private static PowerCut cut(Plan plan, boolean holesClear, boolean checkValveWorks) {
        return new PowerCut(plan, new Plumbing.Assumptions(holesClear, checkValveWorks));
    }

    private static void balances(PowerCut.Result result) {
        double total = result.end().total(Stock.WATER);
        assertThat(result.conservationError()).as("water made or lost").isCloseTo(0, within(1e-13 * total));
        for (WaterMovement.Vessel vessel : result.movement().vessels()) {
            double least = vessel.place() == Place.FLOOR ? LEAST_ON_THE_FLOOR : LEAST_ELSEWHERE;
            for (double volume : vessel.volume()) {
                assertThat(volume).as("water in " + vessel.name()).isGreaterThanOrEqualTo(least);
            }
        }
    }

    /** What did not stay above: in the sump, in pipes, or on the floor. */
    private static double below(PowerCut.Result result) {
        double sum = 0;
        for (WaterMovement.Vessel vessel : result.movement().vessels()) {
            if (vessel.place() == Place.SUMP_SECTION || vessel.place() == Place.FLOOR) {
                sum += vessel.volume()[vessel.volume().length - 1];
            }
        }
        return sum;
    }

    private static double displayEnd(PowerCut.Result result) {
        double[] level = result.movement().vessel("display").level();
        return level[level.length - 1];
    }

    private static ReturnLine line(Plan plan) {
        return requireNonNull(plan.returnLine());
    }

    private static double crest(Plan plan) {
        return requireNonNull(plan.overflow()).crest().in("m");
    }

    @Test
    void noWaterIsMadeOrLostAndNoVesselRunsBelowEmpty() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            balances(cut(plan, draw.whole(0, 1) == 1, draw.whole(0, 1) == 1).everythingStops());
        });
    }

    @Test
    void theSameHoldsWhenThePowerReturnsAndWhenTheDrainsStop() {
        SeededCases.check(FEWER_PLANS, draw -> {
            PowerCut cut = cut(RandomPlans.withSump(draw), draw.whole(0, 1) == 1, false);
            State settled = cut.everythingStops().end();
            PowerCut.Result back = cut.powerReturns(settled, draw.whole(0, 1) == 1);
            balances(back);
            assertThat(back.spilled()).as("the floor keeps what it got").isGreaterThanOrEqualTo(0);
            balances(cut.drainsStop(draw.whole(0, 1) == 1));
        });
    }

    @Test
    void theDisplayKeepsWhatStandsBelowItsCrestAndItsMouths() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            boolean clear = draw.whole(0, 1) == 1;
            double mouth = line(plan).outlets().stream()
                    .mapToDouble(outlet -> outlet.lowerEdge().in("m"))
                    .min()
                    .orElseThrow();
            double kept = Math.min(crest(plan), mouth);
            assertThat(displayEnd(cut(plan, clear, false).everythingStops())).isGreaterThanOrEqualTo(kept - 1e-9);
        });
    }

    @Test
    void aHoleBreaksTheLineNoLowerThanAirTakesTimeToFillIt() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            PowerCut.Result result = cut(plan, true, false).everythingStops();
            double air = line(plan).outlets().stream()
                    .mapToDouble(outlet -> outlet.airHole() == null
                            ? outlet.lowerEdge().in("m")
                            : outlet.airHole().height().in("m"))
                    .min()
                    .orElseThrow();
            double kept = Math.min(crest(plan), air);
            // No line passes more than its bore at the speed of free fall from the display to the floor, for 5 s,
            // fading
            double bore = line(plan).pipe().bore().in("m");
            double fall = plan.display().bottomHeight().in("m")
                    + plan.display().height().in("m");
            double most = Math.PI / 4 * bore * bore * Math.sqrt(2 * 9.80665 * fall) * 2.5;
            double area = (plan.display().length().in("m")
                            - requireNonNull(plan.overflow()).box().length().in("m"))
                    * plan.display().width().in("m");
            assertThat(displayEnd(result)).isGreaterThanOrEqualTo(kept - most / area);
        });
    }

    @Test
    void airEntersAtTheHeightOfMouthOrHole() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            boolean clear = draw.whole(0, 1) == 1;
            PowerCut.Result result = cut(plan, clear, false).everythingStops();
            for (Occurrence occurrence : result.log()) {
                boolean mouth = occurrence.event().equals("return line siphon broken");
                if (!mouth && !occurrence.event().equals("return line air hole free")) {
                    continue;
                }
                Plumbing plumbing = Plumbing.of(plan, new Plumbing.Assumptions(clear, false));
                Run again = powerOff(plumbing, plumbing.runningState(), Accuracy.OF_WATER_LEVELS);
                again.until(occurrence.time());
                double level = again.now().level(plumbing.network().body("display"));
                List<Double> heights = new ArrayList<>();
                for (ReturnLine.Outlet outlet : line(plan).outlets()) {
                    if (mouth) {
                        heights.add(outlet.lowerEdge().in("m"));
                    } else if (outlet.airHole() != null) {
                        heights.add(outlet.airHole().height().in("m"));
                    }
                }
                assertThat(heights)
                        .as(occurrence.event())
                        .anySatisfy(height -> assertThat(level).isCloseTo(height, within(1e-6)));
            }
        });
    }

    @Test
    void aClearHoleAndAWorkingValveNeverLeaveLessRoom() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            double blocked = below(cut(plan, false, false).everythingStops());
            double clear = below(cut(plan, true, false).everythingStops());
            double held = below(cut(plan, true, true).everythingStops());
            assertThat(clear).as("hole clear").isLessThanOrEqualTo(blocked + MILLILITRE);
            assertThat(held).as("valve holds").isLessThanOrEqualTo(clear + MILLILITRE);
        });
    }

    @Test
    void halfTheToleranceChangesNoVolumeByAMillilitreAndNoTimeByATenthOfASecond() {
        SeededCases.check(PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            Plumbing plumbing = Plumbing.of(plan, new Plumbing.Assumptions(draw.whole(0, 1) == 1, false));
            State usual = plumbing.runningState();
            State finer = plumbing.runningState();
            Run usualRun = powerOff(plumbing, usual, Accuracy.OF_WATER_LEVELS);
            Run finerRun = powerOff(plumbing, finer, halved(Accuracy.OF_WATER_LEVELS));
            usualRun.until(600);
            finerRun.until(600);
            for (Body body : plumbing.places().keySet()) {
                assertThat(usual.get(body, Stock.WATER))
                        .as(body.name())
                        .isCloseTo(finer.get(body, Stock.WATER), within(MILLILITRE));
            }
            assertThat(usualRun.log()).hasSameSizeAs(finerRun.log());
            for (Occurrence occurrence : usualRun.log()) {
                assertThat(usualRun.firstTime(occurrence.event()))
                        .as(occurrence.event())
                        .isCloseTo(finerRun.firstTime(occurrence.event()), within(0.1));
            }
        });
    }

    @Test
    void thePumpMovesNoMoreThanStandsAboveItsIntakeWhenNothingDrains() {
        SeededCases.check(FEWER_PLANS, draw -> {
            Plan plan = RandomPlans.withSump(draw);
            PowerCut cut = cut(plan, true, false);
            PowerCut.Result lost = cut.drainsStop(false);
            WaterMovement.Vessel last = lost.movement()
                    .vessel(cut.plumbing().vessels().lastSection().vessel().name());
            double intake = line(plan).pump().intake().in("m");
            double end = last.level()[last.level().length - 1];
            assertThat(end).isGreaterThanOrEqualTo(Math.min(intake, last.level()[0]) - 1e-7);
        });
    }

    /** As {@link PowerCut} switches everything off. */
    private static Run powerOff(Plumbing plumbing, State state, Accuracy accuracy) {
        Run run = new Run(plumbing.network(), plumbing.network().usualParameters(), state, accuracy);
        run.set(plumbing.pumpRuns(), 0).set(plumbing.gearRuns(), 0).set(plumbing.topOffRuns(), 0);
        for (Plumbing.AiredLine line : plumbing.airedLines()) {
            run.set(line.airSince(), 0).setAt(line.stopsAfter(), line.seal(), 0);
        }
        return run;
    }

    private static Accuracy halved(Accuracy accuracy) {
        return new Accuracy(
                accuracy.relative() / 2,
                accuracy.volume() / 2,
                accuracy.temperature() / 2,
                accuracy.oxygen() / 2,
                accuracy.longestStep());
    }
}
