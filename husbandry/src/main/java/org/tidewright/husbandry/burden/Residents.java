package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.stream.Stream;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.twin.system.SystemTwin;

/**
 * The system as it is, run once over draws of what is not known exactly: what every addition is compared with, over the same
 * draws. Does not change, so that one may be kept while a keeper looks at one animal after the other.
 */
public final class Residents {
    /** The least number of draws whose lowest and highest are the 5th and 95th of 100 (type 8 of Hyndman and Fan 1996). */
    public static final int DRAWS = 13;

    private static final long SEED = 20_260_601;

    private final Plan plan;
    private final Lately lately;
    private final List<Drawn> draws;
    private final OxygenOutage outage;

    /**
     * One draw of it.
     *
     * @param begun just after the first midnight
     * @param course of twelve weeks
     */
    private record Drawn(Forecast begun, Course course) {}

    private Residents(Plan plan, Lately lately, List<Drawn> draws, OxygenOutage outage) {
        this.plan = plan;
        this.lately = lately;
        this.draws = draws;
        this.outage = outage;
    }

    /** The power cut a page rehearses unless told otherwise: a night and a day, freezing outdoors, the plan's backup used. */
    public static OutageOrder usualOutage() {
        return new OutageOrder(24, Outdoors.constant(0), true, true);
    }

    /**
     * Settles and runs it.
     *
     * @param draws {@link #DRAWS} where somebody waits
     * @throws java.util.concurrent.CancellationException once it is cancelled
     */
    public static Residents of(Plan plan, Lately lately, OutageOrder order, int draws, Ensemble.Progress progress) {
        Plan named = Joined.resident(plan);
        Steps steps = new Steps(progress, draws + OxygenOutage.DRAWS);
        SystemTwin twin = SystemTwin.of(named);
        CaughtUp caughtUp = CaughtUp.of(named, twin, lately);
        List<Drawn> drawn = new Ensemble(twin.network().parameters(), draws, SEED)
                .map(
                        parameters -> {
                            Forecast begun = caughtUp.begun(parameters);
                            return new Drawn(begun, Arrivals.without(begun));
                        },
                        steps);
        return new Residents(named, lately, drawn, OxygenOutage.of(named, order, steps));
    }

    /**
     * With animals that are to come.
     *
     * @throws java.util.concurrent.CancellationException once it is cancelled
     */
    public Burden with(Addition addition, Ensemble.Progress progress) {
        return with(addition, List.of(), progress);
    }

    /**
     * With animals that are to come together with others, and with all of them.
     *
     * @param others who come on the same day; what is told is of all
     * @throws java.util.concurrent.CancellationException once it is cancelled
     */
    public Burden with(Addition addition, List<Addition> others, Ensemble.Progress progress) {
        Steps steps = new Steps(progress, draws.size() + 2 * OxygenOutage.DRAWS);
        Plan young = plan;
        Plan grown = plan;
        double youngMass = 0;
        double grownMass = 0;
        for (Addition each : Stream.concat(others.stream(), Stream.of(addition)).toList()) {
            young = Joined.young(young, each);
            grown = Joined.grown(grown, each);
            youngMass += each.count() * each.mass();
            grownMass += each.count() * each.grown();
        }
        Masses masses = new Masses(youngMass, grownMass);
        SystemTwin withYoung = SystemTwin.of(young);
        SystemTwin withGrown = SystemTwin.of(grown);
        List<Outcome> outcomes = Ensemble.each(
                draws.size(), draw -> outcome(draws.get(draw), addition.day(), masses, withYoung, withGrown), steps);
        return Burden.of(plan, lately, addition, outcomes, outage, outage.of(young, steps), outage.of(grown, steps));
    }

    /** Of all that come, as they come and grown. */
    private record Masses(double young, double grown) {}

    /**
     * What one draw tells.
     *
     * @param peaksWithout in the three weeks from the day they come
     * @param peaks with them
     * @param calm first day on which they could come and the water stay calm, 0 or whole weeks from today; infinite for none
     * @param without twelve weeks of the system as it is
     * @param young with them from today
     * @param grown the same were they grown
     * @param brokenOff whether any of it came to a state no law of the twin holds for
     */
    record Outcome(
            Peaks peaksWithout,
            Peaks peaks,
            @Unit("d") double calm,
            Weeks without,
            Weeks young,
            Weeks grown,
            boolean brokenOff) {}

    private static Outcome outcome(Drawn drawn, int day, Masses masses, SystemTwin withYoung, SystemTwin withGrown) {
        Arrivals arrivals = new Arrivals(drawn.begun(), withYoung, masses.young());
        Course young = arrivals.today();
        Course grown = new Arrivals(drawn.begun(), withGrown, masses.grown()).today();
        boolean sound = Stream.of(drawn.course(), young, grown).allMatch(course -> course.brokenOff() == null);
        Peaks without = Peaks.of(drawn.course(), day);
        Peaks today = Peaks.of(young, 0);
        // Where it is not calm without them, it is not for want of waiting.
        boolean waits = sound && without.isCalm() && !today.isCalm();
        return new Outcome(
                without,
                sound && day > 0 ? arrivals.peaks(day) : today,
                waits ? arrivals.laterCalmDay() : 0,
                Weeks.of(drawn.course()),
                Weeks.of(young),
                Weeks.of(grown),
                !sound);
    }

    /** How many draws it stands on. */
    public int draws() {
        return draws.size();
    }
}
