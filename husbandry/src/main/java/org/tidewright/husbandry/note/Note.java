package org.tidewright.husbandry.note;

import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.AmountText;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.system.Levers;

/** A text that is being read, and what it is about. */
record Note(String text, Plan plan, Levers levers) {
    UnreadableNote wrong(String found, String expected) {
        return new UnreadableNote(text, found, expected);
    }

    UnreadableNote wrong(String found, String expected, String suggestion) {
        return new UnreadableNote(text, found, expected, suggestion);
    }

    /** What the journal itself refuses is told as a fault of the text. */
    Event refusing(NoteText.LineReader reader, String rest) throws UnreadableNote {
        try {
            return reader.read(rest.strip(), this);
        } catch (IllegalArgumentException refused) {
            throw wrong(String.valueOf(refused.getMessage()), "something that can have happened");
        }
    }

    /** An amount that is more than nothing. */
    @Unit("*")
    double amount(String told, String unit) throws UnreadableNote {
        try {
            double amount = AmountText.read(told, SiUnit.of(unit)).in(unit);
            if (!(amount > 0)) {
                throw wrong("“" + told + "”", SiUnit.of(unit).quantity() + " of more than nothing");
            }
            return amount;
        } catch (AmountText.Unreadable unreadable) {
            throw wrong(unreadable.found(), unreadable.expected());
        }
    }

    /** Whether a text can be read as such an amount. */
    boolean isAmount(String told, String unit) {
        try {
            AmountText.read(told, SiUnit.of(unit));
            return true;
        } catch (AmountText.Unreadable unreadable) {
            return false;
        }
    }
}
