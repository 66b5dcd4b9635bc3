package org.tidewright.web.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event.AnimalMoved;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.quarantine.Batch;

/**
 * Animals that are to go from quarantine to the display, as typed.
 *
 * @param id of the line in the box's log; that of the display's follows from it
 * @param faults by field; {@code form} for the whole
 * @param asks a reason to think once more; empty for none
 */
public record MoveForm(String id, String animal, String count, Map<String, String> faults, String asks) {

    /** Everybody of the first name in the tank. */
    static MoveForm of(@Nullable Batch batch) {
        String id = UUID.randomUUID().toString();
        if (batch == null || batch.present().isEmpty()) {
            return new MoveForm(id, "", "", Map.of(), "");
        }
        Batch.Animals first = batch.present().get(0);
        return new MoveForm(id, first.name(), Integer.toString(first.count()), Map.of(), "");
    }

    /** What was sent; a field that is missing is empty. */
    public static MoveForm read(UnaryOperator<@Nullable String> fields) {
        return new MoveForm(
                LookForm.text(fields, "id"),
                LookForm.text(fields, "animal"),
                LookForm.text(fields, "count"),
                Map.of(),
                "");
    }

    /** The same with a fault of the whole. */
    public MoveForm refused(String why) {
        return new MoveForm(id, animal, count, Map.of("form", why), "");
    }

    /** The same with a reason to think once more. */
    public MoveForm asked(String why) {
        return new MoveForm(id, animal, count, Map.of(), why);
    }

    /** Why a form moves nobody. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient MoveForm form;

        Refused(MoveForm form) {
            super(String.join(" ", form.faults().values()));
            this.form = form;
        }

        public MoveForm form() {
            return form;
        }
    }

    /** A line in the log of each system: it left the one and arrived in the other. */
    public Map<String, List<Draft>> drafts(@Nullable Batch batch, String box, String display, OffsetDateTime now)
            throws Refused {
        Map<String, String> wrong = new LinkedHashMap<>();
        int there = batch == null
                ? 0
                : batch.present().stream()
                        .filter(of -> of.name().equals(animal))
                        .mapToInt(Batch.Animals::count)
                        .sum();
        int wanted = count.matches("\\d{1,4}") ? Integer.parseInt(count) : 0;
        if (there == 0) {
            wrong.put("animal", "“" + Entry.shortened(animal) + "” is not in the tank by the log; choose one that is.");
        } else if (wanted < 1 || wanted > there) {
            wrong.put(
                    "count",
                    "Found “" + Entry.shortened(count) + "”; expected a whole number from 1 to " + there + ".");
        }
        UUID line;
        try {
            line = UUID.fromString(id);
        } catch (IllegalArgumentException none) {
            line = UUID.randomUUID();
            wrong.put("form", "The form has lost its number: look at the fields and send it once more.");
        }
        if (!wrong.isEmpty()) {
            throw new Refused(new MoveForm(line.toString(), animal, count, wrong, ""));
        }
        UUID arrival = UUID.nameUUIDFromBytes(("arrived " + line).getBytes(UTF_8));
        Map<String, List<Draft>> drafts = new LinkedHashMap<>();
        drafts.put(box, List.of(new Draft(line, now, new AnimalMoved(animal, wanted, Move.LEFT, null), "")));
        drafts.put(display, List.of(new Draft(arrival, now, new AnimalMoved(animal, wanted, Move.ARRIVED, null), "")));
        return drafts;
    }

    /** What is wrong with a field, empty for nothing. */
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }
}
