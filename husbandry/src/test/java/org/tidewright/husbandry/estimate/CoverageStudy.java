package org.tidewright.husbandry.estimate;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.tidewright.plan.method.WaterQuantity;

/** How often intervals hold the truth of tanks that live on the twin, and how far estimates err beside simpler ways. */
final class CoverageStudy {
    /** What is compared with the truth. */
    enum Subject {
        LEVEL_AT_READINGS("level when it was read"),
        LEVEL_AHEAD("level 7 days ahead"),
        USE_NOW("use a day, now"),
        USE_BEFORE("use a day, looking back"),
        READING_AS_IT_CAME("next reading");

        final String words;

        Subject(String words) {
            this.words = words;
        }
    }

    static final int AHEAD = 7;
    private static final int[] CUTS = {40, 62, 83};

    /** A use of a day is that of the days around it: two on each side. */
    private static final double AROUND = 2;

    private static final int FEWEST_READINGS = 3;

    /** What a system uses or makes; of the others, which a room and its devices hold, a use means little. */
    private static final Set<WaterQuantity> USED =
            EnumSet.complementOf(EnumSet.of(WaterQuantity.TEMPERATURE, WaterQuantity.PH, WaterQuantity.OXYGEN));

    private final Map<Subject, Map<WaterQuantity, Tally>> tallies = new EnumMap<>(Subject.class);
    private int tanks;
    private int mistakes;
    private int mistakesFound;
    private int sound;
    private int soundSetAside;

    private CoverageStudy() {
        for (Subject subject : Subject.values()) {
            tallies.put(subject, new EnumMap<>(WaterQuantity.class));
        }
    }

    /** Of so many tanks of a seed. */
    static CoverageStudy of(long seed, int tanks) {
        List<CoverageStudy> each = IntStream.range(0, tanks)
                .parallel()
                .mapToObj(draw -> TwinTank.of(seed, draw))
                .flatMap(Optional::stream)
                .map(tank -> new CoverageStudy().study(tank))
                .toList();
        CoverageStudy all = new CoverageStudy();
        all.tanks = each.size();
        for (CoverageStudy one : each) {
            one.tallies.forEach((subject, of) ->
                    of.forEach((quantity, tally) -> all.of(subject, quantity).add(tally)));
            all.mistakes += one.mistakes;
            all.mistakesFound += one.mistakesFound;
            all.sound += one.sound;
            all.soundSetAside += one.soundSetAside;
        }
        return all;
    }

    Tally of(Subject subject, WaterQuantity quantity) {
        Map<WaterQuantity, Tally> of = tallies.get(subject);
        if (of == null) {
            throw new IllegalStateException(subject.words);
        }
        return of.computeIfAbsent(quantity, key -> new Tally());
    }

    /** All that was found of a subject. */
    Map<WaterQuantity, Tally> of(Subject subject) {
        return tallies.getOrDefault(subject, Map.of());
    }

    /** How many tanks there were: those of which the twin has a law for all that was drawn. */
    int tanks() {
        return tanks;
    }

    /** Share of gross mistakes that were set aside. */
    double mistakesFound() {
        return (double) mistakesFound / mistakes;
    }

    /** Share of sound readings that were. */
    double soundSetAside() {
        return (double) soundSetAside / sound;
    }

    private CoverageStudy study(TwinTank tank) {
        Inputs whole = tank.inputs(TwinTank.DAYS);
        for (int i = 0; i < CUTS.length; i++) {
            Inputs known = tank.inputs(CUTS[i]);
            for (Estimate estimate : Estimates.of(known).all().values()) {
                if (estimate.readings().size() >= FEWEST_READINGS) {
                    lookAhead(tank, estimate, withFuture(known, whole), CUTS[i]);
                    if (i == CUTS.length - 1) {
                        lookBack(tank, estimate);
                    }
                }
            }
        }
        return this;
    }

    /** What the keeper will do is known; what the water will show is not. */
    private static Inputs withFuture(Inputs known, Inputs whole) {
        return new Inputs(
                known.origin(),
                known.until(),
                known.readings(),
                known.checks(),
                whole.solutions(),
                whole.renewals(),
                known.upsets(),
                known.calcifying(),
                known.expected(),
                known.response(),
                known.magnesiumShare(),
                known.notes());
    }

