package org.tidewright.husbandry.note;

/** Why a text is no line of a journal, in words for the keeper: what was found, what is expected, what to do. */
public final class UnreadableNote extends Exception {
    private static final long serialVersionUID = 1L;
    private static final int SHOWN = 60;

    UnreadableNote(String text, String found, String expected) {
        this(text, found, expected, "");
    }

    UnreadableNote(String text, String found, String expected, String suggestion) {
        super("“" + shortened(text) + "”: found " + found + "; expected " + expected + "."
                + (suggestion.isEmpty() ? "" : " " + suggestion));
    }

    /** Of a part that another reader refused in words of its own. */
    UnreadableNote(String words) {
        super(words);
    }

    private static String shortened(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN - 1) + "…" : text;
    }
}
