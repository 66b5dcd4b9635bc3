package org.tidewright.husbandry.estimate;

import java.util.List;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.numerics.filter.Lesson;
import org.tidewright.numerics.filter.LinearFilter;
import org.tidewright.numerics.filter.Moment;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.plan.method.WaterQuantity;

/**
 * One filter run over a timeline with some evidence.
 *
 * @param moments of the filter: first the start, then for each stop its arrival and one for each event
 * @param arrivals place of each stop's arrival among the moments
 * @param surprises of each reading, learnt from or not, as it came
 */
record Reckoning(
        Timeline timeline,
        Evidence evidence,
        List<Moment> moments,
        int[] arrivals,
        Innovation[] surprises,
        double logLikelihood) {

    /** A jump that is granted may be as large as what kept systems differ by. */
    private static final double OF_ANY_SIZE = 1;

    /** With the noise that was filled into the timeline, all beliefs kept. */
    static Reckoning kept(Timeline timeline, Evidence evidence) {
        return of(timeline, evidence, true);
    }

    /** The same for its likelihood and hindsight alone, which is quicker. */
    static Reckoning passing(Timeline timeline, Evidence evidence) {
        return of(timeline, evidence, false);
    }

    private static Reckoning of(Timeline timeline, Evidence evidence, boolean keeping) {
        WaterModel model = timeline.model();
        LinearFilter filter = new LinearFilter(model.start(), keeping);
        model.stated().forEach(filter::learn);
        model.checks().forEach(filter::learn);
        int[] arrivals = new int[timeline.stops().size()];
        Innovation[] surprises = new Innovation[timeline.readings().size()];
        int moments = 1;
        for (int i = 0; i < arrivals.length; i++) {
            Timeline.Stop stop = timeline.stops().get(i);
            filter.pass(loosened(timeline, stop, evidence));
            arrivals[i] = moments++;
            for (int reading : stop.readings()) {
                surprises[reading] = evidence.counts(reading)
                        ? filter.learn(evidence.measurements().get(reading))
                        : filter.expect(evidence.measurements().get(reading));
            }
            for (Passage event : stop.events()) {
                filter.pass(event);
                moments++;
            }
        }
        return new Reckoning(timeline, evidence, filter.moments(), arrivals, surprises, filter.logLikelihood());
    }

    /** The way to a stop, with room for the jumps that are granted there. */
    private static Passage loosened(Timeline timeline, Timeline.Stop stop, Evidence evidence) {
        Passage passage = stop.passage();
        for (int reading : stop.readings()) {
            if (evidence.jumps(reading)) {
                WaterQuantity quantity = timeline.readings().get(reading).quantity();
                int level = timeline.model().levelState(quantity);
                double size = OF_ANY_SIZE * Priors.of(quantity).usualLevel().standardError();
                double[][] noise = passage.noise().clone();
                noise[level] = noise[level].clone();
                noise[level][level] += size * size;
                passage = passage.shakenBy(noise);
            }
        }
        return passage;
    }

    /** Watches a way back over all stops, the last one first. */
    interface WayBack {
        /** A reading that was learnt from: how far it stands from what all others let expect. */
        default void reading(int place, Innovation againstAllOthers) {}

        /** The state as it arrives at a stop, before anything was read there. */
        default void arriving(int stop, Hindsight later) {}
    }

    /** Goes back once. */
    void goBack(WayBack way) {
        Hindsight later = new Hindsight(timeline.model().structure().size());
        for (int i = arrivals.length - 1; i >= 0; i--) {
            Timeline.Stop stop = timeline.stops().get(i);
            for (int j = stop.events().size(); j > 0; j--) {
                later.goBack(moments.get(arrivals[i] + j).passage());
            }
            Moment arrival = moments.get(arrivals[i]);
            int learnt = arrival.lessons() - 1;
            for (int j = stop.readings().length - 1; j >= 0; j--) {
                int place = stop.readings()[j];
                if (evidence.counts(place)) {
                    Lesson lesson = arrival.lesson(learnt--);
                    way.reading(place, later.againstAllOthers(lesson));
                    later.goBack(lesson);
                }
            }
            way.arriving(i, later);
            later.goBack(arrival.passage());
        }
    }

    /** What is believed at the end. */
    Belief last() {
        return moments.get(moments.size() - 1).filtered();
    }
}
