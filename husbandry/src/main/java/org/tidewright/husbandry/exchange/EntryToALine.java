package org.tidewright.husbandry.exchange;

import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** Lays JSON out so that each entry of a journal is a line of text, and each value of a probe too. */
final class EntryToALine extends DefaultPrettyPrinter {
    private static final long serialVersionUID = 1L;

    private static final int INSIDE_ROOT = 1;
    private static final int INSIDE_VALUES = 4;

    EntryToALine() {
        super(Separators.createDefaultInstance()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withArrayElementSpacing(Separators.Spacing.NONE));
        indentObjectsWith(new DownTo(INSIDE_ROOT));
        indentArraysWith(new DownTo(INSIDE_VALUES));
    }

    @Override
    public DefaultPrettyPrinter createInstance() {
        return new EntryToALine();
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) {
        json.writeRaw(_nesting > INSIDE_ROOT ? ", " : ",");
        _objectIndenter.writeIndentation(json, _nesting);
    }

    @Override
    public void writeEndArray(JsonGenerator json, int values) {
        if (_nesting > INSIDE_VALUES) {
            _nesting--;
            json.writeRaw(']');
        } else {
            super.writeEndArray(json, values);
        }
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) {
        super.writeEndObject(json, entries);
        if (_nesting == 0) {
            json.writeRaw('\n');
        }
    }

    /** Breaks the line before what lies no deeper than so many levels. */
    private record DownTo(int depth) implements Indenter {
        @Override
        public void writeIndentation(JsonGenerator json, int level) {
            if (level <= depth) {
                json.writeRaw('\n');
                json.writeRaw(" ".repeat(level));
            }
        }

        @Override
        public boolean isInline() {
            return false;
        }
    }
}
