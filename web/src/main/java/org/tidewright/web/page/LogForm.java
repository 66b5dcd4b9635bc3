package org.tidewright.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteText;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.note.UnreadableNote;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.system.Levers;

/**
 * One line of the log as it is typed.
 *
 * @param id of the line, so that a form sent twice is one line
 * @param at local date and time as browsers write it, empty for now
 * @param photo name of a picture that is kept already and goes with the line; empty for none
 * @param fault what is wrong with it, empty for nothing
 * @param asks whether the fault is a question, and the line is taken if it is sent all the same
 */
public record LogForm(String id, String text, String at, String remark, String photo, String fault, boolean asks) {
    private static final int LONGEST_REMARK = 2000;

    /** An empty form for a new line. */
    public static LogForm empty() {
        return proposed("");
    }

    /** A form with a line that is to be looked at and sent. */
    public static LogForm proposed(String text) {
        return new LogForm(UUID.randomUUID().toString(), text, "", "", "", "", false);
    }

    /** The address of the log with the line that an event would be written as. */
    static String address(String system, Event event, UnitSystem units) {
        return system + "/log?line=" + URLEncoder.encode(NoteWords.of(event, units), StandardCharsets.UTF_8);
    }

    /** A form that holds a line as it stands. */
    static LogForm of(Line line, UnitSystem units) {
        String at = line.at().toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
        String photo = Objects.requireNonNullElse(photo(line.event()), "");
        return new LogForm(
                line.id().toString(), NoteWords.of(line.event(), units), at, line.remark(), photo, "", false);
    }

    /** What was sent; a field that is missing is empty. */
    public static LogForm read(UnaryOperator<@Nullable String> fields) {
        return new LogForm(
                field(fields, "id"),
                text(fields),
                field(fields, "at"),
                field(fields, "remark"),
                field(fields, "photo"),
                "",
                false);
    }

    /** What was sent about a line that is there already: it keeps its photo where the form says nothing of one. */
    public static LogForm read(UnaryOperator<@Nullable String> fields, Line stands) {
        LogForm typed = read(fields);
        String before = photo(stands.event());
        String photo = fields.apply("photo") == null && before != null ? before : typed.photo;
        return new LogForm(stands.id().toString(), typed.text, typed.at, typed.remark, photo, "", false);
    }

    /** Name of the picture of a line; null where it has none. */
    static @Nullable String photo(Event event) {
        return event instanceof Event.Observation seen ? seen.photo() : null;
    }

    /** The same with another photo. */
    public LogForm with(String otherPhoto) {
        return new LogForm(id, text, at, remark, otherPhoto, fault, asks);
    }

    /** The same with what is wrong. */
    public LogForm refused(String why) {
        return new LogForm(id, text, at, remark, photo, why, false);
    }

    /** The same with a reason to think once more. */
    public LogForm asked(String why) {
        return new LogForm(id, text, at, remark, photo, why, true);
    }

    /** Why a form is no line. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient LogForm form;

        public Refused(LogForm form) {
            super(form.fault());
            this.form = form;
        }

        /** What was typed, and what is wrong with it. */
        public LogForm form() {
            return form;
        }
    }

    /**
     * The line it says.
     *
     * @param before the line it corrects, whose seconds are kept where its time was not touched
     */
    public Draft draft(Plan plan, Levers levers, OffsetDateTime now, ZoneId zone, @Nullable Line before)
            throws Refused {
        if (remark.length() > LONGEST_REMARK) {
            throw new Refused(refused("The remark has " + remark.length() + " characters; " + LONGEST_REMARK
                    + " are the most. Write the rest as a line of its own."));
        }
        try {
            if (text.isBlank() && !photo.isEmpty()) {
                throw new Refused(
                        refused("Say in words what the photo shows, beginning with saw: they stand for it where"
                                + " it cannot be seen."));
            }
            Event event = withPhoto(NoteText.read(text, plan, levers));
            return new Draft(UUID.fromString(id), when(now, zone, before), event, remark.strip());
        } catch (UnreadableNote unreadable) {
            throw new Refused(refused(String.valueOf(unreadable.getMessage())));
        } catch (IllegalArgumentException noId) {
            throw new Refused(LogForm.empty().refused("The form has lost its number: write the line once more."));
        }
    }

    private Event withPhoto(Event event) throws Refused {
        if (photo.isEmpty()) {
            return event;
        } else if (event instanceof Event.Observation seen) {
            return new Event.Observation(seen.seen(), photo);
        }
        throw new Refused(refused("A photo goes with what was seen; expected a line such as “saw white spots on the"
                + " surgeonfish”. Write the rest as a line of its own."));
    }

    private OffsetDateTime when(OffsetDateTime now, ZoneId zone, @Nullable Line before) throws Refused {
        if (at.isBlank()) {
            return now;
        }
        LocalDateTime local;
        try {
            local = LocalDateTime.parse(at.strip());
        } catch (DateTimeParseException unreadable) {
            throw new Refused(refused("“" + at + "” is no date and time; expected one such as 2026-03-07T19:40."));
        }
        if (before != null
                && before.at().toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).equals(local)) {
            return before.at();
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            throw new Refused(refused("The clock was put forward over " + local.toLocalTime()
                    + " on that day; expected a time before or after."));
        }
        OffsetDateTime told = local.atOffset(offsets.get(0));
        if (told.isAfter(now.plusMinutes(1))) {
            throw new Refused(refused(
                    "That is yet to come; expected a time up to now. What is to be done stands in the" + " plan."));
        }
        return told;
    }

    /** The line as it was typed, or a reading from the fields of the quick entry. */
    private static String text(UnaryOperator<@Nullable String> fields) {
        String quantity = field(fields, "quantity");
        if (quantity.isEmpty()) {
            return field(fields, "text");
        }
        String method = field(fields, "method");
        return quantity + " " + field(fields, "value").strip().replace(',', '.') + " " + field(fields, "unit")
                + (method.isEmpty() ? "" : " by " + method.replace('_', ' '));
    }

    private static String field(UnaryOperator<@Nullable String> fields, String name) {
        String found = fields.apply(name);
        return found == null ? "" : found;
    }
}
