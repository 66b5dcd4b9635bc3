package org.tidewright.husbandry.shop;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.source.Basis;

/**
 * Something in a shop that speaks against buying an animal.
 *
 * @param id in addresses, unique among all kinds
 * @param part of the walk round the animal it belongs to, as a heading
 * @param words what is seen, as short as a label
 * @param clause the same within a sentence: {@code it breathes fast}
 * @param meaning what it may mean and what to do, in a sentence or two
 * @param basis kind of ground it stands on
 * @param detail the publication, or what the practice is; may be empty
 * @param drawn the sign of illness that is the same and has a drawing; null for none
 */
public record BadSign(
        String id,
        String part,
        String words,
        String clause,
        Weight weight,
        String meaning,
        Basis basis,
        String detail,
        @Nullable Sign drawn) {

    /** What a sign says about buying. */
    public enum Weight {
        /** On its own a reason not to buy. */
        LEAVE("Leave it"),
        /** A question to the shop first; a good answer ends it. */
        ASK("Ask");

        private final String words;

        Weight(String words) {
            this.words = words;
        }

        /** As a page says it. */
        public String words() {
            return words;
        }
    }

    static BadSign practice(String id, String part, String words, String clause, Weight weight, String meaning) {
        return new BadSign(id, part, words, clause, weight, meaning, Basis.COMMON_PRACTICE, "", null);
    }

    static BadSign memory(String id, String part, String words, String clause, Weight weight, String meaning) {
        return new BadSign(id, part, words, clause, weight, meaning, Basis.FROM_MEMORY, "", null);
    }

    BadSign published(String where) {
        return new BadSign(id, part, words, clause, weight, meaning, Basis.PUBLISHED, where, drawn);
    }

    BadSign like(Sign sign) {
        return new BadSign(id, part, words, clause, weight, meaning, basis, detail, sign);
    }
}
