package org.tidewright.husbandry.quantity;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.dosing.Aim;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.DoseCase;
import org.tidewright.husbandry.dosing.DoseMoves;
import org.tidewright.husbandry.dosing.DoseRule;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.dosing.TestPace;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;

/** Works out the study of one quantity. */
final class QuantityStudies {
    private static final double SHOWN_AHEAD = 14;
    private static final int[] LOOKED_BACK = {30, 90};
    private static final int HOURS = 24;

    /** Days from which on something is told of how steady it was. */
    private static final int FEWEST = 7;

    /** Share of the hours that a probe must have spoken in to tell how steady its quantity was: this project's own. */
    private static final double FOLLOWED = 0.8;

    /** Days after which a probe wants to be compared: common practice is to set it monthly. */
    private static final double COMPARED = 30;

    /** Of each day, so that what is told does not hang on the hour at which it is asked. */
    private static final int HOURS_LOOKED_AT = 4;

    private final Plan plan;
    private final List<Line> lines;
    private final Instant instant;
    private final ZoneId zone;
    private final Estimate estimate;
    private final DoseMoves.Before before;
    private final WaterQuantity quantity;
    private final double now;
    private final TestPace pace;
    private final @Nullable TargetRange range;
    private final @Nullable ProbeHours probe;
    private final @Nullable ProbeWatch watch;
    private final List<Estimate.Judged> own;
    private final List<Estimate.Judged> probed;

    QuantityStudies(
            Plan plan,
            List<Line> lines,
            Instant instant,
            ZoneId zone,
            Estimate estimate,
            DoseMoves.Before before,
            Set<UUID> ofProbe,
            @Nullable ProbeHours probe) {
        this.before = before;
        this.plan = plan;
        this.lines = lines;
        this.instant = instant;
        this.zone = zone;
        this.estimate = estimate;
        quantity = estimate.quantity();
        now = estimate.inputs().time(instant);
        this.probe = probe;
        watch = probe == null ? null : ProbeWatch.of(probe, instant);
        Map<Boolean, List<Estimate.Judged>> readings = estimate.readings().stream()
                .collect(Collectors.partitioningBy(
                        judged -> ofProbe.contains(judged.reading().line())));
        own = readings.getOrDefault(false, List.of());
        probed = readings.getOrDefault(true, List.of());
        pace = isWatched() || own.isEmpty() ? TestPace.of(estimate) : TestPace.of(own);
        range = TargetRange.of(plan, quantity).orElse(null);
    }

    QuantityStudy study() {
        Estimate.Point point = estimate.at(now);
        Optional<Dosed> dosed = isUsed() ? Dosed.movable(plan, estimate, quantity, now) : Optional.empty();
        Settling settling = dosed.isEmpty()
                ? null
                : DoseMoves.settling(estimate.inputs(), lines, quantity, instant, pace, before)
                        .orElse(null);
        DoseAdvice decision = dosed.isPresent() && range != null ? decision(point, dosed.get(), settling) : null;
        Instant nextTest = estimate.inputs().at(nextTest());
        QuantityWords words = new QuantityWords(new Situation(
                quantity,
                zone,
                instant,
                point,
                next(),
                range,
                range == null ? null : aim(range),
                range == null ? null : estimate.missing(aim(range).value(), now),
                DryPortion.of(quantity, SystemWater.volume(plan)).orElse(null),
                decision,
                dosed.orElse(null),
                companion(decision, dosed.orElse(null)),
                settling,
                nextTest,
                estimate.readings(),
                probed,
                watch));
        Advice advice = words.advice();
        return new QuantityStudy(
                quantity,
                words.state(),
                words.call(),
                words.headline(),
                words.why(advice),
                point.level(),
                isUsed() ? point.use() : null,
                isUsed() ? point.change() : null,
                range,
                decision,
                dosed.flatMap(dose -> dose.moved(decision)).orElse(null),
                advice,
                settling,
                nextTest,
                QuantityCourse.of(estimate, own, now, now + SHOWN_AHEAD),
                dosed.map(this::forks).orElse(List.of()),
                estimate.inputs().at(now + SHOWN_AHEAD),
                range == null ? List.of() : stability(range),
                estimate.biases(),
                watch);
    }

    /** Whether a probe tells it by itself. */
    private boolean isWatched() {
        return watch != null && watch.live();
    }

