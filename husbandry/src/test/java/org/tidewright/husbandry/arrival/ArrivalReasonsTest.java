package org.tidewright.husbandry.arrival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.arrival.Lists.START;
import static org.tidewright.husbandry.arrival.Lists.after;
import static org.tidewright.husbandry.arrival.Lists.apart;
import static org.tidewright.husbandry.arrival.Lists.budget;
import static org.tidewright.husbandry.arrival.Lists.day;
import static org.tidewright.husbandry.arrival.Lists.fish;
import static org.tidewright.husbandry.arrival.Lists.priced;
import static org.tidewright.husbandry.arrival.Lists.ready;
import static org.tidewright.husbandry.arrival.Lists.request;
import static org.tidewright.husbandry.arrival.Lists.tank;
import static org.tidewright.husbandry.arrival.Lists.with;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Reason.Budget;
import org.tidewright.husbandry.arrival.Reason.ComesAfter;
import org.tidewright.husbandry.arrival.Reason.Dry;
import org.tidewright.husbandry.arrival.Reason.Earliest;
import org.tidewright.husbandry.arrival.Reason.LongerStay;
import org.tidewright.husbandry.arrival.Reason.Paced;
import org.tidewright.husbandry.arrival.Reason.Prey;
import org.tidewright.husbandry.arrival.Reason.Shared;
import org.tidewright.husbandry.arrival.Reason.TankTaken;
import org.tidewright.husbandry.arrival.Reason.TimidFirst;

/** Days and reasons of short lists, worked by hand. */
class ArrivalReasonsTest {
    private static void arrives(ArrivalPlan plan, String id, int in, int out, Reason... waits) {
        assertThat(PlanChecker.faults(plan)).isEmpty();
        assertThat(plan.provenBest()).isTrue();
        Arrival arrival = plan.arrival(id).orElseThrow();
        assertThat(arrival.in()).as("%s comes", id).isEqualTo(day(in));
        assertThat(arrival.out()).as("%s goes into the display", id).isEqualTo(day(out));
        assertThat(arrival.waits()).as("%s waits for", id).containsExactly(waits);
    }

