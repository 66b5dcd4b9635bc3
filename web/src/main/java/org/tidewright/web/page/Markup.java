package org.tidewright.web.page;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import org.tidewright.web.drawing.SvgWriter;

/** HTML that is already escaped and well formed. */
public record Markup(String html) implements Content {
    static final Markup EMPTY = new Markup("");

    /** Plain words. */
    static Markup words(String text) {
        return new Markup(SvgWriter.escaped(text));
    }

    /** JSON for a script element: nothing in it can end the element. */
    static Markup json(String json) {
        return new Markup(json.replace("<", "\\u003c"));
    }

    @Override
    public void writeTo(TemplateOutput output) {
        output.writeContent(html);
    }

    @Override
    public String toString() {
        return html;
    }
}
