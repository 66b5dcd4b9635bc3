package org.tidewright.husbandry.advice;

/**
 * Where a number comes from.
 *
 * @param key letter it is referred to by on its page
 * @param what the number or law, in words
 * @param basis kind of ground it stands on
 * @param detail the publication, or what the practice is; may be empty
 */
public record Source(String key, String what, Basis basis, String detail) {
    /** Kinds of ground. */
    public enum Basis {
        PUBLISHED("published"),
        COMMON_PRACTICE("common practice"),
        YOUR_PLAN("your plan"),
        FROM_MEMORY("from memory"),
        COMPUTED("computed");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
