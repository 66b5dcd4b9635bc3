package org.tidewright.plan.fault;

import java.util.HashMap;
import java.util.Map;

/** Where in the text each key of a plan stands. */
public final class Places {
    /** A line and a column, counted from 1. */
    public record Place(int line, int column) {}

    private static final Place START = new Place(1, 1);

    private final Map<String, Place> byPath = new HashMap<>();

    /** Notes where a path stands. */
    public void note(String path, Place place) {
        byPath.put(path, place);
    }

    /** The place of a path, or of its nearest parent that stands in the text. */
    public Place of(String path) {
        String nearest = path;
        while (!nearest.isEmpty()) {
            Place place = byPath.get(nearest);
            if (place != null) {
                return place;
            }
            int cut = Math.max(nearest.lastIndexOf('.'), nearest.lastIndexOf('['));
            nearest = cut < 0 ? "" : nearest.substring(0, cut);
        }
        return START;
    }
}
