package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.estimate.JournalInputs.JournalTime;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterChange;

/** What a plan and a journal tell of the water changes. */
final class KnownRenewals {
    /** What the twin calls the lever that scales them. */
    static final String LEVER = "water changes";

    private static final double DAY = 86_400;

    private KnownRenewals() {}

    /** In any order; with those that are planned after the journal ends. */
    static List<Renewal> of(Plan plan, double volume, List<Line> lines, JournalTime time, double until) {
        Map<WaterQuantity, Known> planned = Expectations.newWater(plan);
        List<Renewal> renewals = new ArrayList<>();
        List<Level> factors = new ArrayList<>();
        for (Line line : lines) {
            if (line.event() instanceof Event.WaterChanged changed) {
                renewals.add(new Renewal(
                        time.of(line.at()),
                        Math.min(1, changed.volume() / volume),
                        Expectations.newWater(planned, changed.newWater())));
            } else if (line.event() instanceof Event.LeverMoved moved
                    && moved.lever().equals(LEVER)) {
                factors.add(new Level(time.of(line.at()), moved.after()));
            }
        }
        double last = renewals.stream().mapToDouble(Renewal::time).max().orElse(Double.NaN);
        boolean kept = !renewals.isEmpty();
        for (WaterChange change : plan.waterChanges()) {
            double every = change.every().in("s") / DAY;
            double at = change.at().toSecondOfDay() / DAY;
            double share = Math.min(1, change.volume().in("m^3") / volume);
            if (kept) {
                // One that is overdue will be made within the day.
                double first = Math.max(last + every, until + 0.5);
                for (double next = first; next <= until + Inputs.HORIZON; next += every) {
                    add(renewals, next, share * factor(factors, next), planned);
                }
            } else {
                // Whole parts, one a day or more seldom.
                int parts = (int) Math.max(1, Math.round(every));
                double each = every / parts;
                for (double next = at; next <= until + Inputs.HORIZON; next += each) {
                    double whole = Math.min(1, share * factor(factors, next));
                    add(renewals, next, 1 - Math.pow(1 - whole, 1.0 / parts), planned);
                }
            }
        }
        return renewals;
    }

    private record Level(double time, double factor) {}

    private static double factor(List<Level> levels, double at) {
        double factor = 1;
        for (Level level : levels) {
            factor = level.time() <= at ? level.factor() : factor;
        }
        return factor;
    }

    private static void add(List<Renewal> renewals, double time, double share, Map<WaterQuantity, Known> water) {
        if (share > 0) {
            renewals.add(new Renewal(time, Math.min(1, share), water));
        }
    }
}
