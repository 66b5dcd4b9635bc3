package org.tidewright.web.page;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.system.Levers;

/**
 * What became of a fallow, as typed.
 *
 * @param id of the line
 * @param parasite key of because of what; empty before it was said
 * @param turn began, broken or ended; empty before it was said
 * @param at local date and time as browsers write it, empty for now
 * @param fault what is wrong with it, empty for nothing
 */
public record FallowForm(String id, String parasite, String turn, String at, String remark, String fault) {
    private static final List<String> TURNS =
            List.of("began", "The last fish left", "broken", "Something wet or a fish came in", "ended", "It is over");

    /** One of the list of parasites. */
    public record Option(String value, String words, boolean chosen) {}

    /** With the parasite that is waited for already. */
    static FallowForm empty(List<FallowState> running) {
        return new FallowForm(
                UUID.randomUUID().toString(),
                running.isEmpty() ? "" : running.get(0).parasite().key(),
                "",
                "",
                "",
                "");
    }

    /** What was sent; a field that is missing is empty. */
    public static FallowForm read(UnaryOperator<@Nullable String> fields) {
        return new FallowForm(
                LookForm.text(fields, "id"),
                LookForm.text(fields, "parasite"),
                LookForm.text(fields, "turn"),
                LookForm.text(fields, "at"),
                LookForm.text(fields, "remark"),
                "");
    }

    /** The same with what is wrong. */
    public FallowForm refused(String why) {
        return new FallowForm(id, parasite, turn, at, remark, why);
    }

    /** The line it says; what is wrong with it is told as of a line of the log. */
    public Draft draft(Plan plan, Levers levers, OffsetDateTime now, ZoneId zone) throws LogForm.Refused {
        if (parasite.isEmpty() || turn.isEmpty()) {
            throw new LogForm.Refused(
                    LogForm.empty().refused(parasite.isEmpty() ? "Say because of what." : "Say what became of it."));
        }
        String words = FallowPage.offered().stream()
                .filter(each -> each.key().equals(parasite))
                .map(Parasite::words)
                .findFirst()
                .orElse(parasite);
        return new LogForm(id, "fallow " + words + " " + turn, at, remark, "", "", false)
                .draft(plan, levers, now, zone, null);
    }

    /** What became of it, as buttons. */
    public Choice turns() {
        Choice.Option[] options = new Choice.Option[TURNS.size() / 2];
        for (int i = 0; i < options.length; i++) {
            String value = TURNS.get(2 * i);
            options[i] = new Choice.Option(value, TURNS.get(2 * i + 1), value.equals(turn));
        }
        return new Choice("turn", "What became of it", List.of(options), null);
    }

    List<Option> parasites() {
        return FallowPage.offered().stream()
                .map(each -> new Option(each.key(), each.words(), each.key().equals(parasite)))
                .toList();
    }
}
