package org.tidewright.husbandry.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.burden.Lately.Arrival;
import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.ensemble.Ensemble.Progress;
import org.tidewright.twin.forecast.Outlook.Range;
import org.tidewright.twin.forecast.Variant;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;

/** Whole burdens over draws of the twin. */
class BurdenTest {
    private static final double HOUR = 3600;
    private static final Plan NANO = TestPlans.example("window-nano");
    private static final Plan EMPTY = Variant.of(TestPlans.example("fifty-five-gallon"))
            .empty()
            .keptAt(26)
            .plan();

    private static Residents residents(Plan plan, Lately lately, int draws) {
        return Residents.of(plan, lately, Residents.usualOutage(), draws, Progress.UNWATCHED);
    }

    private static String lead(Burden burden) {
        return burden.advice().lead().text(UnitSystem.METRIC);
    }

    private static void rises(Range range) {
        assertThat(range.low()).isLessThanOrEqualTo(range.middle());
        assertThat(range.middle()).isLessThanOrEqualTo(range.high());
    }

    @Test
    void theFewestDrawsWhoseEndsAreTheFifthAndTheNinetyFifthOfAHundred() {
        double[] draws = new double[Residents.DRAWS];
        for (int i = 0; i < draws.length; i++) {
            draws[i] = i * i;
        }
        Quantiles quantiles = Quantiles.of(draws);
        assertThat(quantiles.at(0.05)).isEqualTo(draws[0]);
        assertThat(quantiles.at(0.95)).isEqualTo(draws[draws.length - 1]);
    }

    @Test
    void aSmallFishInARipeNanoIsNoMatterOfAmmoniaButOfNutrientsAndAir() {
        Residents nano = residents(NANO, Lately.NOTHING, 6);
        Burden burden = nano.with(Addition.today(0.010, 1, 0.080), Progress.UNWATCHED);
        assertThat(burden.draws() + burden.endedEarly()).isEqualTo(6);
        assertThat(burden.calm().middle()).isZero();
        for (Compared each : List.of(burden.nitrate(), burden.phosphate(), burden.ammonia())) {
            rises(each.without());
            rises(each.with());
            rises(each.more());
            assertThat(each.with().middle()).isGreaterThan(each.without().middle());
            assertThat(each.more().middle()).isPositive();
        }
        assertThat(burden.grown().nitrate().more().middle())
                .isGreaterThan(3 * burden.nitrate().more().middle());
        assertThat(burden.oxygen().less().middle()).isPositive();
        assertThat(burden.grown().oxygen().less().middle())
                .isGreaterThan(burden.oxygen().less().middle());
        assertThat(burden.grown().act().with().middle())
                .isLessThan(burden.act().without().middle());
        assertThat(lead(burden))
                .startsWith("Take out more nitrate and phosphate before you add it; ammonia is no hindrance today");
        // Another asked of the same residents is told beside the same water without it.
        Burden smaller = nano.with(Addition.today(0.002, 1, 0.002), Progress.UNWATCHED);
        assertThat(smaller.nitrate().without()).isEqualTo(burden.nitrate().without());
        assertThat(smaller.nitrate().more().middle())
                .isLessThan(burden.nitrate().more().middle());
    }

    @Test
    void theFirstFishOfAnEmptySystemComeOnceATestWasPassed() {
        Addition four = new Addition(0.015, 4, 0.080, 1.2e-3, 0);
        Burden untested = residents(EMPTY, Lately.NOTHING, 4).with(four, Progress.UNWATCHED);
        assertThat(untested.calmToday()).isZero();
        assertThat(untested.calm().middle()).isInfinite();
        assertThat(lead(untested)).startsWith("Do not add them as things are");
        Burden passed = residents(EMPTY, new Lately(List.of(), 1), 4).with(four, Progress.UNWATCHED);
        assertThat(passed.calm().high()).isZero();
        assertThat(passed.restless()).isZero();
        assertThat(lead(passed)).contains("ammonia is no hindrance today: free ammonia stays at");
        assertThat(passed.ammonia().with().middle())
                .isLessThan(untested.ammonia().with().middle() / 5);
        // A plan that names nobody is one in which nobody lives.
        assertThat(passed.plan().inhabitants()).isNotNull();
    }

