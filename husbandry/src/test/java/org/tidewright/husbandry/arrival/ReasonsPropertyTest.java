package org.tidewright.husbandry.arrival;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.Reason.Budget;
import org.tidewright.husbandry.arrival.Reason.ComesAfter;
import org.tidewright.husbandry.arrival.Reason.Earliest;
import org.tidewright.husbandry.arrival.Reason.Paced;
import org.tidewright.husbandry.arrival.Reason.Prey;
import org.tidewright.husbandry.arrival.Reason.Shared;
import org.tidewright.husbandry.arrival.Reason.TankTaken;
import org.tidewright.husbandry.arrival.Reason.TimidFirst;
import org.tidewright.testkit.SeededCases;

/** In plans that are proven best each stay is moved a day earlier, and {@link PlanChecker} says what that breaks. */
class ReasonsPropertyTest {
    @Test
    void aDayEarlierBreaksARuleAndEveryReasonNamesOneThatItBreaks() {
        SeededCases.check(200, draw -> {
            ArrivalPlan plan = ArrivalPlanner.plan(RandomRequest.of(draw, 6, 60));
            for (Arrival arrival : plan.arrivals()) {
                if (plan.provenBest()) {
                    List<List<String>> faults = faultsADayEarlier(plan, arrival);
                    assertThat(faults).as("whenever %s comes", arrival).noneMatch(List::isEmpty);
                    List<String> all = faults.stream().flatMap(List::stream).toList();
                    assertThat(arrival.waits())
                            .allMatch(reason ->
                                    all.stream().anyMatch(each -> each.matches(".*(" + words(plan, reason) + ").*")));
                }
            }
        });
    }

    /** For each day on which its stay might begin. */
    private static List<List<String>> faultsADayEarlier(ArrivalPlan plan, Arrival arrival) {
        LocalDate out = arrival.out().minusDays(1);
        List<List<String>> faults = new ArrayList<>();
        LocalDate first = arrival.tank() == null ? out : plan.request().start();
        for (LocalDate in = first; !in.isAfter(out); in = in.plusDays(1)) {
            LocalDate day = in;
            faults.add(PlanChecker.faults(
                    plan.request(),
                    plan.arrivals().stream()
                            .map(each -> sharesStay(each, arrival) ? moved(each, day, out) : each)
                            .toList()));
        }
        return faults;
    }

    private static boolean sharesStay(Arrival each, Arrival arrival) {
        return each.id().equals(arrival.id())
                || (arrival.tank() != null
                        && arrival.tank().equals(each.tank())
                        && arrival.out().equals(each.out()));
    }

    private static Arrival moved(Arrival arrival, LocalDate in, LocalDate out) {
        return new Arrival(arrival.id(), arrival.tank(), in, out, List.of(), Stage.PLANNED);
    }

    /** A pattern that the checker's fault has where it is the same rule. Who must be second also keeps the gap of additions. */
    private static String words(ArrivalPlan plan, Reason reason) {
        if (reason instanceof Shared shared) {
            return words(plan, shared.why());
        } else if (reason instanceof TankTaken taken) {
            return taken.by() == null
                    ? "not free"
                    : taken.by() + " .*each other's time|" + taken.by() + " are in .*each other's time";
        } else if (reason instanceof Paced paced) {
            return paced.day() + " .*too near|and " + paced.day() + " are too near";
        } else if (reason instanceof Budget budget) {
            return budget.month() + " costs";
        } else if (reason instanceof ComesAfter after) {
            return "too soon after " + after.id() + "|too near";
        } else if (reason instanceof TimidFirst timid) {
            return timid.id() + ".*(wrong order)|too near";
        } else if (reason instanceof Prey prey) {
            return "too soon for " + prey.id() + "|too near";
        } else if (reason instanceof Earliest) {
            return "before it can be had|too early";
        }
        return "each other's time|stays less|before";
    }
}
