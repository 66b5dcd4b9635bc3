package org.tidewright.numerics.filter;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A time at which a filter stopped: the passage that led there, what was learnt there, and what was believed then. */
public final class Moment {
    private final Passage passage;
    private Lesson[] lessons = new Lesson[2];
    private int count;
    private @Nullable Belief filtered;

    Moment(Passage passage) {
        this.passage = passage;
    }

    void add(Lesson lesson) {
        if (count == lessons.length) {
            lessons = Arrays.copyOf(lessons, 4 * count);
        }
        lessons[count++] = lesson;
    }

    void leave(Belief belief) {
        filtered = belief;
    }

    /** That led here; at the start one in which nothing moves. */
    public Passage passage() {
        return passage;
    }

    /** How many measurements were learnt here. */
    public int lessons() {
        return count;
    }

    /** One of them, in the order in which they were learnt. */
    public Lesson lesson(int place) {
        return lessons[place];
    }

    /** What was believed when all measurements of this time were learnt. */
    public Belief filtered() {
        if (filtered == null) {
            throw new IllegalStateException("the filter stands here still, or does not keep what it believes");
        }
        return filtered;
    }
}
