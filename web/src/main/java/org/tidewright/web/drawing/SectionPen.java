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

    /** A rectangle; {@code more} are further attributes, name and value in turn. */
    void area(Area area, String style, Object... more) {
        svg.open("rect")
                .has("class", style)
                .has("x", area.left())
                .has("y", -area.top())
                .has("width", Math.max(0, area.width()))
                .has("height", Math.max(0, area.height()));
        finish(more);
    }

    void line(double x1, double y1, double x2, double y2, String style, Object... more) {
        path(new Path().to(x1, y1).line(x2, y2), style, more);
    }

    void path(Path path, String style, Object... more) {
        svg.open("path").has("class", style).has("d", path.data());
        finish(more);
    }

    void circle(double x, double y, double radius, String style) {
        svg.open("circle")
                .has("class", style)
                .has("cx", x)
                .has("cy", -y)
                .has("r", radius)
                .close();
    }

    /** Words beside a point; offsets in pixels, down positive as on screen. */
    void words(double x, double y, String words, Anchor anchor, double right, double down, String style) {
        svg.open("g").has("transform", at(x, y)).open("g").has("class", "px").open("text");
        if (!style.isEmpty()) {
            svg.has("class", style);
        }
        svg.has("x", right)
                .has("y", down)
                .has("text-anchor", anchor.svg())
                .text(words)
                .close()
                .close()
                .close();
    }

    private void finish(Object... more) {
        for (int i = 0; i + 1 < more.length; i += 2) {
            String name = more[i].toString();
            if (more[i + 1] instanceof Double number) {
                svg.has(name, number);
            } else {
                svg.has(name, more[i + 1].toString());
            }
        }
        svg.close();
    }

    /** A transform to a point. */
    static String at(double x, double y) {
        return "translate(" + SvgWriter.number(x) + "," + SvgWriter.number(-y) + ")";
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
