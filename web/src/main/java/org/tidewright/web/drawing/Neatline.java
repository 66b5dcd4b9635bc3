package org.tidewright.web.drawing;

import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SectionPen.Anchor;

/** The alternating scale of a chart's border, along the floor and up the left side. */
final class Neatline {
    /** A step of the scale: bars of so many millimetres, a number at every so many bars. */
    private record Steps(double bar, int labelEvery, double unit, String symbol) {
        static Steps of(double span, UnitSystem units) {
            if (units == UnitSystem.US) {
                double bar = 101.6;
                return new Steps(bar, span > 4000 ? 9 : 3, 304.8, "ft");
            }
            double bar = span > 4000 ? 500 : 100;
            return new Steps(bar, span < 900 ? 2 : span > 4000 ? 2 : 5, 10, "cm");
        }

        String told(double millimetres) {
            return Long.toString(Math.round(millimetres / unit)).replace('-', '\u2212');
        }
    }

    private Neatline() {}

    /** Under the display, from its left end. */
    static void along(SectionPen pen, double length, double y, UnitSystem units) {
        Steps steps = Steps.of(length, units);
        double high = pen.pixels(6.5);
        int bars = (int) Math.ceil(length / steps.bar() - 1e-9);
        for (int i = 0; i < bars; i++) {
            double from = i * steps.bar();
            Area bar = new Area(from, y - high, Math.min(steps.bar(), length - from), high);
            pen.area(bar, i % 2 == 0 ? "bar-ink" : "bar-paper");
        }
        int last = (int) Math.floor(length / steps.bar() / steps.labelEvery() + 1e-9) * steps.labelEvery();
        for (int i = 0; i <= last; i += steps.labelEvery()) {
            double x = i * steps.bar();
            String words = steps.told(x) + (i == last ? " " + steps.symbol() : "");
            pen.words(x, y - high, words, i == 0 ? Anchor.START : Anchor.MIDDLE, 0, 15, "scale");
        }
    }

    /** Up the left side from the lowest floor; numbers count from the finished floor. */
    static void up(SectionPen pen, double x, double from, double to, UnitSystem units) {
        Steps steps = Steps.of(to - from, units);
        double wide = pen.pixels(6.5);
        int first = (int) Math.floor(from / steps.bar() + 1e-9);
        for (int i = first; i * steps.bar() < to - 1e-9; i++) {
            double low = Math.max(from, i * steps.bar());
            double high = Math.min(to, (i + 1) * steps.bar());
            if (high > low) {
                pen.area(new Area(x - wide, low, wide, high - low), Math.floorMod(i, 2) == 0 ? "bar-ink" : "bar-paper");
            }
            if (Math.floorMod(i, steps.labelEvery()) == 0 && i * steps.bar() >= from - 1e-9) {
                label(pen, x - wide, i * steps.bar(), steps);
            }
        }
        int end = (int) Math.floor(to / steps.bar() + 1e-9);
        if (Math.floorMod(end, steps.labelEvery()) == 0 && Math.abs(end * steps.bar() - to) < 1e-6) {
            label(pen, x - wide, to, steps);
        }
    }

    private static void label(SectionPen pen, double x, double y, Steps steps) {
        pen.words(x, y, steps.told(y), Anchor.END, -6, 4, "scale");
    }

    /** The greatest multiple of a bar not above a height. */
    static double wholeBars(double height, UnitSystem units) {
        double bar = Steps.of(height, units).bar();
        return Math.floor(height / bar + 1e-9) * bar;
    }
}
