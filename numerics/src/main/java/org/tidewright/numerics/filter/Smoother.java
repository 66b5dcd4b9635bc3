package org.tidewright.numerics.filter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What is believed of each time in the light of all measurements, earlier and later ones. */
public final class Smoother {
    private Smoother() {}

    /** One belief for each passage of a filter, in their order. */
    public static List<Belief> smooth(LinearFilter filter) {
        List<Moment> moments = filter.moments();
        List<Belief> smoothed = new ArrayList<>(moments.size());
        Hindsight later = new Hindsight(filter.belief().mean().length);
        for (int i = moments.size() - 1; i > 0; i--) {
            Moment moment = moments.get(i);
            smoothed.add(later.sharpen(moment.filtered()));
            for (int j = moment.lessons() - 1; j >= 0; j--) {
                later.goBack(moment.lesson(j));
            }
            later.goBack(moment.passage());
        }
        Collections.reverse(smoothed);
        return smoothed;
    }
}
