package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/** Tells what growing corals will take out of the water, and what to dose for it. */
public final class GrowthWords {
    /** When it is told, in years: doses within a year, room over five. */
    @Unit("y")
    static final double[] TOLD = {0, 0.25, 0.5, 1, 3, 5};

    private static final double DAY = 86_400;
    private static final double SOON = 0.5;

    /** Of the alkalinity taken now; less is within what tests show. */
    private static final double NOTABLE = 0.05;

    private static final double CALCIUM = 40.078e-3; // kg/mol
    private static final double MAGNESIUM = 24.305e-3;

    private final Plan plan;
    private final Growth growth;
    private final double volume;
    private final ReefSources sources;

    /**
     * For a system.
     *
     * @param volume of its water
     */
    public GrowthWords(Plan plan, Growth growth, @Unit("m^3") double volume) {
        this(plan, growth, volume, new ReefSources());
    }

    GrowthWords(Plan plan, Growth growth, @Unit("m^3") double volume, ReefSources sources) {
        this.sources = sources;
        this.plan = plan;
        this.growth = growth;
        this.volume = volume;
    }

    /**
     * What is asked of the water after some time.
     *
     * @param years from now
     * @param when the same in words
     * @param covered of the floor, seen from above
     * @param doses of the plan's solutions that bring it
     */
    public record Row(
            @Unit("y") double years,
            String when,
            Figure alkalinity,
            Figure calcium,
            Figure magnesium,
            Figure covered,
            List<DoseAhead> doses) {}

    /** A row for each time. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (double years : TOLD) {
            Ranged alkalinity = growth.alkalinity(years);
            Demand demand = growth.demand(years);
            double part = alkalinity.value() == 0 ? 0 : 1 / alkalinity.value();
            rows.add(new Row(
                    years,
                    when(years),
                    perDay(alkalinity).figure(Measure.ALKALINITY_A_DAY),
                    perDay(alkalinity.times(part * demand.calcium() * CALCIUM)).figure(Measure.CONCENTRATION_A_DAY),
                    perDay(alkalinity.times(part * demand.magnesium() * MAGNESIUM))
                            .figure(Measure.CONCENTRATION_A_DAY),
                    Figure.exact(Measure.SHARE, growth.covered(years) / floor()),
                    DoseAhead.of(plan, growth, years)));
        }
        return List.copyOf(rows);
    }

    private Ranged perDay(Ranged perSecond) {
        return perSecond.times(DAY / volume);
    }

    private double floor() {
        return plan.display().length().in("m") * plan.display().width().in("m");
    }

    private static String when(double years) {
        if (years == 0) {
            return "now";
        }
        return years < 1
                ? "in " + Math.round(12 * years) + " months"
                : years == 1 ? "in a year" : "in " + Math.round(years) + " years";
    }

    /** What to expect and to prepare. */
    public Advice advice() {
        List<Sentence> remarks = new ArrayList<>();
        if (!growth.isAnySkeleton()) {
            return new Advice(
                    Sentence.of("Nothing to prepare: no coral of the plan lays down skeleton, nor do coralline algae."),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    sources.all().all());
        }
        Sentence lead = lead();
        strange().ifPresent(remarks::add);
        remarks.add(floorSentence());
        remarks.add(Sentence.of(
                "Move a dose only when your readings ask for it: the page Water says when. This tells how far it will have to"
                        + " go, so that bottles, pumps and salt are there in time."));
        return new Advice(
                lead, remarks, List.of(), List.of(), List.of(), sources.all().all());
    }

    private Sentence lead() {
        double now = growth.alkalinity(0).value();
        double more = growth.moreAlkalinity(SOON).value();
        Sentence use = Sentence.of(
                "skeletons take ",
                Sentence.figure(
                        perDay(growth.alkalinity(0)).figure(Measure.ALKALINITY_A_DAY),
                        growth.captivity().isFitted()
                                ? sources.captivity(growth.captivity())
                                : sources.calcification()),
                " now and ",
                Sentence.figure(
                        perDay(growth.alkalinity(SOON)).figure(Measure.ALKALINITY_A_DAY),
                        sources.captivity(growth.captivity())),
                " in half a year.");
        if (more < NOTABLE * now) {
            return Sentence.of("Leave doses as they are for half a year: ", use);
        }
        List<DoseAhead> doses = DoseAhead.of(plan, growth, SOON);
        if (doses.isEmpty()) {
            return Sentence.of("Be ready to bring more alkalinity and calcium within half a year: ", use);
        }
        List<Object> pieces = new ArrayList<>();
        pieces.add("Be ready to dose ");
        for (int i = 0; i < doses.size(); i++) {
            DoseAhead dose = doses.get(i);
            pieces.add(i == 0 ? "" : i == doses.size() - 1 ? " and " : ", ");
            pieces.add(dose.then().times(DAY).figure(Measure.DOSE_A_DAY));
            pieces.add(" of " + dose.dosing().name() + " instead of ");
            pieces.add(Figure.exact(Measure.DOSE_A_DAY, dose.now() * DAY));
        }
        pieces.add(" in half a year: ");
        pieces.add(use);
        return Sentence.of(pieces.toArray());
    }

    private Optional<Sentence> strange() {
        Captivity captivity = growth.captivity();
        if (!captivity.isStrange()) {
            return Optional.empty();
        }
        boolean more = captivity.apparent() > captivity.factor().value();
        return Optional.of(Sentence.of(
                "Look at the areas in the plan before you trust this: the alkalinity that is used is ",
                Figure.exact(Measure.FACTOR, captivity.all().value()),
                " times what they would take at the usual growth; "
                        + (more
                                ? "corals are larger or more than the plan says, or something else uses it, as lime on a"
                                        + " heater does."
                                : "corals are smaller or grow badly, or the use is not known well.")));
    }

    private Sentence floorSentence() {
        return Sentence.of(
                "Colonies cover ",
                Sentence.figure(Figure.exact(Measure.SHARE, growth.covered(0) / floor()), sources.crowding()),
                " of the floor seen from above, ",
                Figure.exact(Measure.SHARE, growth.covered(1) / floor()),
                " in a year and ",
                Figure.exact(Measure.SHARE, growth.covered(3) / floor()),
                " in three, if none is cut.");
    }
}
