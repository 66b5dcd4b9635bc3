package org.tidewright.plan.source;

/** The kind of ground a number stands on. */
public enum Basis {
    PUBLISHED("published"),
    COMMON_PRACTICE("common practice"),
    YOUR_PLAN("your plan"),
    YOUR_LOG("your log"),
    FROM_MEMORY("from memory"),
    COMPUTED("computed");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** As the pages say it. */
    public String words() {
        return words;
    }
}
