package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.hydraulic.PumpCurve;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;

/** Levels and flows while all runs, against the worked example's script and by hand. */
class RunningStateTest {
    private static final Percentage FOUR_DIGITS = withinPercentage(0.1);
    private static final double LITRES = 1e-3;
    private static final double LITRES_PER_HOUR = 1e-3 / 3600;

    private static RunningState running(Plan plan) {
        return RunningState.of(plan, Vessels.of(plan), Water.of(plan).viscosity());
    }

    @Test
    void theWorkedExampleRunsAsItsScriptSays() {
        RunningState running = running(TestPlans.workedExample());
        assertThat(running.displayFlow()).isCloseTo(2500 * LITRES_PER_HOUR, FOUR_DIGITS);
        assertThat(running.crestHead()).isCloseTo(15.94e-3, FOUR_DIGITS);
        assertThat(running.displayLevel()).isCloseTo(0.55 + running.crestHead(), within(1e-12));
        assertThat(running.boxLevel()).isEqualTo(0.45);
        // Over a baffle 0.45 m long, Francis: h = (Q / (1.84 x 0.45))^(2/3) = 8.893 mm
        double head = Math.pow(2500 * LITRES_PER_HOUR / (1.84 * 0.45), 2.0 / 3);
        assertThat(head).isCloseTo(8.893e-3, FOUR_DIGITS);
        assertThat(running.sectionLevels()[0]).isCloseTo(0.30 + head, within(1e-7));
        assertThat(running.sectionLevels()[1]).isCloseTo(0.25 + head, within(1e-7));
        assertThat(running.sectionLevels()[2]).isEqualTo(0.20);
    }

    @Test
    void theSystemHoldsTheWaterOfTheScriptAndWhatStandsOverItsCrests() {
        Plumbing plumbing = Plumbing.of(TestPlans.workedExample(), new Plumbing.Assumptions(true, false));
        double water = plumbing.runningState().total(Stock.WATER);
        // 469.9 L at crest and baffle height; 10.76 L over the teeth; 8.893 mm over 0.198 + 0.090 m²; a skimmer of 6 L;
        // the drain pipe, pi/4 x 25² mm² x 1.2 m = 0.589 L; the reservoir of 25 L
        double over = 10.76 + 8.893 * (0.198 + 0.090);
        assertThat(water).isCloseTo((469.9 + over + 6 + 0.589 + 25) * LITRES, within(0.06 * LITRES));
        assertThat(plumbing.runningState().get(plumbing.network().body("return pipe"), Stock.WATER))
                .isCloseTo(0.7854 * LITRES, FOUR_DIGITS);
    }

    @Test
    void aSlowerPumpFollowsTheAffinityLaws() {
        // Harbour room at 70 %: 3.6 m at 2000 L/h become 0.49 x 3.6 m at 1400 L/h
        String slowed = ChangedText.of(
                Examples.text("harbour-room"), "    power: 45 W\n", "    power: 45 W\n    speed: 70 %\n");
        PumpCurve pump = RunningState.pump(requireNonNull(TestPlans.read(slowed).returnLine()));
        assertThat(pump.head(1400 * LITRES_PER_HOUR)).isCloseTo(0.49 * 3.6, within(1e-9));
        assertThat(pump.shutOffHead()).isCloseTo(0.49 * 4.2, within(1e-9));
    }

    @Test
    void aPumpThatCannotLiftBringsNothing() {
        // shut-off head 1.2 m under a lift of 1.30 m
        RunningState running =
                running(TestPlans.workedExample("head: 4.0 m", "head: 1.20 m", "head: 3.9 m", "head: 1.19 m"));
        assertThat(running.displayFlow()).isZero();
        assertThat(running.crestHead()).isZero();
        assertThat(running.displayLevel()).isEqualTo(0.55);
    }

