package org.tidewright.web.drawing;

import java.util.List;
import org.tidewright.web.drawing.PipeRoutes.Point;

/** Pipes at their true outer diameter, with dashes where the water moves. */
final class PipeDrawing {
    private PipeDrawing() {}

    static void draw(SectionPen pen, PipeRoutes routes, WaterLevels water) {
        for (PipeRoutes.Route route : routes.routes()) {
            SectionPen.Path line = new SectionPen.Path().through(route.points());
            pen.svg().open("g").open("title").text(route.title()).close();
            tube(pen, line, route.outside(), water.isFull(route.key()) ? "full" : "empty", "data-bore", route.key());
            double flow = water.flow(route.key());
            pen.path(line, flow == 0 ? "flow off" : flow < 0 ? "flow back" : "flow", "data-flow", route.key());
            pen.svg().close();
        }
        routes.valves().forEach(valve -> valve(pen, valve));
    }

    /** A tube: its wall is two strokes, one over the other. */
    static void tube(SectionPen pen, SectionPen.Path line, double outside, String state, Object... more) {
        double inside = Math.max(outside * 0.5, outside - Math.max(7, pen.pixels(2.6)));
        pen.path(line, "pipe wall", "stroke-width", outside);
        Object[] attributes = new Object[more.length + 2];
        System.arraycopy(more, 0, attributes, 2, more.length);
        attributes[0] = "stroke-width";
        attributes[1] = inside;
        pen.path(line, "pipe bore " + state, attributes);
    }

    private static void valve(SectionPen pen, Point at) {
        double half = 38;
        double high = 28;
        pen.path(
                new SectionPen.Path()
                        .to(at.x() - half, at.y() + high)
                        .line(at.x() + half, at.y() - high)
                        .line(at.x() + half, at.y() + high)
                        .line(at.x() - half, at.y() - high)
                        .closed(),
                "cut filled");
    }

    /** Mouths, air holes and the bulkheads the drains pass. */
    static void marks(SectionPen pen, SectionLayout layout, PipeRoutes routes) {
        for (PipeRoutes.Mouth mouth : routes.mouths()) {
            Point hole = mouth.airHole();
            if (hole != null) {
                pen.svg()
                        .open("g")
                        .has("data-air-hole", "")
                        .open("title")
                        .text("air hole of " + mouth.outlet().name())
                        .close();
                pen.circle(hole.x(), hole.y(), 8, "cut filled");
                pen.svg().close();
            }
        }
        for (Point mouth : routes.drainMouths()) {
            strainer(pen, mouth);
        }
        if (layout.box() != null && layout.box().outer() == null) {
            double bottom = layout.display().outside().bottom();
            double inside = layout.display().inside().bottom();
            for (PipeRoutes.Route route : routes.routes()) {
                if (route.key().startsWith("drain-")) {
                    double half = route.outside() / 2 + 11;
                    double x = route.points().get(0).x();
                    pen.area(new Area(x - half, inside, 2 * half, 14), "timber");
                    pen.area(new Area(x - half, bottom - 14, 2 * half, 14), "timber");
                }
            }
        }
    }

    /** A drain's mouth, its lip at the plan's height, under a strainer. */
    private static void strainer(SectionPen pen, Point at) {
        SectionPen.Path comb = new SectionPen.Path();
        comb.to(at.x() - 30, at.y()).line(at.x() + 30, at.y());
        for (int dx : List.of(-22, 0, 22)) {
            comb.to(at.x() + dx, at.y()).line(at.x() + dx, at.y() + 22);
        }
        comb.to(at.x() - 30, at.y() + 22).line(at.x() + 30, at.y() + 22);
        pen.path(comb, "fine");
    }
}