    private void lookAhead(TwinTank tank, Estimate estimate, Inputs future, int cut) {
        WaterQuantity quantity = estimate.quantity();
        double zero = tank.dayZero(future);
        double time = tank.wakingTime(cut + AHEAD);
        Known level = estimate.ahead(time + zero, future).level();
        double truth = tank.truth(quantity, time);
        Spreadsheet simple = Spreadsheet.of(estimate.readings(), time + zero);
        Tally ahead = of(Subject.LEVEL_AHEAD, quantity);
        ahead.add(level, truth);
        ahead.compare(level.value() - truth, simple.last() - truth, simple.line() - truth);
        if (USED.contains(quantity)) {
            Known found = estimate.at(cut + zero).use();
            double used = tank.use(quantity, cut - AROUND, cut + AROUND);
            double dosed = future.solutions().stream()
                            .mapToDouble(solution -> solution.amount(cut + zero - AROUND, cut + zero + AROUND)
                                    * solution.effectOn(quantity))
                            .sum()
                    / (2 * AROUND);
            Tally now = of(Subject.USE_NOW, quantity);
            now.add(found, used);
            // A hunch has it that what is dosed is used; a spreadsheet adds by how much the last readings fell.
            now.compare(found.value() - used, dosed - used, dosed - simple.slope() - used);
        }
    }

    private void lookBack(TwinTank tank, Estimate estimate) {
        WaterQuantity quantity = estimate.quantity();
        double zero = tank.dayZero(estimate.fitted().model().inputs());
        for (int i = 0; i < estimate.readings().size(); i++) {
            Estimate.Judged judged = estimate.readings().get(i);
            double time = judged.reading().time();
            double truth = tank.truth(quantity, time - zero);
            Known level = estimate.at(time).level();
            Tally back = of(Subject.LEVEL_AT_READINGS, quantity);
            back.add(level, truth);
            back.compare(level.value() - truth, judged.reading().value() - truth);
            boolean mistaken = tank.mistakes().contains(judged.reading().line());
            boolean aside = judged.standing() == Estimate.Standing.SET_ASIDE;
            mistakes += mistaken ? 1 : 0;
            mistakesFound += mistaken && aside ? 1 : 0;
            sound += mistaken ? 0 : 1;
            soundSetAside += !mistaken && aside ? 1 : 0;
            if (!aside && i > 0) {
                of(Subject.READING_AS_IT_CAME, quantity)
                        .add(judged.expected(), judged.reading().value());
            }
        }
        for (double day = 5; USED.contains(quantity) && day < 80; day += 7.3) {
            of(Subject.USE_BEFORE, quantity)
                    .add(estimate.at(day + zero).use(), tank.use(quantity, day - AROUND, day + AROUND));
        }
    }

    /**
     * What a keeper may do without an estimate.
     *
     * @param last the last reading
     * @param line through the last four, at the time asked for
     * @param slope of that line, a day
     */
    record Spreadsheet(double last, double line, double slope) {
        private static final int THROUGH = 4;

        static Spreadsheet of(List<Estimate.Judged> readings, double time) {
            List<Inputs.Reading> through =
                    readings.subList(Math.max(0, readings.size() - THROUGH), readings.size()).stream()
                            .map(Estimate.Judged::reading)
                            .toList();
            double middle =
                    through.stream().mapToDouble(Inputs.Reading::time).average().orElseThrow();
            double mean = through.stream()
                    .mapToDouble(Inputs.Reading::value)
                    .average()
                    .orElseThrow();
            double squares = 0;
            double products = 0;
            for (Inputs.Reading reading : through) {
                squares += (reading.time() - middle) * (reading.time() - middle);
                products += (reading.time() - middle) * (reading.value() - mean);
            }
            double slope = squares > 0 ? products / squares : 0;
            double last = through.get(through.size() - 1).value();
            return new Spreadsheet(last, mean + slope * (time - middle), slope);
        }
    }
}
