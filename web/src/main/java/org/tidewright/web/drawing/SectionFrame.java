package org.tidewright.web.drawing;

/**
 * What part of the drawing space is shown, and how large.
 *
 * @param pixel millimetres per CSS pixel on a wide page
 * @param labelX where the column of labels right of the display begins
 * @param wideMargin whether those labels need a margin of their own, outside the frame
 */
record SectionFrame(
        double left, double right, double top, double bottom, double pixel, double labelX, boolean wideMargin) {

    /** Width of the drawing on a wide page, CSS pixels; the margins are those of drawing.css. */
    private static final double SHEET = 862;

    private static final double MARGIN_LEFT = 64;
    private static final double MARGIN_RIGHT = 28;
    private static final double MARGIN_RIGHT_WIDE = 154;
    private static final double LABEL = 150;

    /** Small tanks are not drawn larger than this. */
    private static final double SMALLEST_PIXEL = 1;

    static SectionFrame of(SectionLayout layout) {
        double left = layout.display().outside().left() - 30;
        double right = layout.display().outside().right() + 30;
        double top = layout.display().inside().top() + 20;
        for (Area vessel : layout.vessels()) {
            left = Math.min(left, vessel.left() - 30);
            right = Math.max(right, vessel.right() + 30);
            top = Math.max(top, vessel.top() + 20);
        }
        if (layout.sump() != null) {
            left = Math.min(left, layout.riserX() - 40);
            top = Math.max(top, layout.overRim() + 30);
        }
        if (layout.refugium() != null) {
            top = Math.max(top, layout.refugium().inside().top() + 70);
        }
        double ground = foot(layout);

        double pixel = 2.4;
        double labelX = 0;
        boolean wide = true;
        for (int i = 0; i < 12; i++) {
            labelX = labelX(layout, pixel);
            wide = labelX + LABEL * pixel > right + MARGIN_RIGHT * pixel;
            double free = SHEET - MARGIN_LEFT - (wide ? MARGIN_RIGHT_WIDE : MARGIN_RIGHT);
            double width = Math.max(right - left, wide ? labelX - left : 0);
            // No higher than about a screen: a tall, narrow system keeps air beside it.
            double height = top - ground + 64 * pixel;
            pixel = Math.max(Math.max(width / free, height / 760), SMALLEST_PIXEL);
        }
        top = Math.max(top, layout.display().inside().top() + 54 * pixel);
        double bottom = ground - (layout.sump() == null ? 48 : 60) * pixel;
        double free = SHEET - MARGIN_LEFT - (wide ? MARGIN_RIGHT_WIDE : MARGIN_RIGHT);
        double slack = Math.max(0, free * pixel - (right - left));
        // The slack goes to the right where labels stand there, else to both sides.
        double toLeft = wide ? 0.5 * Math.max(0, slack - Math.max(0, labelX - right)) : 0.5 * slack;
        return new SectionFrame(left - toLeft, left - toLeft + free * pixel, top, bottom, pixel, labelX, wide);
    }

    /** The lowest height shown: the floor, or, where nothing stands under the display, a cut through its stand. */
    static double foot(SectionLayout layout) {
        double shown = layout.display().outside().bottom()
                - Math.max(110, 0.35 * layout.display().inside().height());
        return layout.sump() == null && shown > 150 ? shown : layout.ground();
    }

    /** Right of the display, or of whatever stands beside it at the same height. */
    private static double labelX(SectionLayout layout, double pixel) {
        double x = layout.display().outside().right();
        if (layout.box() != null && layout.box().outer() != null) {
            x = layout.box().outer().right() + layout.box().wall();
        }
        SectionLayout.Tank refugium = layout.refugium();
        if (refugium != null && refugium.inside().top() + 80 > lowestLabel(layout) - 24 * pixel) {
            x = Math.max(x, refugium.outside().right());
        }
        return x + 18 * pixel;
    }

    private static double lowestLabel(SectionLayout layout) {
        double lowest = layout.display().inside().top();
        if (layout.plan().overflow() != null) {
            for (var drain : layout.plan().overflow().drains()) {
                lowest = Math.min(lowest, layout.display().inside().bottom() + Area.mm(drain.inlet()));
            }
        }
        return lowest;
    }

    double width() {
        return right - left;
    }

    String viewBox() {
        return SvgWriter.number(left) + " " + SvgWriter.number(-top) + " " + SvgWriter.number(width()) + " "
                + SvgWriter.number(top - bottom);
    }

    /** The rung of drawing.css's ladder of text scales next to this width, for pages without script. */
    String scaleClass() {
        int rung = (int) Math.round(20 * Math.log10(width() / 100));
        return "scale-" + Math.max(8, Math.min(50, rung));
    }
}
