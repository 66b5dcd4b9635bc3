package org.tidewright.husbandry.livestock;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;

/**
 * What a rule found.
 *
 * @param rule id of the rule, a word of this project
 * @param what is so, in a sentence
 * @param why it matters, with the numbers and their sources
 * @param becomes what would change it; null where nothing would
 */
public record Finding(
        String rule,
        Call call,
        Sentence what,
        Sentence why,
        @Nullable Sentence becomes) {
    static Finding of(String rule, Call call, Sentence what, Sentence why) {
        return new Finding(rule, call, what, why, null);
    }

    Finding becomes(Sentence change) {
        return new Finding(rule, call, what, why, change);
    }

    /** Letters of what it rests on, in the order they are spoken. */
    public List<String> sources() {
        return Sentence.of(what, why).sources();
    }
}