    @Test
    void theFirstWaitsForNothing() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(List.of(fish("goby", 5, 30)), tank("Q")));
        arrives(plan, "goby", 0, 30);
    }

    /** The tank is empty on day 30, dry for three days; 33 + 30 = 63. */
    @Test
    void aTankThatIsTakenIsNamedWithWhoTakesIt() {
        ArrivalPlan plan =
                ArrivalPlanner.plan(request(List.of(fish("goby", 5, 30, 1), fish("wrasse", 5, 30, 2)), tank("Q")));
        arrives(plan, "goby", 0, 30);
        arrives(plan, "wrasse", 33, 63, new TankTaken("Q", "goby", day(30)), new Dry("Q", day(33)));
    }

    /** 30 g go in on day 30; of the 50 g that the display takes, 20 are left, too few for another 30 g. */
    @Test
    void theDisplaysPaceIsNamedWithTheAdditionBefore() {
        ArrivalPlan plan = ArrivalPlanner.plan(
                request(List.of(fish("goby", 30, 30, 1), fish("wrasse", 30, 30, 2)), tank("Q"), tank("R")));
        arrives(plan, "goby", 0, 30);
        Arrival wrasse = plan.arrival("wrasse").orElseThrow();
        arrives(plan, "wrasse", 14, 44, wrasse.waits().toArray(Reason[]::new));
        Paced paced = (Paced) wrasse.waits().get(0);
        assertThat(wrasse.waits()).hasSize(1);
        assertThat(paced.day()).isEqualTo(day(30));
        assertThat(paced.ids()).containsExactly("goby");
        assertThat(paced.room()).isCloseTo(0.020, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void whatTheDisplayTakesAtOnceGoesInAtOnce() {
        ArrivalPlan plan = ArrivalPlanner.plan(
                request(List.of(fish("goby", 20, 30), fish("wrasse", 30, 30)), tank("Q"), tank("R")));
        arrives(plan, "goby", 0, 30);
        arrives(plan, "wrasse", 0, 30);
    }

    /** On day 20 already, and the other had to wait until day 34; together both are in on day 30. */
    @Test
    void oneWaitsForAnotherToGoInWithIt() {
        ArrivalPlan plan = ArrivalPlanner.plan(
                request(List.of(fish("goby", 20, 20), fish("wrasse", 30, 30)), tank("Q"), tank("R")));
        arrives(plan, "wrasse", 0, 30);
        Arrival goby = plan.arrival("goby").orElseThrow();
        assertThat(goby.in()).isEqualTo(day(10));
        assertThat(goby.out()).isEqualTo(day(30));
        assertThat(goby.waits()).hasSize(1).first().isInstanceOfSatisfying(Paced.class, paced -> {
            assertThat(paced.day()).isEqualTo(day(30));
            assertThat(paced.ids()).containsExactly("wrasse");
        });
    }

    /** The last addition was on day -4: nothing before day 10. */
    @Test
    void anAdditionBeforeThePlanCounts() {
        Pace pace = new Pace(0.1, 0.5, 0, 14, START.minusDays(4), null);
        Wish snails = fish("snails", 5, 0);
        ArrivalPlan plan = ArrivalPlanner.plan(request(List.of(snails), pace));
        arrives(plan, "snails", 10, 10, new Paced(START.minusDays(4), List.of(), 0));
    }

    @Test
    void whatComesAfterAnotherSaysSo() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(fish("goby", 10, 30), after(fish("wrasse", 10, 30), "goby", 60)), tank("Q"), tank("R")));
        arrives(plan, "goby", 0, 30);
        arrives(plan, "wrasse", 60, 90, new ComesAfter("goby", day(30), 60));
    }

    /** The bold one could be in on day 10; it waits for the timid one's day 30, and 14 days more. */
    @Test
    void theBolderOfTwoThatTroubleEachOtherIsLater() {
        ArrivalRequest request =
                request(List.of(fish("dottyback", 10, 10, 4), fish("goby", 30, 30, 1)), tank("Q"), tank("R"));
        ArrivalPlan free = ArrivalPlanner.plan(request);
        arrives(free, "dottyback", 0, 10);
        arrives(free, "goby", 0, 30);

        ArrivalPlan plan = ArrivalPlanner.plan(with(request, Set.of(new Trouble("dottyback", "goby")), Set.of()));
        arrives(plan, "goby", 0, 30);
        Arrival dottyback = plan.arrival("dottyback").orElseThrow();
        assertThat(dottyback.out()).isEqualTo(day(44));
        assertThat(dottyback.waits()).contains(new TimidFirst("goby"));
        assertThat(dottyback.waits()).filteredOn(Paced.class::isInstance).hasSize(1);
    }

    /** Bolder by one only: the timid one is first where nothing is lost by it, and not otherwise. */
    @Test
    void aLittleBolderIsAPreferenceOnly() {
        Set<Trouble> trouble = Set.of(new Trouble("goby", "wrasse"));
        ArrivalPlan even = ArrivalPlanner.plan(with(
                request(List.of(fish("wrasse", 10, 30, 2), fish("goby", 10, 30, 1)), tank("Q")), trouble, Set.of()));
        assertThat(even.arrivals()).extracting(Arrival::id).containsExactly("goby", "wrasse");
        ArrivalPlan shorter = ArrivalPlanner.plan(with(
                request(List.of(fish("wrasse", 10, 20, 2), fish("goby", 10, 30, 1)), tank("Q")), trouble, Set.of()));
        assertThat(shorter.arrivals()).extracting(Arrival::id).containsExactly("wrasse", "goby");
    }

    @Test
    void preyIsInTheDisplayBeforeItsPredator() {
        ArrivalRequest request =
                request(List.of(fish("hawkfish", 10, 10), fish("shrimp", 5, 30)), tank("Q"), tank("R"));
        ArrivalPlan plan =
                ArrivalPlanner.plan(with(request, Set.of(), Set.of(new PreyFirst("hawkfish", "shrimp", 20))));
        arrives(plan, "shrimp", 0, 30);
        arrives(plan, "hawkfish", 40, 50, new Prey("shrimp"));
    }

    @Test
    void anEarliestDayIsToldInItsOwnWords() {
        NotBefore shop = new NotBefore(day(20), "bred to order");
        NotBefore ripe = new NotBefore(day(100), "the tank is too young");
        Wish clownfish = fish("clownfish", 10, 30).withShop(shop);
        Wish anemone = ready(fish("anemone", 0, 0), ripe);
        ArrivalPlan plan = ArrivalPlanner.plan(request(List.of(clownfish, anemone), tank("Q")));
        arrives(plan, "clownfish", 20, 50, new Earliest(day(20), "bred to order"));
        arrives(plan, "anemone", 100, 100, new Earliest(day(100), "the tank is too young"));
    }

    /** March has money for one of them; 1 April is day 29. */
    @Test
    void aSpentMonthIsNamed() {
        assertThat(day(29)).isEqualTo(LocalDate.of(2031, 4, 1));
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(priced(fish("goby", 10, 30, 1), 8000), priced(fish("wrasse", 10, 30, 2), 8000)),
                budget(10_000),
                tank("Q"),
                tank("R")));
        arrives(plan, "goby", 0, 30);
        arrives(plan, "wrasse", 29, 59, new Budget(YearMonth.of(2031, 3)));
    }

    /** One tank for two, 45 days together, is over before 30 + 3 + 45. */
    @Test
    void whoSharesAStayWaitsForWhoStaysLonger() {
        ArrivalPlan plan =
                ArrivalPlanner.plan(request(List.of(fish("goby", 10, 30), fish("tang", 10, 45)), tank("Q", 2)));
        arrives(plan, "goby", 0, 45, new LongerStay("tang"));
        arrives(plan, "tang", 0, 45);
    }

    @Test
    void whatMustNotMixDoesNotShareAStay() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(apart(fish("goby", 10, 30), "tang"), fish("tang", 10, 45)), tank("Q", 2)));
        arrives(plan, "goby", 0, 30);
        arrives(plan, "tang", 33, 78, new TankTaken("Q", "goby", day(30)), new Dry("Q", day(33)));
    }

    /** The two share a tank that is free until day 50, when the display is ready for one of them. */
    @Test
    void whoSharesAStayWaitsForWhatTheOtherWaitsFor() {
        NotBefore ripe = new NotBefore(day(50), "no rock yet");
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(fish("goby", 10, 30), ready(fish("blenny", 10, 30), ripe)), tank("Q", 2)));
        arrives(plan, "goby", 20, 50, new Shared("blenny", new Earliest(day(50), "no rock yet")));
        arrives(plan, "blenny", 20, 50, new Earliest(day(50), "no rock yet"));
    }
}
