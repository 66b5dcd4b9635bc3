package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sand;
import org.tidewright.plan.model.Sump;

/** Glass, walls, sand and rock. */
final class VesselDrawing {
    /** Dry coral sand as poured, kg/m³; common practice. */
    private static final double SAND_AS_POURED = 1500;

    private VesselDrawing() {}

    /** What a vessel hides of the things behind it. */
    static void background(SectionPen pen, SectionLayout layout) {
        pen.area(layout.display().inside(), "void");
        if (layout.sump() != null) {
            pen.area(layout.sump().tank().inside(), "void");
        }
        if (layout.refugium() != null) {
            pen.area(layout.refugium().inside(), "void");
        }
        if (layout.reservoir() != null) {
            pen.area(layout.reservoir(), "void");
        }
        outerBox(layout, pen);
    }

    private static void outerBox(SectionLayout layout, SectionPen pen) {
        if (layout.box() != null && layout.box().outer() != null) {
            pen.area(layout.box().outer(), "void");
        }
    }

    static void aquascapes(SectionPen pen, SectionLayout layout, List<Area> clear) {
        Plan plan = layout.plan();
        Area display = layout.display().inside();
        double free = layout.box() == null ? display.width() : layout.box().crestX();
        if (layout.box() != null && layout.box().inside().bottom() > display.bottom() + 1) {
            free = display.width();
        }
        double usual = plan.overflow() != null
                ? mm(plan.overflow().crest())
                : plan.display().waterLevel() != null ? mm(plan.display().waterLevel()) : 0.9 * display.height();
        double area = plan.display().length().in("m") * plan.display().width().in("m");
        Area strip = sand(pen, plan.display().sand(), new Area(0, display.bottom(), free, display.height()), area);
        rock(pen, plan.display().rock(), strip, display.bottom(), 0.64 * usual, plan.name(), clear);
        if (layout.refugium() != null && plan.refugium() != null) {
            Area inside = layout.refugium().inside();
            double floor =
                    plan.refugium().length().in("m") * plan.refugium().width().in("m");
            Area bed = sand(pen, plan.refugium().sand(), inside, floor);
            double crest = mm(plan.refugium().crest());
            rock(
                    pen,
                    plan.refugium().rock(),
                    bed,
                    inside.bottom(),
                    0.6 * crest,
                    plan.refugium().name(),
                    List.of());
        }
        if (layout.sump() != null && plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                Area inside = layout.sump().section(section.name()).inside();
                Area bed = new Area(inside.left(), inside.bottom(), inside.width(), 0);
                rock(pen, section.rock(), bed, inside.bottom(), 0.35 * inside.height(), section.name(), List.of());
            }
        }
    }

    /** Draws the sand and returns the strip rock stands on. */
    private static Area sand(SectionPen pen, @Nullable Sand sand, Area inside, double floorArea) {
        double depth = sand == null
                ? 0
                : Math.min(0.5 * inside.height(), sand.dryMass().in("kg") / SAND_AS_POURED / floorArea * 1000);
        Area bed = new Area(inside.left(), inside.bottom(), inside.width(), depth);
        if (depth > 0) {
            pen.area(bed, "sand");
        }
        return bed;
    }

    private static void rock(
            SectionPen pen,
            @Nullable Rock rock,
            Area bed,
            double bottom,
            double usualTop,
            String name,
            List<Area> clear) {
        if (rock == null || rock.dryMass().in("kg") <= 0) {
            return;
        }
        double top = bottom + (rock.top() == null ? usualTop : mm(rock.top()));
        if (top > bed.top() + 10) {
            RockDrawing.draw(pen, bed, top, name, clear);
        }
    }

    static void glass(SectionPen pen, SectionLayout layout) {
        tank(pen, layout.display());
        if (layout.refugium() != null) {
            tank(pen, layout.refugium());
        }
        if (layout.sump() != null) {
            tank(pen, layout.sump().tank());
            for (SectionLayout.BafflePlace baffle : layout.sump().baffles()) {
                pen.area(baffle.pane(), "glass");
            }
        }
        if (layout.reservoir() != null) {
            Area can = layout.reservoir();
            pen.path(
                    new SectionPen.Path()
                            .to(can.left(), can.top())
                            .line(can.left(), can.bottom())
                            .line(can.right(), can.bottom())
                            .line(can.right(), can.top()),
                    "seen");
        }
        if (layout.box() != null && layout.plan().overflow() != null) {
            box(pen, layout.box(), layout.plan().overflow(), layout.display().inside());
        }
    }

    private static void tank(SectionPen pen, SectionLayout.Tank tank) {
        Area in = tank.inside();
        double pane = tank.pane();
        pen.area(new Area(in.left() - pane, in.bottom(), pane, in.height()), "glass");
        pen.area(new Area(in.right(), in.bottom(), pane, in.height()), "glass");
        pen.area(
                new Area(in.left() - pane, in.bottom() - tank.bottomPane(), in.width() + 2 * pane, tank.bottomPane()),
                "glass");
    }

    private static void box(SectionPen pen, SectionLayout.Box box, Overflow overflow, Area display) {
        Area in = box.inside();
        double wall = box.wall();
        boolean hung = box.outer() != null;
        pen.area(new Area(in.left() - wall, in.bottom(), wall, in.height()), "glass");
        if (hung) {
            pen.area(new Area(in.right(), in.bottom(), wall, display.top() - in.bottom()), "glass");
        }
        if (in.bottom() > display.bottom() + 1) {
            double floor = Math.min(wall, in.bottom() - display.bottom());
            pen.area(
                    new Area(in.left() - wall, in.bottom() - floor, in.width() + (hung ? 2 : 1) * wall, floor),
                    "glass");
        }
        if (overflow.teeth() != null) {
            comb(pen, box, mm(overflow.teeth().width()), mm(overflow.teeth().depth()), display.top());
        }
        Area outer = box.outer();
        if (outer != null) {
            pen.area(new Area(outer.left() - wall, outer.bottom(), wall, outer.height()), "glass");
            pen.area(new Area(outer.right(), outer.bottom(), wall, outer.height()), "glass");
            pen.area(new Area(outer.left() - wall, outer.bottom() - wall, outer.width() + 2 * wall, wall), "glass");
            hook(pen, box, outer, display.top());
        }
    }

    /** The tube that lifts the water over the rim of a hung overflow. */
    private static void hook(SectionPen pen, SectionLayout.Box box, Area outer, double rim) {
        double inX = box.inside().left() + 0.6 * box.inside().width();
        double outX = outer.left() + 0.25 * outer.width();
        double low = Math.max(box.inside().bottom(), outer.bottom()) + 25;
        double over = rim + 34;
        SectionPen.Path tube = new SectionPen.Path()
                .to(inX, low)
                .line(inX, over - 16)
                .curve(inX, over, inX + 16, over)
                .line(outX - 16, over)
                .curve(outX, over, outX, over - 16)
                .line(outX, low);
        double outside = 0.25 * Math.min(90, box.inside().width() * 1.4);
        PipeDrawing.tube(pen, tube, outside, "full");
    }

    /** Teeth seen along the box: as many slots as its length shows, in their true width. */
    private static void comb(SectionPen pen, SectionLayout.Box box, double slot, double depth, double rim) {
        double crest = box.inside().top();
        double top = Math.min(crest + depth, rim);
        double left = box.crestX();
        double right = box.inside().right();
        double pitch = Math.max(slot * 1.8, slot + 6);
        double tooth = pitch - slot;
        int count = (int) Math.floor((right - left - tooth) / pitch);
        double used = count * pitch + tooth;
        double x = left;
        double margin = (right - left - used) / 2;
        SectionPen.Path comb = new SectionPen.Path().to(x, crest).line(x, top).line(x + margin + tooth, top);
        x += margin + tooth;
        for (int i = 0; i < count; i++) {
            comb.line(x, crest).line(x + slot, crest).line(x + slot, top);
            x += slot;
            double next = i == count - 1 ? right : x + tooth;
            comb.line(next, top);
            x = next;
        }
        comb.line(right, crest);
        pen.path(comb, "seen");
    }
}
