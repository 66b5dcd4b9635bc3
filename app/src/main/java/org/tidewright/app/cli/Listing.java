package org.tidewright.app.cli;

import java.util.List;
import org.tidewright.husbandry.advice.Source;

/** What stands at the foot of every answer. */
final class Listing {
    private Listing() {}

    /** Each with the letter by which sentences name it. */
    static void lettered(Prose prose, List<Source> sources) {
        if (sources.isEmpty()) {
            return;
        }
        prose.line("Where these numbers come from");
        for (Source source : sources) {
            String detail = source.detail().isEmpty() ? "" : ", " + source.detail();
            prose.paragraph(
                    "  " + source.key() + "  ",
                    "     ",
                    source.what() + ": " + source.basis().words() + detail + ".");
        }
        prose.blank();
    }

    static void sources(Prose prose, List<Source> sources) {
        if (sources.isEmpty()) {
            return;
        }
        prose.line("Where these numbers come from");
        for (Source source : sources) {
            String detail = source.detail().isEmpty() ? "" : ": " + source.detail();
            prose.paragraph(
                    "  ",
                    "    ",
                    source.what() + ". " + sentenceCase(source.basis().words()) + detail + ".");
        }
        prose.blank();
    }

    static void cautions(Prose prose, List<String> cautions) {
        for (String caution : cautions) {
            prose.paragraph("", "  ", "Caution. " + caution);
        }
    }

    private static String sentenceCase(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
