package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.ArrivalPlan.NotPlaced;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.search.Broken;
import org.tidewright.husbandry.arrival.search.LateBuying;
import org.tidewright.husbandry.arrival.search.Rulebook;
import org.tidewright.husbandry.arrival.search.Schedule;
import org.tidewright.husbandry.arrival.search.Search;
import org.tidewright.husbandry.arrival.search.Search.Effort;
import org.tidewright.husbandry.arrival.search.Search.Found;

/** Plans the arrivals of a wish list, and plans them anew when something is other than it was planned. */
public final class ArrivalPlanner {
    private ArrivalPlanner() {}

    /** The best plan, or a good one where the best would take too long: see {@link ArrivalPlan#provenBest}. */
    public static ArrivalPlan plan(ArrivalRequest request) {
        return plan(request, Effort.USUAL);
    }

    /** The same with another effort. */
    public static ArrivalPlan plan(ArrivalRequest request, Effort effort) {
        Translation translation = new Translation(request);
        Found found = Search.best(translation.puzzle, effort);
        Schedule schedule = LateBuying.of(translation.puzzle, found.schedule());
        List<Broken> broken = Rulebook.broken(translation.puzzle, schedule);
        if (!broken.isEmpty()) {
            throw new IllegalStateException("the plan found breaks rules, which is a fault of the planner: " + broken
                    + " in " + schedule + " of " + translation.puzzle);
        }
        return new ArrivalPlan(
                request, arrivals(translation, schedule), notPlaced(translation, schedule), found.provenBest());
    }

    /**
     * Plans anew from a day on. What has happened stays; the rest of the list is planned as if for the first time.
     *
     * @param plan as it was
     * @param today first day that can still be planned
     * @param happened what has come by now, besides what the plan knew as happened
     * @param changes what is other than it was planned
     */
    public static ArrivalPlan replan(ArrivalPlan plan, LocalDate today, List<Happened> happened, List<Change> changes) {
        return plan(Replanning.request(plan, today, happened, changes));
    }

    private static List<Arrival> arrivals(Translation translation, Schedule schedule) {
        ArrivalRequest request = translation.request;
        List<Arrival> arrivals = new ArrayList<>();
        for (Happened each : request.happened()) {
            if (each instanceof InDisplay there) {
                arrivals.add(
                        new Arrival(there.id(), there.tank(), there.since(), there.day(), List.of(), Stage.IN_DISPLAY));
            }
        }
        Telling telling = new Telling(translation, schedule);
        for (int batch : schedule.placed()) {
            String id = translation.wishes.get(batch).id();
            int tank = schedule.tank().get(batch);
            arrivals.add(new Arrival(
                    id,
                    tank < 0 ? null : request.tanks().get(tank).name(),
                    translation.date(schedule.in().get(batch)),
                    translation.date(schedule.out().get(batch)),
                    telling.waits(batch),
                    request.happened(id).isPresent() ? Stage.IN_QUARANTINE : Stage.PLANNED));
        }
        arrivals.sort(Comparator.comparing(Arrival::out).thenComparing(Arrival::in));
        return arrivals;
    }

    private static List<NotPlaced> notPlaced(Translation translation, Schedule schedule) {
        List<NotPlaced> notPlaced = new ArrayList<>();
        translation.hopeless.forEach((id, reasons) -> notPlaced.add(new NotPlaced(id, reasons)));
        Telling telling = new Telling(translation, schedule);
        for (int batch = 0; batch < translation.wishes.size(); batch++) {
            if (!schedule.has(batch)) {
                notPlaced.add(new NotPlaced(translation.wishes.get(batch).id(), telling.against(batch)));
            }
        }
        return notPlaced;
    }
}
