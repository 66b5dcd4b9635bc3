package org.tidewright.store.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which lines are meant: what follows WHERE, over the columns of {@code line}, and its values. */
record Condition(String sql, List<Object> values) {
    static Condition of(String sql, Object... values) {
        return new Condition(sql, Arrays.asList(values));
    }

    Condition and(String further, Object... furtherValues) {
        List<Object> all = new ArrayList<>(values);
        all.addAll(Arrays.asList(furtherValues));
        return new Condition(sql + " AND " + further, all);
    }
}
