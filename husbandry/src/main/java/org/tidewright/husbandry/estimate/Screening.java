package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.plan.method.WaterQuantity;

/**
 * Finds readings that fit to no other, and levels that jumped. A reading is judged by what all others, earlier and later,
 * let expect of it, so the first of a journal is judged as well as one in the middle. Where two or more readings agree that
 * the level is elsewhere, a jump explains more than any one error, and is granted; a single reading at the end of a journal
 * cannot tell the two apart, and is set aside until the next one comes.
 *
 * <p>The worst is dealt with first, and all are judged anew: de Jong and Penzer 1998, J. Amer. Statist. Assoc. 93, 796-806.
 */
final class Screening {
    /** Errors off from which a reading is not believed: one in 16,000 sound ones is. */
    static final double GATE = 4;

    /** Readings that must agree before and after a jump. */
    private static final int AGREEING = 2;

    /** Findings closer than so many readings of the same quantity may be the same one. */
    private static final int APART = 4;

    private static final int MOST_ROUNDS = 25;

    private final Timeline timeline;
    private final Map<WaterQuantity, List<Integer>> places = new HashMap<>();
    private final int[] stopOf;

    /** Something that does not fit: a reading, or a jump just before it. */
    private record Finding(int reading, boolean jump, double score) {}

    private Screening(Timeline timeline) {
        this.timeline = timeline;
        stopOf = new int[timeline.readings().size()];
        for (int i = 0; i < timeline.stops().size(); i++) {
            for (int reading : timeline.stops().get(i).readings()) {
                stopOf[reading] = i;
                places.computeIfAbsent(timeline.readings().get(reading).quantity(), quantity -> new ArrayList<>())
                        .add(reading);
            }
        }
    }

    /** What of the evidence may be learnt from, with the noise that was filled into the timeline. */
    static Reckoning screen(Timeline timeline, Evidence evidence) {
        return new Screening(timeline).screen(evidence);
    }

    private Reckoning screen(Evidence all) {
        Evidence evidence = all;
        Reckoning reckoning = Reckoning.of(timeline, evidence);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Finding> findings = findings(reckoning);
            if (findings.isEmpty()) {
                return reckoning;
            }
            for (Finding finding : findings) {
                evidence = finding.jump()
                        ? evidence.jumping(
                                stopOf[finding.reading()],
                                timeline.readings().get(finding.reading()).quantity())
                        : evidence.without(finding.reading());
            }
            reckoning = Reckoning.of(timeline, evidence);
        }
        return reckoning;
    }

    /** The worst of each neighbourhood. */
    private List<Finding> findings(Reckoning reckoning) {
        List<Finding> suspects = suspects(reckoning);
        suspects.sort(Comparator.comparingDouble((Finding finding) -> -finding.score()));
        List<Finding> worst = new ArrayList<>();
        for (Finding suspect : suspects) {
            if (worst.stream().noneMatch(other -> near(suspect, other))) {
                worst.add(suspect);
            }
        }
        return worst;
    }

    private boolean near(Finding one, Finding other) {
        WaterQuantity quantity = timeline.readings().get(one.reading()).quantity();
        if (quantity != timeline.readings().get(other.reading()).quantity()) {
            return stopOf[one.reading()] == stopOf[other.reading()];
        }
        List<Integer> of = places.getOrDefault(quantity, List.of());
        return Math.abs(of.indexOf(one.reading()) - of.indexOf(other.reading())) < APART;
    }

    private List<Finding> suspects(Reckoning reckoning) {
        List<Finding> suspects = new ArrayList<>();
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void reading(int place, Innovation againstAllOthers) {
                double score = Math.abs(againstAllOthers.score());
                if (score > GATE) {
                    suspects.add(new Finding(place, false, score));
                }
            }

            @Override
            public void arriving(int stop, Hindsight later) {
                for (int reading : timeline.stops().get(stop).readings()) {
                    if (reckoning.evidence().counts(reading) && isAgreed(reading, reckoning.evidence())) {
                        WaterQuantity quantity =
                                timeline.readings().get(reading).quantity();
                        double score = Math.abs(
                                later.jump(timeline.model().trendRow(quantity)).score());
                        if (score > GATE) {
                            suspects.add(new Finding(reading, true, score));
                        }
                    }
                }
            }
        });
        return suspects;
    }

    /** Whether enough readings stand on both sides of a jump just before one. */
    private boolean isAgreed(int reading, Evidence evidence) {
        WaterQuantity quantity = timeline.readings().get(reading).quantity();
        List<Integer> of = places.getOrDefault(quantity, List.of());
        int stop = stopOf[reading];
        int before = 0;
        int after = 0;
        for (int place : of) {
            if (evidence.counts(place)) {
                before += stopOf[place] < stop ? 1 : 0;
                after += stopOf[place] >= stop ? 1 : 0;
            }
        }
        return before >= AGREEING
                && after >= AGREEING
                && !evidence.jumps().getOrDefault(stop, java.util.Set.of()).contains(quantity);
    }

    /** Levels where the readings were taken, in the light of all that counts; never below none. */
    static double[] levels(Reckoning reckoning) {
        Timeline timeline = reckoning.timeline();
        double[] levels = new double[timeline.readings().size()];
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void leaving(int stop, Belief believed, Hindsight later) {
                double[] mean = later.sharpenMean(believed);
                for (int place : timeline.stops().get(stop).readings()) {
                    Inputs.Reading reading = timeline.readings().get(place);
                    double[] row = timeline.model().levelRow(reading.quantity(), reading.time());
                    double level = 0;
                    for (int i = 0; i < row.length; i++) {
                        level += row[i] * mean[i];
                    }
                    levels[place] = Math.max(0, level);
                }
            }
        });
        return levels;
    }
}
