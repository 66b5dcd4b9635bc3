package org.tidewright.web.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG, escaped and well formed. */
public final class SvgWriter {
    private final StringBuilder out = new StringBuilder(16_384);
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are name, value, name, value. */
    public SvgWriter open(String element, Object... attributes) {
        start(element, attributes).append('>');
        open.push(element);
        return this;
    }

    /** An element without content. */
    public SvgWriter leaf(String element, Object... attributes) {
        start(element, attributes).append("/>");
        return this;
    }

    /** An element that holds only words. */
    public SvgWriter words(String element, String words, Object... attributes) {
        return open(element, attributes).text(words).close();
    }

    public SvgWriter text(String words) {
        out.append(escaped(words));
        return this;
    }

    public SvgWriter close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** All that was written; every element must be closed. */
    public String finished() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    private StringBuilder start(String element, Object... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("an attribute of " + element + " has no value");
        }
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            Object value = attributes[i + 1];
            out.append(value instanceof Double number ? number(number) : escaped(value.toString()))
                    .append('"');
        }
        return out;
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
                    // Control characters are not allowed in XML, escaped or not.
                    boolean printable = c >= 0x20 && c != 0xfffe && c != 0xffff;
                    if (printable || c == '\n' || c == '\t') {
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }
}
