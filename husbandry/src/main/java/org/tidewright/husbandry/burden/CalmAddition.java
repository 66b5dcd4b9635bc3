package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.system.SystemTwin;

/**
 * The most that may come today at once with ammonia and nitrite staying calm, by the twin of a plan: small fish, fed like
 * those that are there, followed for three weeks.
 *
 * @param mass live, of all of them; 0 where the water is not calm even without them
 * @param most that was tried: where {@code mass} is as much, more may be calm too
 * @param draws it stands on
 */
public record CalmAddition(
        @Unit("kg") double mass, @Unit("kg") double most, int draws) {
    /** As many as for the figures of one animal: of fewer a single odd one would decide. */
    public static final int DRAWS = Residents.DRAWS;

    private static final long SEED = 20_260_601;

    /** So many of the draws that are calm by themselves have to stay so. */
    private static final double NEARLY_ALL = 0.9;

    /** They come as fish of this mass, and grow to four times of it: small ones breathe more for their mass. */
    private static final double ONE = 0.005;

    private static final double GROWTH = 4;
    private static final int MOST_FISH = 100;

    /** Where nobody lives so much is tried at most. */
    private static final double LEAST_TRIED = 0.02;

    private static final int HALVINGS = 5;

    /**
     * Seeks it by halving, up to as much as lives there by the plan.
     *
     * @param draws {@link #DRAWS} where somebody waits
     */
    public static CalmAddition of(Plan plan, Lately lately, int draws, Ensemble.Progress progress) {
        Plan named = Joined.resident(plan);
        SystemTwin twin = SystemTwin.of(named);
        CaughtUp caughtUp = CaughtUp.of(named, twin, lately);
        List<Forecast> begun = new Ensemble(twin.network().parameters(), draws, SEED).map(caughtUp::begun, progress);
        List<Forecast> restful = which(begun, progress, CalmAddition::isCalm);
        double most = Math.max(LEAST_TRIED, Joined.mass(named));
        if (2 * restful.size() < draws) {
            return new CalmAddition(0, most, draws);
        }
        if (isCalm(named, restful, most, progress)) {
            return new CalmAddition(most, most, draws);
        }
        double calm = 0;
        double not = most;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (calm + not) / 2;
            boolean holds = isCalm(named, restful, middle, progress);
            calm = holds ? middle : calm;
            not = holds ? not : middle;
        }
        return new CalmAddition(calm, most, draws);
    }

    private static boolean isCalm(Plan plan, List<Forecast> restful, double mass, Ensemble.Progress progress) {
        int count = (int) Math.max(1, Math.min(MOST_FISH, Math.round(mass / ONE)));
        double one = mass / count;
        SystemTwin joined = SystemTwin.of(Joined.young(plan, Addition.today(one, count, GROWTH * one)));
        List<Forecast> calm = which(restful, progress, draw -> new Arrivals(draw, joined, mass).isCalmToday());
        return calm.size() >= NEARLY_ALL * restful.size();
    }

    private static boolean isCalm(Forecast draw) {
        Course course = draw.courseAlone(Peaks.DAYS, Peaks.DAYS * Arrivals.SAMPLES_A_DAY + 1, Peaks.TOLD, List.of());
        return course.brokenOff() == null && Peaks.of(course, 0).isCalm();
    }

    private static List<Forecast> which(List<Forecast> draws, Ensemble.Progress progress, Predicate<Forecast> asked) {
        List<Boolean> answers = Ensemble.each(draws.size(), draw -> asked.test(draws.get(draw)), progress);
        return IntStream.range(0, draws.size())
                .filter(answers::get)
                .mapToObj(draws::get)
                .toList();
    }

    /** Whether as much as was tried stays calm. */
    public boolean isMoreThanTried() {
        return mass >= most;
    }
}
