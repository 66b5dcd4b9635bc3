package org.tidewright.web.drawing;

import org.tidewright.plan.model.Stand;

/** The floor and what carries the vessels: schematic, as the plan gives no timbers. */
final class StandDrawing {
    private static final double POST = 62;

    private StandDrawing() {}

    /** The finished floor, a cellar's floor, and hatching below them. */
    static void floors(SectionPen pen, SectionLayout layout, SectionFrame frame) {
        if (SectionFrame.foot(layout) > layout.ground()) {
            return;
        }
        if (layout.ground() < -1 && layout.sump() != null) {
            Area pit = layout.sump().tank().outside();
            boolean through = pit.top() > -1;
            if (through) {
                floor(pen, frame.left(), pit.left() - 30, 0);
                floor(pen, pit.right() + 30, frame.right(), 0);
            } else {
                floor(pen, frame.left(), frame.right(), 0);
            }
        }
        floor(pen, frame.left(), frame.right(), layout.ground());
    }

    private static void floor(SectionPen pen, double left, double right, double height) {
        pen.line(left, height, right, height, "ground");
        SectionPen.Path hatch = new SectionPen.Path();
        double step = pen.pixels(10);
        for (double x = left + step; x < right; x += step) {
            hatch.to(x, height).line(x - 0.6 * step, height - 0.75 * step);
        }
        pen.path(hatch, "fine");
    }

    static void stands(SectionPen pen, SectionLayout layout) {
        display(pen, layout);
        if (layout.sump() != null) {
            low(pen, layout.sump().tank().outside(), layout.ground());
        }
        if (layout.refugium() != null) {
            Area glass = layout.refugium().outside();
            low(pen, glass, glass.bottom() >= 0 ? 0 : layout.ground());
        }
        if (layout.reservoir() != null) {
            low(pen, layout.reservoir(), layout.ground());
        }
    }

    private static void display(SectionPen pen, SectionLayout layout) {
        Area glass = layout.display().outside();
        double top = glass.bottom();
        double rail = layout.railHeight();
        if (top < 30) {
            return;
        }
        Stand stand = layout.plan().stand();
        boolean cabinet = stand != null && stand.feet() == 0;
        double post = Math.min(cabinet ? 19 : POST, glass.width() / 8);
        double foot = SectionFrame.foot(layout);
        boolean cutOff = foot > layout.ground();
        if (!cutOff) {
            foot = 0;
        }
        pen.area(new Area(glass.left(), foot, post, top - rail - foot), "timber");
        pen.area(new Area(glass.right() - post, foot, post, top - rail - foot), "timber");
        pen.area(new Area(glass.left(), top - rail, glass.width(), rail), "timber");
        if (cutOff) {
            broken(pen, glass, foot);
        } else if (cabinet) {
            pen.area(new Area(glass.left() + post, 40, glass.width() - 2 * post, 19), "timber");
        }
        if (!cabinet) {
            cut(pen, new Area(glass.left(), top - rail, rail, rail));
            cut(pen, new Area(glass.right() - rail, top - rail, rail, rail));
        }
    }

    /** The sign that the stand goes on below: a line with a break in it. */
    private static void broken(SectionPen pen, Area glass, double y) {
        double reach = pen.pixels(22);
        double tooth = pen.pixels(7);
        double middle = glass.middle();
        pen.area(new Area(glass.left() - 2, y - tooth, glass.width() + 4, tooth), "void");
        pen.path(
                new SectionPen.Path()
                        .to(glass.left() - reach, y)
                        .line(middle - tooth, y)
                        .line(middle - tooth / 2, y + tooth)
                        .line(middle + tooth / 2, y - tooth)
                        .line(middle + tooth, y)
                        .line(glass.right() + reach, y),
                "seen");
    }

    /** Timber the section cuts through carries its cross. */
    private static void cut(SectionPen pen, Area timber) {
        pen.area(timber, "timber");
        pen.path(
                new SectionPen.Path()
                        .to(timber.left(), timber.bottom())
                        .line(timber.right(), timber.top())
                        .to(timber.left(), timber.top())
                        .line(timber.right(), timber.bottom()),
                "fine");
    }

    /** A board on two feet, under a vessel that stands near the floor or on legs. */
    private static void low(SectionPen pen, Area glass, double ground) {
        double height = glass.bottom() - ground;
        if (height < 4) {
            return;
        }
        double board = Math.min(18, 0.6 * height);
        double over = Math.min(18, 0.1 * glass.width());
        double foot = Math.min(40, 0.2 * glass.width());
        pen.area(new Area(glass.left() - over, glass.bottom() - board, glass.width() + 2 * over, board), "timber");
        pen.area(new Area(glass.left() - over, ground, foot, height - board), "timber");
        pen.area(new Area(glass.right() + over - foot, ground, foot, height - board), "timber");
    }
}
