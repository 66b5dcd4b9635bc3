package org.tidewright.husbandry.quantity;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What is known of one quantity, and what to do.
 *
 * @param state in a few words, for a list: {@code settling until Sat 22 Nov}
 * @param call what kind of attention it calls for today
 * @param headline what to do, in one short sentence; empty where it calls for nothing
 * @param why the reason for the headline
 * @param now level
 * @param use of it a day, net of what else comes and goes; null where it means nothing
 * @param change of the level a day, all doses and water changes as they are; null where no use is told
 * @param range to hold it in; null where there is none
 * @param decision about its dose; null where nothing is dosed of it
 * @param move what the log will hold once the dose is moved as advised; null where it is not to be moved
 * @param advice in words
 * @param settling of a lever that was moved; null where nothing settles
 * @param nextTest when the keeper's own pace asks for the next test
 * @param forks what other doses would lead to, from the least to the greatest; empty where nothing is dosed
 * @param stability over the last 30 and 90 days, as far as there are readings, from the values of a probe where one
 *     followed it; empty without a range
 * @param biases of the methods it was read by
 * @param watch the probe it is followed by; null where there is none
 */
public record QuantityStudy(
        WaterQuantity quantity,
        String state,
        Call call,
        String headline,
        Sentence why,
        Known now,
        @Nullable Known use,
        @Nullable Known change,
        @Nullable TargetRange range,
        @Nullable DoseAdvice decision,
        Event.@Nullable LeverMoved move,
        Advice advice,
        @Nullable Settling settling,
        Instant nextTest,
        QuantityCourse course,
        List<Fork> forks,
        Instant forksAt,
        List<Stability> stability,
        List<Estimate.MethodBias> biases,
        @Nullable ProbeWatch watch) {

    /** Attention a quantity calls for. */
    public enum Call {
        /** Test it again, or bring it back. */
        HANDS,
        /** A dose to be moved, or a range that is left. */
        DECIDE,
        /** A test is due. */
        TEST,
        /** Something settles: leave it alone. */
        LEAVE,
        /** Nothing. */
        NONE
    }
}
