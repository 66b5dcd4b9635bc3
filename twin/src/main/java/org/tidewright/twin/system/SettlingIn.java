package org.tidewright.twin.system;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Draw;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/**
 * Brings a system to where months of its regime lead: it lives some days, and what takes longer than those is set from what
 * they told. Waste on the ground lasts for months; it is set to what rests with what falls on it. Skeletons grow so that the
 * system uses the alkalinity its plan states. A quarantine tank has no such months: it is set to the day a batch comes.
 */
final class SettlingIn {
    private static final double DAY = 86_400;

    /** Days between settings of the ground: whole rounds of what happens every day, every second or third day. */
    private static final double GROUND_DAYS = 6;

    /** Each setting changes a little what the next days tell. */
    private static final int GROUND_TIMES = 3;

    /** A day at a time: water whose doses do not match the use runs away from what the plan states. */
    private static final double GROWTH_DAYS = 1;

    private static final int GROWTH_TIMES = 4;

    /** A year: by then the first of them are forgotten. */
    private static final int MANY_DAYS = 364;

    private static final List<Stock> WASTE =
            List.of(Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private final SystemTwin twin;
    private final FirstState firstState;
    private final Limes limes;
    private final List<WaterChanges.Change> changes;
    private final boolean siphons;

    SettlingIn(SystemTwin twin, FirstState firstState, Limes limes) {
        changes = WaterChanges.of(twin.plan());
        siphons = changes.stream().anyMatch(change -> change.siphoned() > 0);
        this.twin = twin;
        this.firstState = firstState;
        this.limes = limes;
    }

    /**
     * A system as its plan runs it.
     *
     * @param growth of the skeletons where it is known already; null to find it
     */
    SystemTwin.Settled of(@Unit("*") double[] given, @Nullable Double growth) {
        double[] parameters = given.clone();
        Limes.Matched matched = limes.matched();
        if (matched != null && growth != null) {
            parameters[matched.factor().index()] = growth;
        }
        State state = firstState.of(parameters);
        for (int i = 0; i < GROUND_TIMES; i++) {
            State before = state.copy();
            Lived lived = live(state, parameters, GROUND_DAYS, siphons);
            restGround(state, before, lived.account());
            firstState.state(state, parameters, lived.carbonDioxide());
        }
        for (int i = 0; i < GROWTH_TIMES; i++) {
            // Always the same day: a change of water or a meal of its own is not had again and again.
            Lived day = live(state.copy(), parameters, GROWTH_DAYS, false);
            if (matched != null && growth == null) {
                match(matched, parameters, day.account());
            }
            firstState.state(state, parameters, day.carbonDioxide());
        }
        if (twin.plan().quarantine() != null) {
            firstState.batch(state, parameters);
        }
        return new SystemTwin.Settled(state, parameters);
    }

    /** What days told, with the carbon dioxide they left in the display. */
    private record Lived(Account account, @Unit("atm") double carbonDioxide) {}

    /** Without its siphoning where that is reckoned in apart: a spell of days holds too many or too few of it. */
    private Lived live(State state, double[] parameters, double days, boolean unsiphoned) {
        Run run = new Run(twin.network(), parameters, state, Accuracy.OF_A_YEAR);
        if (unsiphoned) {
            run.set(twin.levers().get("siphoning").setting(), 0);
        }
        run.keepAccount().until(days * DAY);
        return new Lived(run.account(), run.now().solution(twin.display()).partialPressure());
    }

    /**
     * What leaves the ground goes in proportion to what lies there, so that at rest it is what comes over that share, less
     * what is siphoned.
     */
    private void restGround(State state, State before, Account told) {
        Body ground = twin.pools().ground();
        for (Stock stock : WASTE) {
            double comes = 0;
            double goes = 0;
            for (Account.Line line : told.of(stock, List.of(ground))) {
                comes += Math.max(0, line.amount());
                goes += Math.max(0, -line.amount());
            }
            double lay = (before.get(ground, stock) + state.get(ground, stock)) / 2;
            if (goes > 0 && lay > 0) {
                double days = (told.to() - told.from()) / DAY;
                state.set(ground, stock, beforeSiphoning(comes / days, goes / lay / days));
            }
        }
    }

    /** What lies there at the midnight from which all changes of water are counted, after a long row of them. */
    private double beforeSiphoning(double comesPerDay, double goesPerDay) {
        double atRest = comesPerDay / goesPerDay;
        double left = Math.exp(-goesPerDay);
        double lies = atRest;
        for (int day = -MANY_DAYS; day < 0; day++) {
            for (WaterChanges.Change change : changes) {
                lies *= Math.floorMod(day, change.everyDays()) == 0 ? 1 - change.siphoned() : 1;
            }
            lies = atRest + (lies - atRest) * left;
        }
        return lies;
    }

    private void match(Limes.Matched matched, double[] parameters, Account days) {
        double grown = sum(days.of(Stock.ALKALINITY, List.of(twin.pools().skeletons())));
        if (grown > 0) {
            double others = used(twin, days) - grown;
            double stated = matched.use().in(Draw.of(parameters)) * (days.to() - days.from());
            parameters[matched.factor().index()] *= Math.max(0, stated - others) / grown;
        }
    }

    /**
     * Alkalinity a keeper would miss: what went into skeletons and scale and what reactions took, nitrogen's for the most
     * part. What is dosed, changed and topped up only moves and so does not count.
     */
    static @Unit("mol") double used(SystemTwin twin, Account account) {
        List<Body> rest = new ArrayList<>(twin.network().bodies());
        rest.remove(twin.pools().skeletons());
        rest.remove(twin.pools().scale());
        return -sum(account.of(Stock.ALKALINITY, rest));
    }

    private static double sum(List<Account.Line> lines) {
        return lines.stream().mapToDouble(Account.Line::amount).sum();
    }
}
