package org.tidewright.app.cli;

import java.io.PrintWriter;
import java.util.regex.Pattern;

/** Sentences on a terminal: wrapped at words, never inside a number and its unit. */
final class Prose {
    private static final int USUAL_WIDTH = 92;
    private static final Pattern WORD_BREAK = Pattern.compile(" ");
    private static final char NO_BREAK_SPACE = '\u00a0';

    private final PrintWriter out;

    Prose(PrintWriter out) {
        this.out = out;
    }

    void blank() {
        out.println();
    }

    void line(String text) {
        out.println(plain(text));
    }

    /** A paragraph, every line after the first indented alike. */
    void paragraph(String first, String indent, String text) {
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : WORD_BREAK.split(text, -1)) {
            if (!empty && line.length() + 1 + word.length() > USUAL_WIDTH) {
                out.println(plain(line.toString()));
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        out.println(plain(line.toString()));
    }

    void paragraph(String text) {
        paragraph("", "", text);
    }

    private static String plain(String text) {
        return text.replace(NO_BREAK_SPACE, ' ').replace('\u202f', ' ');
    }
}
