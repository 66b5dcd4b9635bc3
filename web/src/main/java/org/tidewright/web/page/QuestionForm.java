package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A form whose answer is worked out and not kept. */
public record QuestionForm(List<Part> parts) {
    /**
     * Fields that belong together.
     *
     * @param legend empty where they need none
     * @param folded whether they stand folded away: what is seldom changed
     */
    public record Part(
            String legend, boolean folded, List<Select> selects, List<Choice> choices, List<AmountField> fields) {
        /** Whether it is unfolded though it could be folded: something of it was typed or is wrong. */
        public boolean open() {
            return choices.stream().anyMatch(choice -> choice.fault() != null)
                    || fields.stream().anyMatch(field -> field.faulty() || (field.isGiven() && field.known() == null));
        }

        static Part of(String legend, AmountField... fields) {
            return new Part(legend, false, List.of(), List.of(), List.of(fields));
        }

        static Part folded(String legend, List<AmountField> fields) {
            return new Part(legend, true, List.of(), List.of(), fields);
        }
    }

    /** How many fields are to be mended. */
    int faults() {
        int faults = 0;
        for (Part part : parts) {
            faults += (int) part.fields().stream().filter(AmountField::faulty).count();
            faults += (int) part.selects().stream().filter(Select::faulty).count();
            faults += (int) part.choices().stream()
                    .filter(choice -> choice.fault() != null)
                    .count();
        }
        return faults;
    }

    /** What of it is wanted before anything can be worked out, in words; empty for nothing. */
    List<String> wanted(List<AmountField> needed) {
        List<String> wanted = new ArrayList<>();
        for (AmountField field : needed) {
            if (!field.isGiven() && !field.faulty()) {
                wanted.add(field.label());
            }
        }
        return wanted;
    }

    /** What to do before anything is worked out; null where nothing is in the way. */
    @Nullable
    String inTheWay() {
        int faults = faults();
        if (faults == 0) {
            return null;
        }
        return faults == 1
                ? "Mend the marked field: nothing is worked out before it can be read."
                : "Mend the " + faults + " marked fields: nothing is worked out before every one can be read.";
    }
}
