package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;

/**
 * Who comes when.
 *
 * @param request what was asked
 * @param arrivals by the day they go into the display
 * @param notPlaced what does not come by the last day, and why
 * @param provenBest whether all plans were gone through and none is better. Otherwise it is a good plan that keeps every
 *     rule, and a better one may exist
 */
public record ArrivalPlan(
        ArrivalRequest request, List<Arrival> arrivals, List<NotPlaced> notPlaced, boolean provenBest) {
    /** Keeps lists of its own. */
    public ArrivalPlan {
        arrivals = List.copyOf(arrivals);
        notPlaced = List.copyOf(notPlaced);
    }

    /**
     * A wish that has no day.
     *
     * @param reasons what stands against it, even after all others
     */
    public record NotPlaced(String id, List<Reason> reasons) {
        /** Keeps a list of its own. */
        public NotPlaced {
            reasons = List.copyOf(reasons);
        }
    }

    /** The arrival of a wish. */
    public Optional<Arrival> arrival(String id) {
        return arrivals.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** The day on which the last of them is in the display. */
    public Optional<LocalDate> lastDay() {
        return arrivals.stream().map(Arrival::out).max(LocalDate::compareTo);
    }

    /** What has come by the evening of a day, if all went as planned. */
    public List<Happened> happenedBy(LocalDate day) {
        return arrivals.stream()
                .filter(each -> each.stage() != Stage.PLANNED || !each.in().isAfter(day))
                .map(each -> happened(each, day))
                .toList();
    }

    private static Happened happened(Arrival each, LocalDate day) {
        String tank = each.tank();
        return tank != null && each.out().isAfter(day)
                ? new InQuarantine(each.id(), tank, each.in())
                : new InDisplay(each.id(), tank, each.in(), each.out());
    }
}
