package org.tidewright.web.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes SVG, escaped and well formed: {@code svg.open("line").has("x1", 0.0).has("x2", "100%").close()}.
 */
public final class SvgWriter {
    private final StringBuilder out = new StringBuilder(16_384);
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    /** Begins an element; attributes may follow. */
    public SvgWriter open(String element) {
        endTag();
        out.append('<').append(element);
        open.push(element);
        inTag = true;
        return this;
    }

    /** An attribute of the element just begun. */
    public SvgWriter has(String attribute, String value) {
        if (!inTag) {
            throw new IllegalStateException("the attribute " + attribute + " comes after content");
        }
        out.append(' ').append(attribute).append("=\"").append(escaped(value)).append('"');
        return this;
    }

    /** An attribute that is a coordinate or a size. */
    public SvgWriter has(String attribute, double value) {
        return has(attribute, number(value));
    }

    public SvgWriter text(String words) {
        endTag();
        out.append(escaped(words));
        return this;
    }

    /** Ends the element begun last. */
    public SvgWriter close() {
        String element = open.pop();
        if (inTag) {
            out.append("/>");
            inTag = false;
        } else {
            out.append("</").append(element).append('>');
        }
        return this;
    }

    /** All that was written; every element must be closed. */
    public String finished() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    private void endTag() {
        if (inTag) {
            out.append('>');
            inTag = false;
        }
    }

    /** A coordinate, to a tenth: finer than any screen shows at this scale. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a coordinate of " + value);
        }
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0
                ? Long.toString(tenths / 10)
                : (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths) % 10;
    }

    /** Words as they may stand in an element or between the quotes of an attribute. */
    public static String escaped(String words) {
        StringBuilder safe = new StringBuilder(words.length() + 16);
        words.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    // Control characters are not allowed in XML, escaped or not; nor is half of a pair.
                    boolean printable = c >= 0x20 && c != 0xfffe && c != 0xffff && !(c >= 0xd800 && c <= 0xdfff);
                    if (printable || c == '\n' || c == '\t') {
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }
}
