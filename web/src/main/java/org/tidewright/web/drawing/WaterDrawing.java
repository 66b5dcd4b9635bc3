package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SectionPen.Anchor;

/** Water: flat tints with their surface, the running levels dotted, falls, and what reaches the floor. */
final class WaterDrawing {
    /**
     * A place with a free surface.
     *
     * @param from left end of the surface line
     * @param to right end
     * @param markX where its level mark stands
     * @param numbered how the mark tells its level
     */
    record Pool(String key, Area vessel, double from, double to, double markX, Numbered numbered) {}

    /** How much a level mark says. */
    enum Numbered {
        WITH_UNIT,
        NUMBER_WIDE_ONLY,
        BARE
    }

    private WaterDrawing() {}

    static List<Pool> pools(SectionLayout layout, SectionSlots slots) {
        List<Pool> pools = new ArrayList<>();
        Area display = layout.display().inside();
        double right = layout.box() == null ? display.right() : layout.box().crestX();
        pools.add(new Pool(WaterKeys.DISPLAY, display, 0, right, 0.46 * right, Numbered.WITH_UNIT));
        if (layout.box() != null) {
            Area inside = layout.box().inside();
            double rise = display.top() - inside.top();
            Area tall = new Area(inside.left(), inside.bottom(), inside.width(), inside.height() + rise);
            double mark =
                    layout.box().outer() == null ? inside.left() + Math.min(32, 0.2 * inside.width()) : Double.NaN;
            pools.add(new Pool(WaterKeys.BOX, tall, inside.left(), inside.right(), mark, Numbered.BARE));
            Area outer = layout.box().outer();
            if (outer != null) {
                pools.add(new Pool(
                        WaterKeys.BOX,
                        outer,
                        outer.left(),
                        outer.right(),
                        outer.right() - 0.17 * outer.width(),
                        Numbered.BARE));
            }
        }
        if (layout.sump() != null) {
            List<SectionLayout.SectionPlace> sections = layout.sump().sections();
            for (int i = 0; i < sections.size(); i++) {
                Area inside = sections.get(i).inside();
                pools.add(new Pool(
                        WaterKeys.section(i),
                        inside,
                        inside.left(),
                        inside.right(),
                        inside.left() + Math.min(30, 0.25 * inside.width()),
                        slots.isCrowded(sections.get(i).name()) || inside.width() < 110
                                ? Numbered.BARE
                                : Numbered.NUMBER_WIDE_ONLY));
            }
        }
        if (layout.refugium() != null) {
            Area inside = layout.refugium().inside();
            pools.add(new Pool(
                    WaterKeys.REFUGIUM,
                    inside,
                    inside.left(),
                    inside.right(),
                    inside.left() + 0.66 * inside.width(),
                    Numbered.NUMBER_WIDE_ONLY));
        }
        return pools;
    }

    /** Tints, under everything that stands in the water. */
    static void tints(SectionPen pen, SectionLayout layout, List<Pool> pools, WaterLevels water) {
        for (Pool pool : pools) {
            if (pool.key().equals(WaterKeys.BOX) && layout.box() != null) {
                pen.area(pool.vessel(), "void");
            }
            double level = depth(water.level(pool.key()));
            pen.area(
                    new Area(
                            pool.vessel().left(),
                            pool.vessel().bottom(),
                            pool.vessel().width(),
                            level),
                    "water",
                    "data-water",
                    pool.key(),
                    "data-floor",
                    pool.vessel().bottom());
        }
        if (layout.reservoir() != null) {
            Area can = layout.reservoir();
            double full = water.reservoirShare() * can.height();
            pen.area(new Area(can.left(), can.bottom(), can.width(), full), "water-was");
            pen.line(can.left(), can.bottom() + full, can.right(), can.bottom() + full, "surface thin");
        }
    }

    /** Surfaces and falls, over the tints. */
    static void surfaces(SectionPen pen, SectionLayout layout, List<Pool> pools, WaterLevels water) {
        falls(pen, layout, water);
        for (Pool pool : pools) {
            double floor = pool.vessel().bottom();
            double running = water.running(pool.key());
            if (Double.isFinite(running)) {
                pen.line(pool.from(), floor + running, pool.to(), floor + running, "was", "data-was", pool.key());
            }
            double level = water.level(pool.key());
            pen.line(
                    pool.from(),
                    floor + depth(level),
                    pool.to(),
                    floor + depth(level),
                    Double.isFinite(level) ? "surface" : "surface off",
                    "data-surface",
                    pool.key(),
                    "data-floor",
                    floor,
                    "data-from",
                    pool.from(),
                    "data-to",
                    pool.to());
        }
    }

    private static void falls(SectionPen pen, SectionLayout layout, WaterLevels water) {
        if (layout.box() != null) {
            Area box = layout.box().inside();
            fall(pen, water, WaterKeys.WEIR, box.left() + 1, 11, box.top() + 3, WaterKeys.BOX, box.bottom());
        }
        if (layout.sump() == null) {
            return;
        }
        for (int i = 0; i < layout.sump().baffles().size(); i++) {
            SectionLayout.BafflePlace baffle = layout.sump().baffles().get(i);
            if (baffle.passedOver()) {
                Area pane = baffle.pane();
                double floor = layout.sump().tank().inside().bottom();
                fall(
                        pen,
                        water,
                        WaterKeys.baffle(i),
                        pane.left() - 10,
                        9,
                        pane.top() + 3,
                        WaterKeys.section(i + 1),
                        floor);
            }
        }
    }

