package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.tidewright.plan.method.WaterQuantity;

/** How often intervals hold the truth of tanks that live on the twin, and how far estimates err beside simpler ways. */
final class CoverageStudy {
    static final int AHEAD = 7;
    private static final double[] CUTS = {40, 62, 83};
    private static final double NINETY = 0.9;

    private final Map<WaterQuantity, Tally> atReadings = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Tally> ahead = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Tally> use = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Tally> pastUse = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Tally> surprises = new EnumMap<>(WaterQuantity.class);
    int mistakes;
    int mistakesFound;
    int falselySetAside;
    int readings;

    /** How often an interval held, and the errors of the estimate and of two simpler ways. */
    static final class Tally {
        int count;
        int held;
        int below;
        int compared;
        double squares;
        double scores;
        double squaresOfLast;
        double squaresOfLine;
        double widths;

        void add(Known known, double truth) {
            count++;
            held += known.holds(truth, NINETY) ? 1 : 0;
            below += truth < known.quantile(0.05) ? 1 : 0;
            scores += Math.pow((known.value() - truth) / known.standardError(), 2);
            widths += known.standardError();
        }

        void compare(double error, double errorOfLast, double errorOfLine) {
            compared++;
            squares += error * error;
            squaresOfLast += errorOfLast * errorOfLast;
            squaresOfLine += errorOfLine * errorOfLine;
        }

        double coverage() {
            return (double) held / count;
        }

        void add(Tally other) {
            count += other.count;
            held += other.held;
            below += other.below;
            compared += other.compared;
            squares += other.squares;
            scores += other.scores;
            squaresOfLast += other.squaresOfLast;
            squaresOfLine += other.squaresOfLine;
            widths += other.widths;
        }
    }

    /** Of so many tanks of a seed. */
    static CoverageStudy of(long seed, int tanks) {
        List<CoverageStudy> each = IntStream.range(0, tanks)
                .parallel()
                .mapToObj(draw -> new CoverageStudy().study(TwinTank.of(seed, draw)))
                .toList();
        CoverageStudy all = new CoverageStudy();
        each.forEach(all::add);
        return all;
    }

    private void add(CoverageStudy other) {
        merge(atReadings, other.atReadings);
        merge(ahead, other.ahead);
        merge(use, other.use);
        merge(pastUse, other.pastUse);
        merge(surprises, other.surprises);
        mistakes += other.mistakes;
        mistakesFound += other.mistakesFound;
        falselySetAside += other.falselySetAside;
        readings += other.readings;
    }

    private static void merge(Map<WaterQuantity, Tally> into, Map<WaterQuantity, Tally> from) {
        from.forEach((quantity, tally) -> of(into, quantity).add(tally));
    }

    private static Tally of(Map<WaterQuantity, Tally> tallies, WaterQuantity quantity) {
        return tallies.computeIfAbsent(quantity, key -> new Tally());
    }

    Map<WaterQuantity, Tally> atReadings() {
        return atReadings;
    }

    Map<WaterQuantity, Tally> ahead() {
        return ahead;
    }

    Map<WaterQuantity, Tally> use() {
        return use;
    }

    Map<WaterQuantity, Tally> pastUse() {
        return pastUse;
    }

    Map<WaterQuantity, Tally> surprises() {
        return surprises;
    }

