package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.burden.Residents.Outcome;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Outlook.Range;
import org.tidewright.twin.rehearsal.OutageOrder;

/**
 * What animals that are to come do to the water. Nitrogen as such, nitrate and phosphate as NO3 and PO4, in mg/L. Ammonia and
 * nitrite are told from the day they come, all else as if they came today.
 *
 * @param plan in which the animals are that are there
 * @param ammonia highest in the three weeks after they come; like the next three of the draws in which the water is calm
 *     without them, unless these are less than half
 * @param freeAmmonia likewise
 * @param nitrite likewise
 * @param calm first day, 0 or whole weeks from today, on which they could come and the water stay calm; infinite for none of
 *     eight weeks
 * @param calmToday share of the draws that are calm without them in which it stays calm when they come today
 * @param restless share of all draws in which it is not calm even without them
 * @param nitrate in the twelfth week
 * @param phosphate likewise
 * @param oxygen lowest of a day and night a week after they came, mg/L
 * @param saturation likewise, percent
 * @param act in an outage, until the keeper must act for want of oxygen
 * @param harm likewise, until animals come to harm
 * @param grown the same were they grown
 * @param draws how many the water's figures stand on
 * @param endedEarly how many more came to a state no law of the twin holds for, and are left out
 */
public record Burden(
        Plan plan,
        Lately lately,
        Addition addition,
        OutageOrder order,
        Compared ammonia,
        Compared freeAmmonia,
        Compared nitrite,
        Range calm,
        @Unit("1") double calmToday,
        @Unit("1") double restless,
        Compared nitrate,
        Compared phosphate,
        Compared oxygen,
        Compared saturation,
        Sooner act,
        Sooner harm,
        Grown grown,
        int draws,
        int endedEarly) {
    /** Share of saturation on a usual night below which more animals wait for more air; common practice. */
    @Unit("%")
    public static final double SHORT_OF_AIR = 60;

    /** Below it a keeper watches; common practice. */
    @Unit("%")
    public static final double EASY_BREATHING = 80;

    /** So much less time in an outage is worth telling. */
    @Unit("s")
    public static final double LESS_TIME = 1800;

    /** Share of the draws above which they speak for all. */
    @Unit("1")
    public static final double MOST_DRAWS = 0.5;

    /** What only months show. */
    public record Grown(
            Compared nitrate, Compared phosphate, Compared oxygen, Compared saturation, Sooner act, Sooner harm) {}

    static Burden of(
            Plan plan,
            Lately lately,
            Addition addition,
            List<Outcome> all,
            OxygenOutage outage,
            OxygenOutage.Times young,
            OxygenOutage.Times grown) {
        List<Outcome> draws = all.stream().filter(draw -> !draw.brokenOff()).toList();
        if (draws.isEmpty()) {
            throw new IllegalArgumentException(
                    "what these animals would do cannot be told: in every draw the system comes to"
                            + " a state no law of the twin holds for; look at the plan's forecast without them first");
        }
        List<Outcome> restful =
                draws.stream().filter(draw -> draw.peaksWithout().isCalm()).toList();
        // Where most are restless there is nothing else to tell of.
        List<Outcome> counted = 2 * restful.size() >= draws.size() ? restful : draws;
        OxygenOutage.Times without = outage.without();
        return new Burden(
                plan,
                lately,
                addition,
                outage.order(),
                peak(counted, Peaks::ammonia),
                peak(counted, Peaks::freeAmmonia),
                peak(counted, Peaks::nitrite),
                calm(restful),
                share(restful, draw -> draw.calm() == 0),
                share(draws, draw -> !draw.peaksWithout().isCalm()),
                young(draws, Weeks::nitrate),
                young(draws, Weeks::phosphate),
                young(draws, Weeks::oxygen),
                young(draws, Weeks::saturation),
                Sooner.of(without.act(), young.act()),
                Sooner.of(without.harm(), young.harm()),
                new Grown(
                        grown(draws, Weeks::nitrate),
                        grown(draws, Weeks::phosphate),
                        grown(draws, Weeks::oxygen),
                        grown(draws, Weeks::saturation),
                        Sooner.of(without.act(), grown.act()),
                        Sooner.of(without.harm(), grown.harm())),
                draws.size(),
                all.size() - draws.size());
    }

    private static Range calm(List<Outcome> restful) {
        double[] days = restful.stream().mapToDouble(Outcome::calm).toArray();
        return days.length == 0
                ? new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                : Range.of(days);
    }

    private static double share(List<Outcome> draws, Predicate<Outcome> which) {
        return draws.isEmpty() ? 0 : (double) draws.stream().filter(which).count() / draws.size();
    }

    private static Compared peak(List<Outcome> draws, ToDoubleFunction<Peaks> told) {
        return Compared.of(
                draws, draw -> told.applyAsDouble(draw.peaksWithout()), draw -> told.applyAsDouble(draw.peaks()));
    }

    private static Compared young(List<Outcome> draws, ToDoubleFunction<Weeks> told) {
        return Compared.of(draws, draw -> told.applyAsDouble(draw.without()), draw -> told.applyAsDouble(draw.young()));
    }

    private static Compared grown(List<Outcome> draws, ToDoubleFunction<Weeks> told) {
        return Compared.of(draws, draw -> told.applyAsDouble(draw.without()), draw -> told.applyAsDouble(draw.grown()));
    }

    /** What to do, and why. */
    public Advice advice() {
        return new BurdenWords(this).advice();
    }
}