    /** What a probe watches is tested to compare the two, whoever did that last. */
    private double nextTest() {
        if (!isWatched()) {
            return pace.next(now);
        }
        double compared =
                own.isEmpty() ? first() : own.get(own.size() - 1).reading().time();
        return Math.max(now, compared + COMPARED);
    }

    /** Of temperature, salinity, pH and oxygen no use is told: they are held, not used up. */
    private boolean isUsed() {
        return switch (quantity) {
            case ALKALINITY, CALCIUM, MAGNESIUM, NITRATE, PHOSPHATE -> true;
            case TEMPERATURE, SALINITY, PH, OXYGEN, NITRITE, AMMONIA -> false;
        };
    }

    private double first() {
        return estimate.readings().get(0).reading().time();
    }

    private Estimate.Point next() {
        return estimate.at(Math.max(now + 0.01, pace.next(now)));
    }

    private DoseAdvice decision(Estimate.Point point, Dosed dosed, @Nullable Settling settling) {
        Aim aim = aim(Objects.requireNonNull(range));
        DoseCase situation = new DoseCase(
                point.overDay(),
                next().overDay(),
                estimate.missing(aim.value(), now),
                dosed.brings(),
                dosed.most() * dosed.effect(),
                dosed.step(),
                settling);
        return DoseRule.advise(situation, aim);
    }

    /** Calcium goes with a move of alkalinity; its own range is wide, and its own moves ask for no alkalinity. */
    private @Nullable Companion companion(@Nullable DoseAdvice decision, @Nullable Dosed dosed) {
        if (quantity != WaterQuantity.ALKALINITY || dosed == null || !(decision instanceof DoseAdvice.Move move)) {
            return null;
        }
        return Companion.of(plan, estimate, dosed.solution().name(), move.dose() - dosed.brings(), now)
                .orElse(null);
    }

    private Aim aim(TargetRange held) {
        List<SafeRate> rates =
                SafeRate.of(quantity, Keeping.of(plan), estimate.at(now).level().value(), true);
        double width = held.most() - held.least();
        double safe = rates.stream()
                .mapToDouble(rate -> rate.comfortable() * SafeRate.DAY / rate.span())
                .min()
                .orElse(width);
        return new Aim(held.aim(plan), held.least(), held.most(), safe);
    }

    private List<Fork> forks(Dosed dosed) {
        List<Fork> forks = new ArrayList<>();
        double change = Math.max(0.08 * dosed.amount(), 5e-6);
        forks.add(fork("lower to", dosed, Math.max(0, rounded(dosed.amount() - change))));
        forks.add(fork("keep", dosed, dosed.amount()));
        forks.add(fork("raise to", dosed, rounded(dosed.amount() + change)));
        return forks;
    }

    private static double rounded(double amount) {
        return Math.rint(amount * 1e6) * 1e-6;
    }

    private Fork fork(String words, Dosed dosed, double amount) {
        Known level = estimate.ahead(
                        now + SHOWN_AHEAD,
                        estimate.inputs().dosed(dosed.solution().name(), amount, now))
                .overDay();
        double inRange = range == null ? 1 : level.chanceBelow(range.most()) - level.chanceBelow(range.least());
        return new Fork(words, dosed.figure(amount), level, inRange);
    }

    private List<Stability> stability(TargetRange held) {
        List<Stability> stability = new ArrayList<>();
        for (int days : LOOKED_BACK) {
            double[] shown = probe == null || probed.isEmpty()
                    ? new double[0]
                    : probe.since(instant.minus(Duration.ofDays(days)));
            int known = (int) Math.min(days, Math.floor(now - first()));
            if (known < FEWEST
                    || (!stability.isEmpty() && known <= stability.get(0).days())) {
                continue;
            }
            if (shown.length >= FOLLOWED * HOURS * known) {
                stability.add(Stability.ofProbe(shown, off(), known, held.least(), held.most()));
            } else {
                Known[] levels = new Known[known * HOURS_LOOKED_AT];
                for (int i = 0; i < levels.length; i++) {
                    levels[i] = estimate.at(now - (double) i / HOURS_LOOKED_AT).level();
                }
                stability.add(Stability.of(known, levels, held.least(), held.most()));
            }
        }
        return stability;
    }

    /** By how much the probe is off, as far as it was compared. */
    private Known off() {
        TestMethod method = probed.get(0).reading().method();
        return estimate.biases().stream()
                .filter(bias -> bias.method().equals(method))
                .findFirst()
                .orElseThrow()
                .bias();
    }
}