    @Test
    void thoseThatFollowTooCloselyAreToldADay() {
        Plan one = Joined.young(EMPTY, new Addition(0.015, 1, 0.080, 0.3e-3, 0));
        Addition three = new Addition(0.015, 3, 0.080, 0.9e-3, 0);
        Lately today = new Lately(List.of(new Arrival(0, 0.015)), 0.10);
        Residents hasty = residents(one, today, 6);
        Burden burden = hasty.with(three, Progress.UNWATCHED);
        assertThat(burden.calmToday()).isLessThan(1);
        assertThat(burden.calm().high()).isGreaterThanOrEqualTo(7);
        Burden waited = hasty.with(three.on(28), Progress.UNWATCHED);
        assertThat(waited.ammonia().with().middle())
                .isLessThan(burden.ammonia().with().middle());
        // What comes later stands in the water alike; the twelve weeks are told as if all came today.
        assertThat(waited.nitrate()).isEqualTo(burden.nitrate());
        // Had the first one lived there for long, there were nothing to wait for.
        Burden ripe = residents(one, Lately.NOTHING, 6).with(three, Progress.UNWATCHED);
        assertThat(ripe.ammonia().with().middle())
                .isLessThan(burden.ammonia().with().middle());
    }

    @Test
    void aCancelledOneStops() {
        AtomicInteger seen = new AtomicInteger();
        AtomicInteger all = new AtomicInteger();
        Ensemble.Progress impatient = new Ensemble.Progress() {
            @Override
            public void done(int draws, int ofAll) {
                seen.incrementAndGet();
                all.set(ofAll);
            }

            @Override
            public boolean isCancelled() {
                return seen.get() >= 1;
            }
        };
        assertThatThrownBy(() -> Residents.of(NANO, Lately.NOTHING, Residents.usualOutage(), 40, impatient))
                .isInstanceOf(CancellationException.class);
        assertThat(seen.get()).isLessThan(20);
        assertThat(all.get()).isEqualTo(40 + OxygenOutage.DRAWS);
    }

    // ── an outage ──

    /**
     * The worked tank: 200 L at 26 °C, 0.40 m deep, four fish of 15 g, 5000 cm² of corals, 0.5 m² of sand, 25 kg of rock, dark,
     * 95 % of saturation. By hand it breathes 154 mg/h and falls to 50 % after 4.2 to 5.3 h and to 30 % after 6.3 to 9.1 h, by
     * how fast still water takes up oxygen; its fish rest. Here they are fed 0.3 g each, which is 9 mg/h and not 4.
     */
    @Test
    void theWorkedTankRunsShortOfOxygenWhenItWasWorkedOutTo() {
        OutageOrder order = new OutageOrder(24, Outdoors.constant(26), true, true);
        Plan plan = WorkedOutage.plan();
        OxygenOutage outage = OxygenOutage.of(plan, order, Progress.UNWATCHED);
        Range act = Range.of(outage.without().act());
        Range harm = Range.of(outage.without().harm());
        assertThat(act.low() / HOUR).isLessThan(4.2);
        assertThat(act.high() / HOUR).isGreaterThan(4.2);
        assertThat(harm.low() / HOUR).isLessThan(6.3);
        assertThat(harm.high() / HOUR).isGreaterThan(6.3);
        // Four more: 28 mmol a day of carbon burnt, 37.6 mg/h. By hand at 0.5 m a day: 19.2 h · ln(16.47/13.47) = 3.86
        // h to
        // 50 %, and 3.11 h with them, 0.75 h sooner.
        Sooner sooner = Sooner.of(
                outage.without().act(),
                outage.of(Joined.young(plan, Addition.today(0.015, 4, 0.015)), Progress.UNWATCHED)
                        .act());
        assertThat(sooner.sooner().low() / HOUR).isLessThan(0.75);
        assertThat(sooner.sooner().middle() / HOUR).isCloseTo(0.75, within(0.5));
        assertThat(sooner.sooner().high() / HOUR).isGreaterThan(0.75);
    }

    @Test
    void whatNeverComesIsNoSooner() {
        double never = Double.POSITIVE_INFINITY;
        Sooner sooner = Sooner.of(new double[] {never, 10, never}, new double[] {never, 8, 6});
        assertThat(sooner.sooner().middle()).isEqualTo(2);
        assertThat(sooner.without().middle()).isInfinite();
        assertThat(sooner.with().middle()).isEqualTo(8);
    }
}
