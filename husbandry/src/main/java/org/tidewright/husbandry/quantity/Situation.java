package org.tidewright.husbandry.quantity;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.dosing.Aim;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * What is known of a quantity and was decided about its dose, before it is put into words.
 *
 * @param point now
 * @param then at the next test, all doses left as they stand
 * @param range to hold it in; null where there is none, and with it no aim
 * @param missing what is missing a day to hold the aim; null without one
 * @param dry salt that brings it by the gram; null where none does
 * @param decision about its dose; null where nothing is dosed of it
 * @param dosed what would be moved; null where nothing is dosed of it
 * @param companion that goes with the move; null where none does
 * @param settling of the last move; null where nothing settles
 * @param nextTest when the keeper's own pace asks for the next test
 * @param readings of it, never none
 * @param probed those of them that a probe showed
 * @param watch the probe it is followed by; null where there is none
 */
record Situation(
        WaterQuantity quantity,
        ZoneId zone,
        Instant now,
        Estimate.Point point,
        Estimate.Point then,
        @Nullable TargetRange range,
        @Nullable Aim aim,
        @Nullable Known missing,
        @Nullable DryPortion dry,
        @Nullable DoseAdvice decision,
        @Nullable Dosed dosed,
        @Nullable Companion companion,
        @Nullable Settling settling,
        Instant nextTest,
        List<Estimate.Judged> readings,
        List<Estimate.Judged> probed,
        @Nullable ProbeWatch watch) {
    /** Chance of being outside at which a level is called so; this project's own. */
    private static final double TOLD_OUTSIDE = 0.8;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final double MINUTE = 60;

    /** The level that is judged: of what is dosed that over the whole day. */
    Known level() {
        return dosed == null ? point.level() : point.overDay();
    }

    /** The same at the next test. */
    Known next() {
        return dosed == null ? then.level() : then.overDay();
    }

    TargetRange held() {
        return Objects.requireNonNull(range);
    }

    Estimate.Judged last() {
        return readings.get(readings.size() - 1);
    }

    // ── the range ──

    boolean isOutsideUndosed() {
        return decision == null && isOutside();
    }

    /** Told from noise to be outside, and not merely because nobody looked for long. */
    boolean isOutside() {
        return range != null && !range.holds(level().value()) && chanceOutside(level()) > enough();
    }

    /** A poison is believed as soon as it is more likely there than not. */
    private double enough() {
        return switch (quantity) {
            case AMMONIA, NITRITE -> 0.5;
            default -> TOLD_OUTSIDE;
        };
    }

    @Unit("1")
    double chanceOutside(Known level) {
        return level.chanceBelow(held().least()) + 1 - level.chanceBelow(held().most());
    }

    boolean isAbove() {
        return level().value() > (held().least() + held().most()) / 2;
    }

    // ── tests ──

    boolean lastIsOff() {
        return last().standing() == Estimate.Standing.SET_ASIDE;
    }

    boolean isWatched() {
        return watch != null && watch.live();
    }

    /** Whether a probe told it last and does not speak any more. */
    boolean isSilent() {
        return watch != null
                && !watch.live()
                && last().reading().method().key().equals(watch.probe().method());
    }

    boolean isOverdue() {
        return !isWatched() && isDue(nextTest);
    }

    private boolean isDue(Instant at) {
        return !at.isAfter(now.plusSeconds((long) MINUTE));
    }

    // ── words ──

    String watched() {
        return Objects.requireNonNull(watch).words();
    }

    /** As sentences call what would be moved. */
    String doseWords() {
        return Objects.requireNonNull(dosed).doseWords();
    }

    /** {@code 7.4 to 8.6 dKH}. */
    Sentence rangeWords() {
        return Sentence.of(Told.level(quantity, held().least()), " to ", Told.level(quantity, held().most()));
    }

    String day(Instant at) {
        return DAY.format(at.atZone(zone));
    }

    String by(Instant at) {
        return isDue(at) ? "today" : "by " + day(at);
    }

    /** At the beginning of a sentence. pH stays pH. */
    String capital() {
        String words = quantity.words();
        return words.equals("pH") ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
