package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.web.drawing.SectionPen.Anchor;

/**
 * A plan's section to scale, with the water of one moment.
 *
 * @param svg the drawing
 * @param classes of the element around it: margins and the text's scale
 */
public record SectionDrawing(String svg, String classes) {

    /**
     * Draws a plan.
     *
     * @param water levels and flows; its first sample is the running state, shown dotted
     * @param sample the moment to draw
     * @param label what the drawing shows, for who cannot see it
     */
    public static SectionDrawing of(Plan plan, WaterMovement water, int sample, UnitSystem units, String label) {
        SectionLayout layout = SectionLayout.of(plan);
        SectionFrame frame = SectionFrame.of(layout);
        SectionSlots slots = SectionSlots.of(layout, frame.pixel());
        PipeRoutes routes = PipeRoutes.of(layout, slots);
        WaterLevels levels = new WaterLevels(plan, water, sample);
        SvgWriter svg = new SvgWriter();
        SectionPen pen = new SectionPen(svg, frame.pixel());
        List<WaterDrawing.Pool> pools = WaterDrawing.pools(layout, slots);
        LabelColumn mouths = mouths(layout, routes, units);
        double mouthsX = mouthsX(pen, routes);
        double mouthsTop = layout.display().inside().top() - pen.pixels(30);
        double free = layout.box() == null
                ? layout.display().inside().right()
                : layout.box().crestX();
        LabelColumn aside = new LabelColumn();
        if (mouths.room(pen, mouthsX, mouthsTop).right() > free) {
            // Too narrow a tank for words in its water: they join those beside it.
            aside = mouths;
            mouths = new LabelColumn();
        }

        svg.open("svg")
                .has("viewBox", frame.viewBox())
                .has("role", "img")
                .has("aria-label", label)
                .has("class", "section");
        StandDrawing.floors(pen, layout, frame);
        StandDrawing.stands(pen, layout);
        WaterDrawing.floor(pen, layout, levels);
        VesselDrawing.background(pen, layout);
        WaterDrawing.tints(pen, layout, pools, levels);
        VesselDrawing.aquascapes(
                pen, layout, mouths.isEmpty() ? List.of() : List.of(mouths.room(pen, mouthsX, mouthsTop)));
        WaterDrawing.surfaces(pen, layout, pools, levels);
        VesselDrawing.glass(pen, layout);
        GearDrawing.draw(pen, layout, slots);
        PipeDrawing.draw(pen, routes, levels);
        GearDrawing.pump(pen, layout, slots, routes);
        PipeDrawing.marks(pen, layout, routes);
        WaterDrawing.rim(pen, layout, levels);
        scales(pen, layout, frame, units);
        svg.open("g").has("class", "wide-only");
        mouths.draw(pen, mouthsX, mouthsTop, "onwater");
        heights(pen, layout, routes, frame, aside, units);
        limit(pen, layout, slots);
        names(pen, layout);
        svg.close();
        WaterDrawing.marks(pen, layout, pools, levels, units);
        floorLabel(pen, layout);
        svg.close();
        return new SectionDrawing(
                svg.finished(), "drawing " + frame.scaleClass() + (frame.wideMargin() ? " labels-right" : ""));
    }

    private static void scales(SectionPen pen, SectionLayout layout, SectionFrame frame, UnitSystem units) {
        double foot = SectionFrame.foot(layout);
        double under = foot - pen.pixels(layout.sump() == null ? 16 : 30);
        pen.svg().open("g").has("class", "scale-along");
        Neatline.along(pen, layout.display().inside().width(), under, units);
        pen.svg().close();
        pen.svg().open("g").has("class", "wide-only");
        Neatline.up(
                pen, frame.left() - pen.pixels(8), foot, Neatline.wholeBars(frame.top() - pen.pixels(6), units), units);
        pen.svg().close();
    }

    /** Nozzles and air holes, named in the water right of them. */
    private static LabelColumn mouths(SectionLayout layout, PipeRoutes routes, UnitSystem units) {
        LabelColumn column = new LabelColumn();
        double base = layout.display().inside().bottom();
        List<PipeRoutes.Mouth> mouths = routes.mouths();
        boolean alike = mouths.stream()
                        .map(mouth -> mouth.outlet().lowerEdge() + " "
                                + mouth.outlet().airHole())
                        .distinct()
                        .count()
                <= 1;
        for (int i = mouths.size() - 1; i >= 0; i--) {
            PipeRoutes.Mouth mouth = mouths.get(i);
            if (alike && i < mouths.size() - 1) {
                continue;
            }
            String name = alike ? "" : mouth.outlet().name() + ", ";
            PipeRoutes.Point hole = mouth.airHole();
            if (hole != null) {
                column.add(hole.x(), hole.y(), name + "air hole " + WaterDrawing.told(hole.y() - base, units, false));
            }
            double edge = mm(mouth.outlet().lowerEdge());
            column.add(
                    mouth.end().x(),
                    mouth.end().y(),
                    (alike ? "nozzle " : name + "nozzle ") + WaterDrawing.told(edge, units, false));
        }
        return column;
    }

