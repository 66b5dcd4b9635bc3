package org.tidewright.numerics.filter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A time at which a filter stopped: the passage that led there, what was learnt there, and what was believed then. */
public final class Moment {
    private final Passage passage;
    private final List<Lesson> lessons = new ArrayList<>(2);
    private @Nullable Belief filtered;

    Moment(Passage passage) {
        this.passage = passage;
    }

    void add(Lesson lesson) {
        lessons.add(lesson);
    }

    void leave(Belief belief) {
        filtered = belief;
    }

    /** That led here; at the start one in which nothing moves. */
    public Passage passage() {
        return passage;
    }

    /** In the order in which they were learnt. */
    public List<Lesson> lessons() {
        return Collections.unmodifiableList(lessons);
    }

    /** What was believed when all measurements of this time were learnt. */
    public Belief filtered() {
        if (filtered == null) {
            throw new IllegalStateException("the filter still stands at this moment");
        }
        return filtered;
    }
}
