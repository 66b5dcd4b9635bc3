package org.tidewright.web.page;

import java.util.List;

/** What stands in a form of the mixing desk, one below the other. */
public sealed interface MixingItem {

    /**
     * One number, or two of a kind side by side that share a unit.
     *
     * @param unitName of the unit in the query
     */
    record Row(String label, List<Cell> cells, String unitName, List<Unit> units) implements MixingItem {
        public boolean pair() {
            return cells.size() > 1;
        }

        /** Where there is but one unit, nothing is to be chosen. */
        public boolean oneUnit() {
            return units.size() == 1;
        }
    }

    /**
     * A number to be typed.
     *
     * @param name in the query
     * @param label of one of a pair; the row's own where it stands alone
     * @param text as it was typed
     * @param signed whether it may lie below 0; the keypad of a phone has no minus otherwise
     * @param note where it is from
     * @param fault what is wrong, empty for nothing
     */
    record Cell(String name, String label, String text, boolean signed, String note, String fault) {
        public boolean faulty() {
            return !fault.isEmpty();
        }
    }

    /** A unit that can be chosen. */
    record Unit(String name, String label, boolean chosen) {}

    /** One of a few. */
    record Pick(Choice choice, String note) implements MixingItem {}

    /** One of several, in a list that unfolds. */
    record Menu(Choice choice, String note) implements MixingItem {}

    /**
     * What belongs together.
     *
     * @param key names it in the page
     * @param folded whether it is shown only when asked for
     * @param open whether it is asked for, or holds a fault
     */
    record Group(String key, String legend, boolean folded, boolean open, List<MixingItem> items) {}
}