    private static double mouthsX(SectionPen pen, PipeRoutes routes) {
        double right = routes.mouths().stream()
                .mapToDouble(mouth -> mouth.end().x())
                .max()
                .orElse(0);
        return right + pen.pixels(30);
    }

    /** What stands at which height, right of the display. */
    private static void heights(
            SectionPen pen,
            SectionLayout layout,
            PipeRoutes routes,
            SectionFrame frame,
            LabelColumn column,
            UnitSystem units) {
        Plan plan = layout.plan();
        Overflow overflow = plan.overflow();
        Area display = layout.display().inside();
        double top = display.top() + pen.pixels(8);
        double x = frame.labelX();
        String unit = units == UnitSystem.US ? "heights in inches" : "heights in mm";
        column.add(
                layout.display().outside().right(),
                display.top(),
                "rim " + WaterDrawing.told(display.height(), units, false));
        if (overflow != null && layout.box() != null) {
            double crest = mm(overflow.crest());
            double from = overflow.teeth() == null ? layout.box().inside().left() : display.right() - 8;
            column.add(from, display.bottom() + crest, "crest " + WaterDrawing.told(crest, units, false));
            for (int i = 0; i < overflow.drains().size(); i++) {
                Overflow.Drain drain = overflow.drains().get(i);
                PipeRoutes.Point mouth = routes.drainMouths().get(i);
                column.add(
                        mouth.x() + 30,
                        mouth.y(),
                        drain.name() + " " + WaterDrawing.told(mm(drain.inlet()), units, false));
            }
        } else if (plan.display().waterLevel() != null) {
            double level = mm(plan.display().waterLevel());
            column.add(
                    layout.display().outside().right(),
                    display.bottom() + level,
                    "water line " + WaterDrawing.told(level, units, false));
        }
        double caption = top + pen.pixels(38);
        pen.words(x, caption, unit, Anchor.START, 4, 4, "");
        pen.words(x, caption - pen.pixels(14), "above the inside bottom", Anchor.START, 4, 4, "");
        column.draw(pen, x, top, "");
    }

    /** Names the limit over the widest gap between what passes the sump's rim, or beside it. */
    private static void limit(SectionPen pen, SectionLayout layout, SectionSlots slots) {
        if (layout.sump() == null) {
            return;
        }
        Area glass = layout.sump().tank().outside();
        double from = layout.sump().last().inside().left() + 26;
        double widest = 0;
        double at = Double.NaN;
        List<SectionSlots.Slot> passing = new ArrayList<>(slots.passingTheRim());
        passing.add(new SectionSlots.Slot(glass.right(), 0));
        for (SectionSlots.Slot slot : passing) {
            double to = slot.middle() - slot.width() / 2;
            if (to - from > widest) {
                widest = to - from;
                at = (from + to) / 2;
            }
            from = Math.max(from, slot.middle() + slot.width() / 2);
        }
        if (widest >= pen.pixels(80)) {
            pen.words(at, glass.top(), "limit: the rim", Anchor.MIDDLE, 0, -12, "");
        } else {
            pen.words(glass.right(), glass.top(), "limit: the rim", Anchor.START, 12, 12, "halo");
        }
    }

    /** Names of what stands near the floor, in a row under it. */
    private static void names(SectionPen pen, SectionLayout layout) {
        double y = layout.ground();
        if (layout.sump() != null) {
            for (SectionLayout.SectionPlace section : layout.sump().sections()) {
                name(pen, section.inside(), y, section.name());
            }
        }
        if (layout.reservoir() != null) {
            name(pen, layout.reservoir().around(14, 0), y, "top-off");
        }
        if (layout.refugium() != null && layout.plan().refugium() != null) {
            name(pen, layout.refugium().inside(), y, layout.plan().refugium().name());
        }
    }

    private static void name(SectionPen pen, Area of, double y, String name) {
        String shown = fitting(name, of.width() / pen.pixels(1) + 14);
        if (shown != null) {
            pen.words(of.middle(), y, shown, Anchor.MIDDLE, 0, 22, "");
        }
    }

    /** A name, or its first word, if it fits; a character of the labels is at most about 6.4 pixels wide. */
    private static @Nullable String fitting(String name, double pixels) {
        if (name.length() * 6.4 <= pixels) {
            return name;
        }
        String first = name.split(" ", 2)[0];
        return first.length() * 6.4 <= pixels ? first : null;
    }

    private static void floorLabel(SectionPen pen, SectionLayout layout) {
        if (layout.sump() == null) {
            return;
        }
        Area sump = layout.sump().tank().outside();
        pen.svg().open("g").has("data-floor-label", "").has("class", "off");
        pen.words(sump.right() + 12, layout.ground(), "", Anchor.START, 12, -20, "alarm halo");
        pen.svg().close();
    }
}
