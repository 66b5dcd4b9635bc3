package org.tidewright.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidewright.web.drawing.SectionPen.Anchor;

/** Labels one under the other, each joined to its thing by a fine line and kept a line's height from the next. */
final class LabelColumn {
    /** Pixels from one base line to the next. */
    private static final double LINE = 16;

    private record Label(double x, double y, String words) {}

    private final List<Label> labels = new ArrayList<>();

    /** A label for the thing at a point. */
    LabelColumn add(double x, double y, String words) {
        labels.add(new Label(x, y, words));
        return this;
    }

    boolean isEmpty() {
        return labels.isEmpty();
    }

    /** The labels from top to bottom and the heights they stand at, none higher than {@code top}. */
    List<Double> heights(double top, double line) {
        labels.sort(Comparator.comparingDouble(Label::y).reversed());
        List<Double> heights = new ArrayList<>();
        double free = top;
        for (Label label : labels) {
            double at = Math.min(label.y(), free);
            heights.add(at);
            free = at - line;
        }
        return heights;
    }

    /**
     * Draws the labels.
     *
     * @param x where the words begin
     * @param top no label stands higher
     */
    void draw(SectionPen pen, double x, double top, String style) {
        List<Double> heights = heights(top, pen.pixels(LINE));
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double y = heights.get(i);
            pen.line(label.x(), label.y(), x, y, "fine");
            pen.words(x, y, label.words(), Anchor.START, 4, 4, style);
        }
    }

    /** The room the words take, for what must keep out of it. */
    Area room(SectionPen pen, double x, double top) {
        List<Double> heights = heights(top, pen.pixels(LINE));
        int longest =
                labels.stream().mapToInt(label -> label.words().length()).max().orElse(0);
        double low = heights.isEmpty() ? top : heights.get(heights.size() - 1) - pen.pixels(8);
        return new Area(x, low, pen.pixels(6.6 * longest + 8), top - low);
    }
}
