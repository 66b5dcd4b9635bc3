package org.tidewright.web.page;

import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.quarantine.Batch;
import org.tidewright.web.drawing.SignDrawing;

/**
 * Today's look at the animals as it was typed: how they ate and one tap more, or further what is not as it should be.
 *
 * @param id of the line, so that a form sent twice is one line
 * @param animal one of those in the tank; empty for all
 * @param ate key of how; empty before it was said
 * @param breaths as typed
 * @param faults by field: {@code ate}, {@code breaths}, {@code animal}, {@code remark}; {@code form} for the whole
 */
public record LookForm(
        String id,
        String animal,
        String ate,
        Set<Sign> signs,
        String breaths,
        String remark,
        Map<String, String> faults) {
    private static final int LONGEST_REMARK = 2000;
    private static final String SIGN = "sign_";
    private static final List<String> APPETITES =
            List.of("all", "everything", "some", "some of it", "none", "nothing", "not_fed", "not fed yet");

    /** A sign as the form shows it. */
    public record SignBox(String name, String words, String looks, String mayBe, Markup drawing, boolean ticked) {}

    static LookForm empty() {
        return new LookForm(UUID.randomUUID().toString(), "", "", Set.of(), "", "", Map.of());
    }

    /** What was sent; a field that is missing is empty. */
    public static LookForm read(UnaryOperator<@Nullable String> fields) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        for (Sign sign : Sign.values()) {
            if (fields.apply(SIGN + sign.key()) != null) {
                signs.add(sign);
            }
        }
        return new LookForm(
                text(fields, "id"),
                text(fields, "animal"),
                text(fields, "ate"),
                signs,
                text(fields, "breaths"),
                text(fields, "remark"),
                Map.of());
    }

    static String text(UnaryOperator<@Nullable String> fields, String name) {
        String found = fields.apply(name);
        return found == null ? "" : found.strip();
    }

    /** The same with a fault of the whole. */
    public LookForm refused(String why) {
        return new LookForm(id, animal, ate, signs, breaths, remark, Map.of("form", why));
    }

    /** Why a form is no line: the same form, each fault beside its field. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient LookForm form;

        Refused(LookForm form) {
            super(String.join(" ", form.faults().values()));
            this.form = form;
        }

        public LookForm form() {
            return form;
        }
    }

    /**
     * The line it says.
     *
     * @param batch who is in the tank
     */
    public Draft draft(@Nullable Batch batch, OffsetDateTime now) throws Refused {
        Map<String, String> wrong = new LinkedHashMap<>();
        Appetite appetite = appetite();
        if (appetite == null) {
            wrong.put("ate", "Say how they ate: the look is for that above all.");
        }
        Integer counted = counted(wrong);
        if (!animal.isEmpty()
                && (batch == null
                        || batch.present().stream().noneMatch(of -> of.name().equals(animal)))) {
            wrong.put(
                    "animal",
                    "“" + Entry.shortened(animal)
                            + "” is not in the tank by the log; expected one of the list, or all.");
        }
        if (remark.length() > LONGEST_REMARK) {
            wrong.put(
                    "remark",
                    "The remark has " + remark.length() + " characters; " + LONGEST_REMARK + " are the most.");
        } else if (signs.contains(Sign.SOMETHING_ELSE) && remark.isEmpty()) {
            wrong.put("remark", "Say what the something else is.");
        }
        UUID line = uuid();
        if (line == null) {
            wrong.put("form", "The form has lost its number: look at the fields and send it once more.");
        }
        if (!wrong.isEmpty() || appetite == null || line == null) {
            String kept = line == null ? UUID.randomUUID().toString() : id;
            throw new Refused(new LookForm(kept, animal, ate, signs, breaths, remark, wrong));
        }
        return new Draft(
                line,
                now,
                new Event.AnimalsChecked(animal.isEmpty() ? null : animal, appetite, counted, signs),
                remark);
    }

    private @Nullable Appetite appetite() {
        for (Appetite each : Appetite.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(ate)) {
                return each;
            }
        }
        return null;
    }

    private @Nullable Integer counted(Map<String, String> wrong) {
        if (breaths.isEmpty()) {
            return null;
        }
        if (breaths.matches("\\d{1,3}") && Integer.parseInt(breaths) <= 400) {
            return Integer.valueOf(breaths);
        }
        wrong.put("breaths", "Found “" + Entry.shortened(breaths) + "”; expected a whole number from 0 to 400.");
        return null;
    }

    private @Nullable UUID uuid() {
        try {
            return UUID.fromString(id);
        } catch (IllegalArgumentException none) {
            return null;
        }
    }

    /** How they ate, as buttons; none is chosen before somebody says it. */
    public Choice appetites() {
        Choice.Option[] options = new Choice.Option[APPETITES.size() / 2];
        for (int i = 0; i < options.length; i++) {
            String value = APPETITES.get(2 * i);
            options[i] = new Choice.Option(value, APPETITES.get(2 * i + 1), value.equals(ate));
        }
        return new Choice("ate", "They ate", List.of(options), faults.get("ate"));
    }

    /** All signs, drawn. */
    public List<SignBox> signBoxes() {
        return List.of(Sign.values()).stream()
                .map(sign -> new SignBox(
                        SIGN + sign.key(),
                        sign.words(),
                        sign.looks(),
                        sign.mayBe(),
                        new Markup(SignDrawing.of(sign)),
                        signs.contains(sign)))
                .toList();
    }

    /** What is wrong with a field, empty for nothing. */
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }
}
