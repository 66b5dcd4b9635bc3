package org.tidewright.husbandry.burden;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.system.SystemTwin;

/**
 * The system today, with nitrifiers in the number that what happened lately has left. A plan alone would have them in the
 * number its animals keep in the long run.
 *
 * @param twin of the plan
 * @param present live mass of the plan's animals
 * @param before twin of those of them that were there before the first arrival; the same twin where none came lately
 */
record CaughtUp(SystemTwin twin, Lately lately, @Unit("kg") double present, SystemTwin before) {
    private static final double DAY = 86_400;

    static CaughtUp of(Plan plan, SystemTwin twin, Lately lately) {
        double present = Joined.mass(plan);
        Lately counted = lately.within(present);
        boolean came = !counted.arrivals().isEmpty();
        Plan earlier = came ? Joined.share(plan, 1 - counted.came() / present) : plan;
        return new CaughtUp(twin, counted, present, came ? SystemTwin.of(earlier) : twin);
    }

    /** A draw of it, just after the first midnight. */
    Forecast begun(@Unit("*") double[] parameters) {
        return start(parameters).at(Arrivals.AFTER_MIDNIGHT, List.of());
    }

    private Forecast start(double[] parameters) {
        Forecast settled = new Forecast(twin, parameters);
        if (before == twin) {
            return tested(settled);
        }
        Forecast earlier = tested(settled.settledBy(before, parameters)).goingOnBy(twin);
        return settled.withNitrifiersOf(lived(earlier));
    }

    private Forecast tested(Forecast forecast) {
        return lately.cleared() > 0 ? forecast.withNitrifiersThatClear(lately.cleared()) : forecast;
    }

    /** The days since the first of them came; each brings its share of the food along. */
    private Forecast lived(Forecast earlier) {
        int days = lately.since();
        if (days == 0) {
            return earlier;
        }
        List<Change> changes = new ArrayList<>();
        double came = 0;
        for (int ago = days; ago > 0; ago--) {
            double mass = lately.cameOn(ago);
            came += mass;
            double share = Math.max(0, 1 - (lately.came() - came) / present);
            changes.add(change("feed", share, days - ago));
            if (mass > 0) {
                changes.add(change("added fish", mass, days - ago));
            }
        }
        return earlier.at(days * DAY + Arrivals.AFTER_MIDNIGHT, changes);
    }

    private Change change(String lever, double value, int day) {
        double from = day * DAY + Arrivals.AFTER_MIDNIGHT;
        return new Change(twin.levers().get(lever), value, from, Double.POSITIVE_INFINITY);
    }
}
