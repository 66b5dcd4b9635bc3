package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.numerics.filter.Measurement;
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
    /** Errors off from which a reading is not believed: one in 2,100 sound ones is. */
    static final double GATE = 3.5;

    /** Readings that must agree before and after a jump. */
    private static final int AGREEING = 2;

    /** Findings closer than so many readings of the same quantity may be the same one. */
    private static final int APART = 4;

    /** Readings agree about a jump when they differ by no more than this share of it. */
    private static final double SHARE_OF_JUMP = 1.0 / 3;

    /**
     * What rises and is gone within days, and kills: a reading that fits to no other is taken for a jump and never set aside.
     */
    private static final Set<WaterQuantity> POISONS = EnumSet.of(WaterQuantity.AMMONIA, WaterQuantity.NITRITE);

    private static final int MOST_ROUNDS = 25;

    private final Timeline timeline;
    private final Map<WaterQuantity, List<Integer>> places = new HashMap<>();
    private final int[] stopOf;
    private final int[] rank;

    /** Something that does not fit: a reading, or a jump just before it. */
    private record Finding(int reading, boolean jump, double score) {}

    private Screening(Timeline timeline) {
        this.timeline = timeline;
        stopOf = new int[timeline.readings().size()];
        rank = new int[stopOf.length];
        for (int i = 0; i < timeline.stops().size(); i++) {
            for (int reading : timeline.stops().get(i).readings()) {
                stopOf[reading] = i;
                List<Integer> of = places.computeIfAbsent(quantity(reading), quantity -> new ArrayList<>());
                rank[reading] = of.size();
                of.add(reading);
            }
        }
    }

    /** What of the evidence may be learnt from, with the noise that was filled into the timeline; what was found stands. */
    static Reckoning screen(Timeline timeline, Evidence evidence) {
        return new Screening(timeline).screen(evidence);
    }

    private Reckoning screen(Evidence all) {
        Evidence evidence = all;
        Reckoning reckoning = Reckoning.passing(timeline, evidence);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Finding> findings = findings(reckoning);
            if (findings.isEmpty()) {
                return reckoning;
            }
            for (Finding finding : findings) {
                evidence = finding.jump() ? evidence.jumping(finding.reading()) : evidence.without(finding.reading());
            }
            reckoning = Reckoning.passing(timeline, evidence);
        }
        return reckoning;
    }

    /** The worst of each neighbourhood, and of the whole what is at least half as bad: the rest may be their shadows. */
    private List<Finding> findings(Reckoning reckoning) {
        List<Finding> suspects = suspects(reckoning);
        suspects.sort(Comparator.comparingDouble((Finding finding) -> -finding.score()));
        List<Finding> worst = new ArrayList<>();
        for (Finding suspect : suspects) {
            if (suspect.score() >= suspects.get(0).score() / 2
                    && worst.stream().noneMatch(other -> near(suspect, other))) {
                worst.add(suspect);
            }
        }
        return worst;
    }

    private boolean near(Finding one, Finding other) {
        return quantity(one.reading()) == quantity(other.reading())
                ? Math.abs(rank[one.reading()] - rank[other.reading()]) < APART
                : stopOf[one.reading()] == stopOf[other.reading()];
    }

    private List<Finding> suspects(Reckoning reckoning) {
        List<Finding> suspects = new ArrayList<>();
        Evidence evidence = reckoning.evidence();
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void reading(int place, Innovation againstAllOthers) {
                double score = Math.abs(againstAllOthers.score());
                boolean poison = POISONS.contains(quantity(place));
                if (score > GATE && (poison ? !evidence.jumps(place) : isOutvoted(place, evidence))) {
                    suspects.add(new Finding(place, poison, score));
                }
            }

            @Override
            public void arriving(int stop, Hindsight later) {
                for (int place : timeline.stops().get(stop).readings()) {
                    Innovation jump = later.jump(timeline.model().trendRow(quantity(place)));
                    double score = Math.abs(jump.score());
                    if (score > GATE && evidence.counts(place) && isAgreed(place, jump.value(), evidence)) {
                        suspects.add(new Finding(place, true, score));
                    }
                }
            }
        });
        return suspects;
    }

    /** Whether enough others of its quantity say so: what a plan says of its water does not outweigh a reading. */
    private boolean isOutvoted(int reading, Evidence evidence) {
        return of(quantity(reading)).stream()
                        .filter(place -> place != reading && evidence.counts(place))
                        .count()
                >= AGREEING;
    }

    /** Whether two readings on each side of a jump just before one agree about it. */
    private boolean isAgreed(int reading, double jump, Evidence evidence) {
        List<Integer> of = of(quantity(reading));
        return !evidence.jumps(reading)
                && agree(of.subList(rank[reading], of.size()), jump, evidence)
                && agree(reversed(of.subList(0, rank[reading])), jump, evidence);
    }

    /** Whether the first two that count lie close to each other, beside the jump or beside their own errors. */
    private boolean agree(List<Integer> readings, double jump, Evidence evidence) {
        List<Integer> two =
                readings.stream().filter(evidence::counts).limit(AGREEING).toList();
        if (two.size() < AGREEING) {
            return false;
        }
        Measurement one = evidence.measurements().get(two.get(0));
        Measurement other = evidence.measurements().get(two.get(1));
        double apart = Math.abs(one.value() - other.value());
        return apart <= Math.max(SHARE_OF_JUMP * Math.abs(jump), GATE * Math.sqrt(one.variance() + other.variance()));
    }

    private static List<Integer> reversed(List<Integer> places) {
        List<Integer> reversed = new ArrayList<>(places);
        Collections.reverse(reversed);
        return reversed;
    }

    private WaterQuantity quantity(int reading) {
        return timeline.readings().get(reading).quantity();
    }

    private List<Integer> of(WaterQuantity quantity) {
        return places.getOrDefault(quantity, List.of());
    }
}
