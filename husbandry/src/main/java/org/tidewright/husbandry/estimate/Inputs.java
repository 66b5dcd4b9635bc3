package org.tidewright.husbandry.estimate;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/**
 * All that bears on the levels of a system's water.
 *
 * @param origin time 0: a midnight of the keeper's clock
 * @param until time of the last line; after it lies the future
 * @param readings in order of time
 * @param checks of methods on standards
 * @param solutions that are dosed, or were
 * @param renewals water changes in order of time, for {@link #HORIZON} after {@code until} those that the plan lets expect
 * @param upsets times at which something was moved that may have changed at once what the system uses
 * @param calcifying how the building of skeletons spreads over the day
 * @param expected levels and uses as far as they are known without any reading
 * @param response share by which calcification rises for each share by which alkalinity does; 0 for none
 * @param magnesiumShare moles of magnesium in the skeletons for each of magnesium and calcium together
 * @param notes what could not be counted, in sentences for the keeper
 */
public record Inputs(
        Instant origin,
        @Unit("d") double until,
        List<Reading> readings,
        List<Check> checks,
        List<Solution> solutions,
        List<Renewal> renewals,
        List<Upset> upsets,
        DayShape calcifying,
        Map<WaterQuantity, Expected> expected,
        @Unit("1") double response,
        @Unit("1") double magnesiumShare,
        List<String> notes) {
    /** Days over which water changes are told by the day: the rarest usual ones are made monthly. */
    private static final double CHANGES_TOLD = 28;

    /** How far ahead water changes are foreseen. */
    @Unit("d")
    public static final double HORIZON = 400;

    private static final double DAY = 86_400;

    /** kg/mol; IUPAC 2021. */
    private static final double CALCIUM_MASS = 40.078e-3;

    /**
     * A reading that may be counted.
     *
     * @param line of the journal it stands in
     * @param value in the quantity's coherent unit
     */
    public record Reading(
            UUID line, @Unit("d") double time, @Unit("*") double value, TestMethod method) {
        public WaterQuantity quantity() {
            return method.quantity();
        }
    }

    /** What a method showed of a standard, in the quantity's coherent unit. */
    public record Check(TestMethod method, @Unit("*") double shown, Known standard) {}

    /** Something was moved. */
    public record Upset(@Unit("d") double time, String what) {}

    /**
     * Known without any reading.
     *
     * @param stated level of the water, as the keeper's kit showed it some time; null where the plan is silent
     * @param use of it a day by the system
     */
    public record Expected(@Nullable Known stated, Known use) {}

    public Inputs {
        readings = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::time))
                .toList();
        renewals = renewals.stream()
                .sorted(Comparator.comparingDouble(Renewal::time))
                .toList();
        checks = List.copyOf(checks);
        solutions = List.copyOf(solutions);
        upsets = List.copyOf(upsets);
        expected = Map.copyOf(expected);
        notes = List.copyOf(notes);
    }

    /**
     * What a plan and a journal tell.
     *
     * <ul>
     *   <li>Doses: the plan's programme; each {@code LeverMoved} of “&lt;solution&gt; dose” sets its rate from then on, the
     *       plan's own standing before the first; single doses come on top. Limewater in the top-off counts by what
     *       evaporates, as far as the plan tells.
     *   <li>Water changes: the journal's, if it has any; else the plan's, each spread over its interval in daily parts,
     *       because nobody said on which days they fell.
     *   <li>A reading without a method counts as made by the coarsest of its quantity.
     * </ul>
     *
     * @param lines in order of time; struck ones are passed over
     * @param span readings outside it are passed over
     */
    public static Inputs of(Plan plan, List<Line> lines, Span span) {
        return JournalInputs.of(plan, lines, span);
    }

    /** What the plan states of a level; null where it is silent. */
    @Nullable
    Known stated(WaterQuantity quantity) {
        Expected known = expected.get(quantity);
        return known == null ? null : known.stated();
    }

    /** A level as the plan states it, else as it usually is. */
    @Unit("*")
    double level(WaterQuantity quantity) {
        Known stated = stated(quantity);
        return stated == null ? Priors.of(quantity).usualLevel().value() : stated.value();
    }

    /** What is expected of a use a day. */
    Known use(WaterQuantity quantity) {
        Expected known = expected.get(quantity);
        return known == null ? new Known(0, Priors.of(quantity).useError()) : known.use();
    }

    /** What the water changes of four weeks to come bring of a level a day, which stands as it does; negative where they take. */
    @Unit("*")
    double renewed(WaterQuantity quantity, @Unit("*") double level, @Unit("d") double time) {
        double sum = 0;
        for (Renewal renewal : renewals) {
            Known water = renewal.newWater().get(quantity);
            if (water != null && renewal.time() > time && renewal.time() <= time + CHANGES_TOLD) {
                sum += renewal.share() * (water.value() - level);
            }
        }
        return sum / CHANGES_TOLD;
    }

    /** A time as days since the origin. */
    public @Unit("d") double time(Instant at) {
        Duration since = Duration.between(origin, at);
        return (since.getSeconds() + since.getNano() * 1e-9) / DAY;
    }

    /** A number of days since the origin as a time. */
    public Instant at(@Unit("d") double time) {
        return origin.plusNanos(Math.round(time * DAY * 1e9));
    }

    /** With another programme of a solution from a time on. */
    public Inputs dosed(String solution, @Unit("*") double amountPerDay, @Unit("d") double from) {
        if (solutions.stream().noneMatch(each -> each.name().equals(solution))) {
            throw new IllegalArgumentException("nothing dosed is called “" + solution + "”; there are "
                    + String.join(", ", solutions.stream().map(Solution::name).toList()));
        }
        return new Inputs(
                origin,
                until,
                readings,
                checks,
                solutions.stream()
                        .map(each -> each.name().equals(solution) ? each.dosed(amountPerDay, from) : each)
                        .toList(),
                renewals,
                upsets,
                calcifying,
                expected,
                response,
                magnesiumShare,
                notes);
    }

    /**
     * Calcium that goes into the skeletons for each mole of alkalinity.
     *
     * @source (Ca, Mg)CO3: two moles of alkalinity take one of both
     */
    public @Unit("kg/mol") double calciumForAlkalinity() {
        return (1 - magnesiumShare) / 2 * CALCIUM_MASS;
    }
}
