package org.tidewright.husbandry.quarantine;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Quarantine;

/**
 * What is known of a quarantine tank today.
 *
 * @param plan of a quarantine tank
 * @param batch the newest one; null where no animal has ever come
 * @param watch over it; null where nobody is in the tank
 */
public record QuarantineStudy(
        Plan plan,
        LocalDate today,
        @Nullable Batch batch,
        @Nullable Watch watch) {

    /**
     * Of a plan and its log.
     *
     * @param log lines that stand, of all kinds, in the order of time
     */
    public static QuarantineStudy of(Plan plan, List<Line> log, LocalDate today) {
        List<Line> happened = log.stream()
                .filter(line -> !line.at().toLocalDate().isAfter(today))
                .toList();
        Quarantine quarantine = requireNonNull(plan.quarantine(), "the plan of a quarantine tank");
        Batch batch = Batch.newest(happened).orElse(null);
        Watch watch = batch == null || batch.ended() != null ? null : Watch.of(batch, quarantine, today);
        return new QuarantineStudy(plan, today, batch, watch);
    }

    public Quarantine quarantine() {
        return requireNonNull(plan.quarantine());
    }

    /** The first day on which the next batch may come; null while animals are in the tank or where none ever was. */
    public @Nullable LocalDate dryUntil() {
        return batch == null || batch.ended() == null
                ? null
                : batch.ended().plusDays(quarantine().dryDays());
    }

    /** Heads by the plan, whose ammonia is reckoned with. */
    public int planned() {
        return plan.inhabitants() == null
                ? 0
                : plan.inhabitants().fish().stream()
                        .mapToInt(fish -> fish.count())
                        .sum();
    }

    /** Whether nothing wants hands today: nobody is in it, or all were looked at, are well, and are to stay. */
    public boolean isCalm() {
        if (watch == null) {
            return true;
        }
        CheckedDay day = watch.days().get(watch.days().size() - 1);
        return day.checked() && day.isWell() && !watch.isOver(today);
    }

    /** What today asks for. */
    public Advice duty() {
        return duty(new Sources());
    }

    /** The same, its letters among those of other advice. */
    public Advice duty(Sources sources) {
        return new DutyWords(this, sources).advice();
    }

    /** When the animals may go to the display, and why then. */
    public Advice end() {
        return end(new Sources());
    }

    /** The same, its letters among those of other advice. */
    public Advice end(Sources sources) {
        return new EndWords(this, sources).advice();
    }
}