    private static void fall(
            SectionPen pen,
            WaterLevels water,
            String key,
            double left,
            double thick,
            double crest,
            String into,
            double floor) {
        double level = floor + depth(water.level(into));
        boolean falls = water.flow(key) > 0 && level < crest;
        pen.area(
                new Area(left, Math.min(level, crest), thick, Math.max(0, crest - level)),
                falls ? "water fall" : "water fall off",
                "data-fall",
                key,
                "data-into",
                into,
                "data-crest",
                crest,
                "data-floor",
                floor);
    }

    /** Marks with the levels in numbers; drawn last. */
    static void marks(SectionPen pen, SectionLayout layout, List<Pool> pools, WaterLevels water, UnitSystem units) {
        for (Pool pool : pools) {
            if (!Double.isFinite(pool.markX())) {
                continue;
            }
            double level = water.level(pool.key());
            double floor = pool.vessel().bottom();
            boolean bare = pool.numbered() == Numbered.BARE;
            pen.svg()
                    .open("g")
                    .has("transform", SectionPen.at(pool.markX(), floor + depth(level)))
                    .has("class", Double.isFinite(level) ? "mark" : "mark off")
                    .has("data-mark", pool.key())
                    .has("data-x", pool.markX())
                    .has("data-floor", floor)
                    .open("g")
                    .has("class", "px");
            pen.svg()
                    .open("path")
                    .has("class", "level")
                    .has("d", "M-6,-11H6L0,-1.5Z")
                    .close();
            pen.svg()
                    .open("path")
                    .has("class", "level-lines")
                    .has("d", "M-5,3.5H5M-2.5,6.5H2.5")
                    .close();
            if (!bare) {
                boolean unit = pool.numbered() == Numbered.WITH_UNIT;
                pen.svg()
                        .open("text")
                        .has("x", 11.0)
                        .has("y", -4.0)
                        .has("class", pool.numbered() == Numbered.NUMBER_WIDE_ONLY ? "onwater wide-only" : "onwater")
                        .has("data-unit", unit ? "yes" : "no")
                        .text(told(level, units, unit))
                        .close();
            }
            pen.svg().close().close();
        }
        ranAt(pen, layout, water, units);
    }

    /** “running 501” at the dotted line, once the display has fallen well below it. */
    private static void ranAt(SectionPen pen, SectionLayout layout, WaterLevels water, UnitSystem units) {
        double running = water.running(WaterKeys.DISPLAY);
        if (layout.box() == null || !Double.isFinite(running)) {
            return;
        }
        boolean fallen = running - water.level(WaterKeys.DISPLAY) > 8;
        pen.svg().open("g").has("class", fallen ? "wide-only" : "wide-only off").has("data-ran", WaterKeys.DISPLAY);
        pen.words(
                layout.box().crestX(),
                layout.display().inside().bottom() + running,
                "running " + told(running, units, false),
                Anchor.END,
                -12,
                -5,
                "halo");
        pen.svg().close();
    }

    /** The limit, the water over it and the puddle. */
    static void floor(SectionPen pen, SectionLayout layout, WaterLevels water) {
        if (layout.sump() == null) {
            return;
        }
        Area sump = layout.sump().tank().outside();
        boolean wet = water.floorIsWet();
        double width = Math.min(1.5 * sump.width(), sump.width() + 60 + water.onFloor() * 60_000);
        pen.area(
                new Area(sump.middle() - width / 2, layout.ground(), width, 8 + water.onFloor() * 1000),
                wet ? "puddle" : "puddle off",
                "data-puddle",
                "",
                "data-middle",
                sump.middle(),
                "data-least",
                sump.width() + 60,
                "data-most",
                1.5 * sump.width(),
                "data-floor",
                layout.ground());
    }

    static void rim(SectionPen pen, SectionLayout layout, WaterLevels water) {
        if (layout.sump() == null) {
            return;
        }
        Area inside = layout.sump().tank().inside();
        Area glass = layout.sump().tank().outside();
        double y = inside.top();
        String crossed = water.floorIsWet() ? " crossed" : "";
        SectionPen.Path ticks = new SectionPen.Path();
        for (double x = inside.left() + 10; x < inside.right() - 8; x += pen.pixels(11)) {
            ticks.to(x, y).line(x + pen.pixels(5.5), y + pen.pixels(6.5));
        }
        pen.svg().open("g").has("data-rim", "");
        pen.line(inside.left(), y, inside.right(), y, "limit" + crossed);
        pen.path(ticks, "limit ticks" + crossed);
        pen.svg().close();
        double ground = layout.ground();
        pen.path(
                new SectionPen.Path()
                        .to(glass.left() - 5, y)
                        .curve(glass.left() - 19, y, glass.left() - 19, y - 30)
                        .line(glass.left() - 19, ground + 8)
                        .to(glass.right() + 5, y)
                        .curve(glass.right() + 19, y, glass.right() + 19, y - 30)
                        .line(glass.right() + 19, ground + 8),
                "spill off",
                "data-spill",
                "");
    }

    /** Words for a level in millimetres, empty where there is none. */
    static String told(double level, UnitSystem units, boolean withUnit) {
        if (!Double.isFinite(level)) {
            return "";
        }
        FigureText text = FigureText.of(Figure.exact(Measure.LEVEL, level / 1000), units);
        return withUnit ? text.line() : text.value();
    }

    private static double depth(double level) {
        return Double.isFinite(level) ? Math.max(0, level) : 0;
    }

    /** Height of the rim above the sump's bottom, mm. */
    static double rimHeight(SectionLayout layout) {
        return layout.plan().sump() == null
                ? Double.NaN
                : mm(layout.plan().sump().height());
    }
}
