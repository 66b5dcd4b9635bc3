package org.tidewright.web.drawing;

import java.util.List;

/** Draws in millimetres with y up, and words at their size in pixels. */
final class SectionPen {
    private final SvgWriter svg;
    /** Millimetres per CSS pixel at the usual width, for what the server must lay out itself. */
    private final double pixel;

    SectionPen(SvgWriter svg, double pixel) {
        this.svg = svg;
        this.pixel = pixel;
    }

    SvgWriter svg() {
        return svg;
    }

    /** So many pixels of the usual width, in millimetres. */
    double pixels(double count) {
        return count * pixel;
    }

    void area(Area area, String style, Object... more) {
        Object[] attributes = joined(
                more,
                "class",
                style,
                "x",
                area.left(),
                "y",
                -area.top(),
                "width",
                Math.max(0, area.width()),
                "height",
                Math.max(0, area.height()));
        svg.leaf("rect", attributes);
    }

    void line(double x1, double y1, double x2, double y2, String style, Object... more) {
        path(new Path().to(x1, y1).line(x2, y2), style, more);
    }

    void path(Path path, String style, Object... more) {
        svg.leaf("path", joined(more, "class", style, "d", path.data()));
    }

    void circle(double x, double y, double radius, String style) {
        svg.leaf("circle", "class", style, "cx", x, "cy", -y, "r", radius);
    }

    /** Words beside a point; offsets in pixels, down positive as on screen. */
    void words(double x, double y, String words, Anchor anchor, double right, double down, String style) {
        svg.open("g", "transform", at(x, y)).open("g", "class", "px");
        svg.words("text", words, "x", right, "y", down, "text-anchor", anchor.svg(), "class", style);
        svg.close().close();
    }

    /** A transform to a point. */
    static String at(double x, double y) {
        return "translate(" + SvgWriter.number(x) + "," + SvgWriter.number(-y) + ")";
    }

    private static Object[] joined(Object[] more, Object... first) {
        Object[] all = new Object[first.length + more.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return all;
    }

    /** Which end of a text stands at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END;

        String svg() {
            return switch (this) {
                case START -> "start";
                case MIDDLE -> "middle";
                case END -> "end";
            };
        }
    }

    /** Path data with y up. */
    static final class Path {
        private final StringBuilder data = new StringBuilder();

        Path to(double x, double y) {
            return command('M', x, y);
        }

        Path line(double x, double y) {
            return command('L', x, y);
        }

        Path curve(double controlX, double controlY, double x, double y) {
            command('Q', controlX, controlY);
            data.append(' ').append(SvgWriter.number(x)).append(',').append(SvgWriter.number(-y));
            return this;
        }

        Path through(List<PipeRoutes.Point> points) {
            for (int i = 0; i < points.size(); i++) {
                command(i == 0 ? 'M' : 'L', points.get(i).x(), points.get(i).y());
            }
            return this;
        }

        Path closed() {
            data.append('Z');
            return this;
        }

        String data() {
            return data.toString();
        }

        private Path command(char letter, double x, double y) {
            data.append(letter).append(SvgWriter.number(x)).append(',').append(SvgWriter.number(-y));
            return this;
        }
    }
}