    @Test
    void aMouthAboveTheWaterAddsToTheLift() {
        // The nozzle at 0.59 m: 1.34 m, more than the pump's 1.33 m; under water it lifts 1.30 m and runs
        String[] weak = {"head: 4.0 m", "head: 1.33 m", "head: 3.9 m", "head: 1.32 m"};
        assertThat(running(TestPlans.workedExample(weak)).displayFlow()).isPositive();
        String[] high = {
            "head: 4.0 m",
            "head: 1.33 m",
            "head: 3.9 m",
            "head: 1.32 m",
            "lower_edge: 0.52 m, bore: 25 mm, air_hole: {height: 0.54 m, bore: 5 mm}",
            "lower_edge: 0.59 m, bore: 25 mm"
        };
        assertThat(running(TestPlans.workedExample(high)).displayFlow()).isZero();
    }

    @Test
    void aStandpipeSetsTheLevelOfItsBox() {
        // Front parlor: a mouth of 1.5 in, 3 in over the box's bottom. As a rim it would need (Q / (1.84 pi d))^(2/3),
        // as
        // an orifice (Q / (0.6 pi/4 d²))² / 2g: the larger of the two, here the orifice's 16.6 mm
        RunningState running = running(TestPlans.example("fifty-five-gallon"));
        double bore = 1.5 * 0.0254;
        double speed = running.displayFlow() / (0.6 * Math.PI / 4 * bore * bore);
        double head = speed * speed / (2 * 9.80665);
        assertThat(head).isGreaterThan(Math.pow(running.displayFlow() / (1.84 * Math.PI * bore), 2.0 / 3));
        assertThat(running.boxLevel()).isCloseTo(3 * 0.0254 + head, within(1e-9));
    }

    @Test
    void aSectionBelowAnothersLevelBacksUp() {
        // The second baffle raised to 0.35 m backs the first section up to it and the head over it
        RunningState running = running(TestPlans.workedExample("over: 0.25 m", "over: 0.35 m"));
        assertThat(running.sectionLevels()[0]).isEqualTo(running.sectionLevels()[1]);
        assertThat(running.sectionLevels()[1]).isCloseTo(0.35889, within(1e-5));
    }

    @Test
    void onlySectionsTheWaterPassesHaveAHeadOverTheirBaffle() {
        RunningState running = running(TestPlans.workedExample("inlet: 0.10 m", "inlet: 0.10 m\n      into: second"));
        assertThat(running.sectionLevels()[0]).isEqualTo(0.30);
        assertThat(running.sectionLevels()[1]).isCloseTo(0.25889, within(1e-5));
    }

    @Test
    void aTankWithoutASumpStandsAtItsLevelAndHasNoPlumbing() {
        Plan nano = TestPlans.example("window-nano");
        assertThat(running(nano).displayLevel()).isEqualTo(0.33);
        assertThat(running(nano).displayFlow()).isZero();
        assertThatThrownBy(() -> Plumbing.of(nano, new Plumbing.Assumptions(true, false)))
                .hasMessageContaining("Window nano has no sump");
    }

    /** Everything on for ten minutes: how far each vessel's level strays, in a pipe how far its cubic metres do. */
    private static Map<String, Double> strayed(Plan plan) {
        Plumbing plumbing = Plumbing.of(plan, new Plumbing.Assumptions(true, false));
        Run run = new Run(
                plumbing.network(),
                plumbing.network().usualParameters(),
                plumbing.runningState(),
                Accuracy.OF_WATER_LEVELS);
        double[] times = DoubleStream.iterate(0, t -> t + 1).limit(601).toArray();
        Map<Body, Double> start = new LinkedHashMap<>();
        Map<String, Double> strayed = new LinkedHashMap<>();
        run.until(600, times, (sample, now) -> {
            for (Body body : plumbing.places().keySet()) {
                double level = now.level(body);
                double shown = Double.isNaN(level) ? now.volume(body) : level;
                start.putIfAbsent(body, shown);
                strayed.merge(body.name(), Math.abs(shown - start.getOrDefault(body, shown)), Math::max);
            }
        });
        assertThat(run.log()).as("events while all is well").isEmpty();
        return strayed;
    }

    @Test
    void theSteadyStateIsSteady() {
        List<Plan> plans = List.of(
                TestPlans.workedExample(), TestPlans.example("harbour-room"), TestPlans.example("fifty-five-gallon"));
        for (Plan plan : plans) {
            assertThat(strayed(plan))
                    .allSatisfy((vessel, distance) ->
                            assertThat(distance).as(plan.name() + ", " + vessel).isLessThan(1e-3));
        }
    }
}
