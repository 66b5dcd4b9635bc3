package org.tidewright.husbandry.arrival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.husbandry.arrival.Lists.START;
import static org.tidewright.husbandry.arrival.Lists.after;
import static org.tidewright.husbandry.arrival.Lists.budget;
import static org.tidewright.husbandry.arrival.Lists.day;
import static org.tidewright.husbandry.arrival.Lists.fish;
import static org.tidewright.husbandry.arrival.Lists.priced;
import static org.tidewright.husbandry.arrival.Lists.request;
import static org.tidewright.husbandry.arrival.Lists.since;
import static org.tidewright.husbandry.arrival.Lists.tank;
import static org.tidewright.husbandry.arrival.Lists.with;

import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.ArrivalPlan.NotPlaced;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.Reason.Budget;
import org.tidewright.husbandry.arrival.Reason.ComesAfter;
import org.tidewright.husbandry.arrival.Reason.NoTank;
import org.tidewright.husbandry.arrival.Reason.Prey;
import org.tidewright.husbandry.arrival.Reason.TimidFirst;
import org.tidewright.husbandry.arrival.Reason.TooLate;
import org.tidewright.husbandry.arrival.Reason.TooMuch;

/** A list that cannot be had whole is told so, wish by wish. */
class NotPlacedTest {
    private static List<Reason> against(ArrivalPlan plan, String id) {
        assertThat(PlanChecker.faults(plan)).isEmpty();
        assertThat(plan.arrival(id)).isEmpty();
        return plan.notPlaced().stream()
                .filter(each -> each.id().equals(id))
                .map(NotPlaced::reasons)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatNoTankCarries() {
        ArrivalPlan plan =
                ArrivalPlanner.plan(request(List.of(fish("grouper", 200, 30), fish("goby", 5, 30)), tank("Q")));
        assertThat(against(plan, "grouper")).containsExactly(new NoTank(0.2));
        assertThat(plan.arrival("goby")).isPresent();
    }

    @Test
    void whatComesAfterSomebodyWhoDoesNot() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(after(fish("goby", 5, 30), "shrimp", 7), after(fish("wrasse", 5, 30), "goby", 7)), tank("Q")));
        assertThat(against(plan, "goby")).containsExactly(new ComesAfter("shrimp", null, 7));
        assertThat(against(plan, "wrasse")).containsExactly(new ComesAfter("goby", null, 7));
    }

    @Test
    void whatGoesRoundInACircle() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(
                List.of(after(fish("goby", 5, 30), "shrimp", 7), after(fish("shrimp", 5, 30), "goby", 7)), tank("Q")));
        assertThat(against(plan, "goby")).containsExactly(new ComesAfter("shrimp", null, 7));
        assertThat(against(plan, "shrimp")).containsExactly(new ComesAfter("goby", null, 7));
    }

    /** Half of 100 g and of the 20 g that came before: 60 g, and the tang has 70. */
    @Test
    void whatTheDisplayNeverTakesAtOnce() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(List.of(fish("goby", 20, 30), fish("tang", 70, 30)), tank("Q")));
        assertThat(against(plan, "tang"))
                .singleElement()
                .isInstanceOfSatisfying(
                        TooMuch.class, much -> assertThat(much.room()).isCloseTo(0.060, within(1e-9)));
    }

    @Test
    void whatCostsMoreThanAnyMonthHas() {
        ArrivalPlan plan =
                ArrivalPlanner.plan(request(List.of(priced(fish("angel", 20, 30), 20_000)), budget(10_000), tank("Q")));
        assertThat(against(plan, "angel")).containsExactly(new Budget(YearMonth.of(2031, 3)));
    }

    /** 30, 63, 96: the third is beyond day 70. */
    @Test
    void whatComesTooLate() {
        ArrivalPlan plan = ArrivalPlanner.plan(Lists.within(
                request(List.of(fish("goby", 5, 30, 1), fish("wrasse", 5, 30, 2), fish("tang", 5, 30, 3)), tank("Q")),
                70));
        assertThat(plan.arrivals()).extracting(Arrival::id).containsExactly("goby", "wrasse");
        assertThat(against(plan, "tang")).containsExactly(new TooLate(day(96)));
    }

    /** The timid one would hold the two others up beyond the last day: it is left out, not they. */
    @Test
    void theFewestAreLeftOut() {
        ArrivalRequest request = Lists.within(
                request(List.of(fish("goby", 5, 60, 1), fish("wrasse", 5, 30, 4), fish("tang", 5, 30, 4)), tank("Q")),
                70);
        ArrivalPlan plan = ArrivalPlanner.plan(
                with(request, Set.of(new Trouble("goby", "wrasse"), new Trouble("goby", "tang")), Set.of()));
        assertThat(plan.arrivals()).extracting(Arrival::id).containsExactlyInAnyOrder("wrasse", "tang");
        assertThat(against(plan, "goby")).containsExactlyInAnyOrder(new TimidFirst("wrasse"), new TimidFirst("tang"));
    }

    @Test
    void preyWhosePredatorIsThereAlready() {
        ArrivalRequest request = request(List.of(fish("hawkfish", 10, 10), fish("shrimp", 5, 0)), tank("Q"));
        ArrivalPlan plan = ArrivalPlanner.plan(since(
                with(request, Set.of(), Set.of(new PreyFirst("hawkfish", "shrimp", 20))),
                new InDisplay("hawkfish", "Q", START.minusDays(50), START.minusDays(40))));
        assertThat(against(plan, "shrimp")).containsExactly(new Prey("hawkfish"));
    }

    @Test
    void anEmptyListHasAnEmptyPlan() {
        ArrivalPlan plan = ArrivalPlanner.plan(request(List.of()));
        assertThat(plan.arrivals()).isEmpty();
        assertThat(plan.notPlaced()).isEmpty();
        assertThat(plan.provenBest()).isTrue();
    }
}