    private CoverageStudy study(TwinTank tank) {
        Inputs whole = tank.inputs(TwinTank.DAYS);
        for (int i = 0; i < CUTS.length; i++) {
            Inputs known = tank.inputs(CUTS[i]);
            Estimates estimates = Estimates.of(known);
            for (Estimate estimate : estimates.all().values()) {
                if (estimate.readings().size() >= 3) {
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
                known.magnesiumShare(),
                known.notes());
    }

    private void lookAhead(TwinTank tank, Estimate estimate, Inputs future, double cut) {
        WaterQuantity quantity = estimate.quantity();
        double zero = tank.dayZero(future);
        double time = cut + AHEAD;
        Known level = estimate.ahead(time + zero, future).level();
        double truth = tank.truth(quantity, time);
        Tally tally = of(ahead, quantity);
        tally.add(level, truth);
        List<Estimate.Judged> readings = estimate.readings();
        Baselines simple = Baselines.of(readings, time + zero);
        tally.compare(level.value() - truth, simple.last() - truth, simple.line() - truth);
        // The day around now, moved so that no water change falls into it.
        for (double middle = cut; middle > cut - 6; middle -= 0.5) {
            if (tank.isUndisturbed(middle - 0.5, middle + 0.5)) {
                Known found = estimate.at(middle + zero).use();
                double used = tank.use(quantity, middle - 0.5, middle + 0.5);
                Tally ofUse = of(use, quantity);
                ofUse.add(found, used);
                double dosed = future.solutions().stream()
                        .mapToDouble(solution -> solution.amount(middle(readings) , middle(readings) + 1)
                                * solution.effectOn(quantity))
                        .sum();
                ofUse.compare(found.value() - used, dosed - used, dosed - simple.slope() - used);
                break;
            }
        }
    }

    private static double middle(List<Estimate.Judged> readings) {
        return readings.get(readings.size() - 1).reading().time() - 1;
    }

    private void lookBack(TwinTank tank, Estimate estimate) {
        WaterQuantity quantity = estimate.quantity();
        double zero = tank.dayZero(estimate.fitted().model().inputs());
        for (Estimate.Judged judged : estimate.readings()) {
            double time = judged.reading().time();
            double truth = tank.truth(quantity, time - zero);
            Tally tally = of(atReadings, quantity);
            Known level = estimate.at(time).level();
            tally.add(level, truth);
            tally.compare(level.value() - truth, judged.reading().value() - truth, 0);
            readings++;
            boolean mistaken = tank.mistakes().contains(judged.reading().line());
            boolean aside = judged.standing() == Estimate.Standing.SET_ASIDE;
            mistakes += mistaken ? 1 : 0;
            mistakesFound += mistaken && aside ? 1 : 0;
            falselySetAside += !mistaken && aside ? 1 : 0;
            if (!aside && judged != estimate.readings().get(0)) {
                of(surprises, quantity).add(judged.expected(), judged.reading().value());
            }
        }
        for (double day = 5; day < 80; day += 7.3) {
            if (tank.isUndisturbed(day - 0.5, day + 0.5)) {
                of(pastUse, quantity).add(estimate.at(day + zero).use(), tank.use(quantity, day - 0.5, day + 0.5));
            }
        }
    }

    /** What a hunch and a spreadsheet say: the last reading, and a line through the last four. */
    record Baselines(double last, double line, double slope) {
        static Baselines of(List<Estimate.Judged> readings, double time) {
            List<Estimate.Judged> four = readings.subList(Math.max(0, readings.size() - 4), readings.size());
            double meanTime = four.stream().mapToDouble(r -> r.reading().time()).average().orElseThrow();
            double meanValue = four.stream().mapToDouble(r -> r.reading().value()).average().orElseThrow();
            double squares = 0;
            double products = 0;
            for (Estimate.Judged judged : four) {
                double dt = judged.reading().time() - meanTime;
                squares += dt * dt;
                products += dt * (judged.reading().value() - meanValue);
            }
            double slope = squares > 0 ? products / squares : 0;
            double last = readings.get(readings.size() - 1).reading().value();
            return new Baselines(last, meanValue + slope * (time - meanTime), slope);
        }
    }

    /** As a table of text. */
    List<String> table() {
        List<String> rows = new ArrayList<>();
        rows.add(String.format("mistakes %d found %d; sound readings %d, set aside %d", mistakes, mistakesFound,
                readings - mistakes, falselySetAside));
        rows.addAll(rows("level at readings", atReadings));
        rows.addAll(rows("level 7 days ahead", ahead));
        rows.addAll(rows("use now", use));
        rows.addAll(rows("use, past", pastUse));
        rows.addAll(rows("readings as they came", surprises));
        return rows;
    }

    private static List<String> rows(String what, Map<WaterQuantity, Tally> tallies) {
        List<String> rows = new ArrayList<>();
        tallies.forEach((quantity, tally) -> {
            double one = quantity.units().get(0).errorToHeld(Priors.of(quantity).usualLevel(), 1);
            rows.add(String.format(
                    "%-22s %-12s n %5d  held %5.1f %%  below %4.1f  z2 %6.2f  se %8.4f  rms %8.4f last %8.4f line %8.4f",
                    what,
                    quantity.key(),
                    tally.count,
                    100 * tally.coverage(),
                    100.0 * tally.below / tally.count,
                    tally.scores / tally.count,
                    tally.widths / tally.count / one,
                    Math.sqrt(tally.squares / Math.max(1, tally.compared)) / one,
                    Math.sqrt(tally.squaresOfLast / Math.max(1, tally.compared)) / one,
                    Math.sqrt(tally.squaresOfLine / Math.max(1, tally.compared)) / one));
        });
        return rows;
    }
}
