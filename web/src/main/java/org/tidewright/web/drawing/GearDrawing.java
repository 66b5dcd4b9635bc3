package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.List;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;

/** Devices in and over the water: their place is the plan's, their shape a sign. */
final class GearDrawing {
    private GearDrawing() {}

    static void draw(SectionPen pen, SectionLayout layout, SectionSlots slots) {
        inSump(pen, layout, slots);
        inTank(pen, layout, layout.display(), Names.DISPLAY);
        if (layout.refugium() != null && layout.plan().refugium() != null) {
            inTank(pen, layout, layout.refugium(), layout.plan().refugium().name());
        }
        if (layout.sump() != null && layout.reservoir() != null) {
            topOff(pen, layout.sump(), layout.reservoir());
        }
    }

    /** The return pump, over its pipe. */
    static void pump(SectionPen pen, SectionLayout layout, SectionSlots slots, PipeRoutes routes) {
        if (layout.sump() != null && slots.has(SectionSlots.Kind.PUMP, "")) {
            pump(pen, routes.pump(), routes.pumpRadius(), layout.plan());
        }
    }

    private static void inSump(SectionPen pen, SectionLayout layout, SectionSlots slots) {
        if (layout.sump() == null) {
            return;
        }
        Plan plan = layout.plan();
        for (SectionLayout.SectionPlace section : layout.sump().sections()) {
            Area inside = section.inside();
            for (Gear gear : plan.gear()) {
                if (gear.standsIn().equals(section.name())) {
                    SectionSlots.Slot slot = slots.of(SectionSlots.Kind.GEAR, gear.name());
                    double room =
                            layout.sump().underDisplay() ? layout.ceiling() - inside.bottom() : 2 * inside.height();
                    gear(pen, gear, slot.middle(), inside.bottom(), slot.width(), inside.height(), room);
                }
            }
            for (Heater heater : plan.heaters()) {
                if (heater.standsIn().equals(section.name())) {
                    SectionSlots.Slot slot = slots.of(SectionSlots.Kind.HEATER, heater.name());
                    double tall = Math.min(210, 0.46 * inside.height());
                    heater(pen, heater, slot.middle(), inside.bottom() + 0.1 * inside.height(), tall, slot.width());
                }
            }
        }
    }

    private static void gear(
            SectionPen pen, Gear gear, double middle, double floor, double width, double rim, double room) {
        pen.svg().open("g").open("title").text(gear.name()).close();
        if (SectionSlots.isSkimmer(gear.name())) {
            skimmer(pen, middle, floor, width, Math.min(rim / 400, (room - 60) / 530));
        } else {
            canister(pen, middle, floor, width, Math.min(0.84 * rim, 300));
        }
        pen.svg().close();
    }

    /** Body, neck and cup of a protein skimmer, 160 by 520 at size one. */
    private static void skimmer(SectionPen pen, double x, double floor, double width, double tall) {
        double half = Math.min(80, width / 2);
        double neck = 0.47 * half;
        double cup = 0.78 * half;
        pen.path(
                new SectionPen.Path()
                        .to(x - half, floor + 20 * tall)
                        .line(x - half, floor + 300 * tall)
                        .line(x - neck, floor + 370 * tall)
                        .line(x - neck, floor + 420 * tall)
                        .line(x + neck, floor + 420 * tall)
                        .line(x + neck, floor + 370 * tall)
                        .line(x + half, floor + 300 * tall)
                        .line(x + half, floor + 20 * tall)
                        .closed(),
                "seen");
        pen.path(
                new SectionPen.Path()
                        .to(x - cup, floor + 400 * tall)
                        .line(x - cup, floor + 520 * tall)
                        .line(x + cup, floor + 520 * tall)
                        .line(x + cup, floor + 400 * tall)
                        .to(x - cup - 8, floor + 520 * tall)
                        .line(x + cup + 8, floor + 520 * tall),
                "seen");
        for (int i = 0; i < 9; i++) {
            double along = (i * 37 % 110) / 110.0 - 0.5;
            pen.circle(x + along * 1.4 * half, floor + (60 + i * 24) * tall, 5 + i % 3, "fine");
        }
    }

    private static void canister(SectionPen pen, double x, double floor, double width, double tall) {
        double half = Math.min(42, width / 2);
        pen.area(new Area(x - half, floor + 14, 2 * half, tall - 14), "seen", "rx", 0.3 * half);
        pen.area(new Area(x - half - 5, floor + tall - 6, 2 * half + 10, 16), "seen");
        SectionPen.Path media = new SectionPen.Path();
        double from = floor + 14 + 0.2 * tall;
        double to = floor + 14 + 0.62 * tall;
        media.to(x - half, from).line(x + half, from).to(x - half, to).line(x + half, to);
        pen.path(media, "fine");
        for (int i = 0; i < 10; i++) {
            double along = (i * 53 % 100) / 100.0 - 0.5;
            pen.circle(x + along * 1.5 * half, from + (0.1 + i * 0.085) * (to - from), 3, "fine");
        }
    }

    private static void heater(SectionPen pen, Heater heater, double x, double floor, double tall, double width) {
        double half = Math.min(14, width / 2);
        pen.svg()
                .open("g")
                .open("title")
                .text(heater.name() + ", " + heater.power())
                .close();
        pen.area(new Area(x - half, floor, 2 * half, tall), "seen", "rx", half);
        SectionPen.Path coil = new SectionPen.Path().to(x - half / 2, floor + 14);
        double step = Math.min(14, (tall - 50) / 8);
        for (int i = 1; i <= 8; i++) {
            coil.line(x + (i % 2 == 1 ? half / 2 : -half / 2), floor + 14 + i * step);
        }
        pen.path(coil, "fine");
        pen.svg().close();
    }

    private static void pump(SectionPen pen, PipeRoutes.Point at, double radius, Plan plan) {
        double r = radius;
        pen.svg().open("g");
        if (plan.returnLine() != null) {
            pen.svg()
                    .open("title")
                    .text("return pump, " + plan.returnLine().pump().power())
                    .close();
        }
        pen.circle(at.x(), at.y(), r, "cut filled");
        pen.path(
                new SectionPen.Path()
                        .to(at.x() - 0.72 * r, at.y() - 0.5 * r)
                        .line(at.x(), at.y() + 0.9 * r)
                        .line(at.x() + 0.72 * r, at.y() - 0.5 * r)
                        .closed(),
                "cut");
        pen.svg().close();
    }

    private static void inTank(SectionPen pen, SectionLayout layout, SectionLayout.Tank tank, String name) {
        Plan plan = layout.plan();
        Area inside = tank.inside();
        boolean isDisplay = name.equals(Names.DISPLAY);
        double right = isDisplay && layout.box() != null ? layout.box().crestX() : inside.right();
        double usual = isDisplay && plan.overflow() != null
                ? mm(plan.overflow().crest())
                : isDisplay && plan.display().waterLevel() != null
                        ? mm(plan.display().waterLevel())
                        : 0.8 * inside.height();
        List<Heater> heaters =
                plan.heaters().stream().filter(h -> h.standsIn().equals(name)).toList();
        double tall = Math.min(210, 0.5 * usual);
        for (int i = 0; i < heaters.size(); i++) {
            double x = right - Math.min(46, 0.1 * inside.width()) - i * 44;
            heater(pen, heaters.get(i), x, inside.bottom() + 0.3 * usual, tall, 28);
        }
        List<CirculationPump> streams = plan.circulationPumps().stream()
                .filter(p -> p.standsIn().equals(name))
                .toList();
        for (int i = 0; i < streams.size(); i++) {
            boolean left = i % 2 == 0;
            double size = Math.min(26, 0.05 * inside.width());
            double y = inside.bottom() + (0.52 - 0.16 * Math.floor(i / 2.0)) * usual;
            stream(pen, streams.get(i), left ? inside.left() : right, y, left ? size : -size);
        }
        for (AirPump pump : plan.airPumps()) {
            if (pump.standsIn().equals(name)) {
                // Beside the heaters, which stand in the same corner.
                double x = inside.left() + 0.93 * (right - inside.left()) - heaters.size() * 70;
                double depth = Math.min(mm(pump.depth()), usual - 12);
                air(pen, pump, x, inside.bottom() + usual, depth, inside.top(), inside);
            }
        }
        List<Gear> gear =
                plan.gear().stream().filter(g -> g.standsIn().equals(name)).toList();
        for (int i = 0; i < gear.size(); i++) {
            double width = Math.min(84, 0.12 * inside.width());
            double x = right - 0.6 * width - (heaters.size() * 44 + 30) - i * 1.3 * width;
            gear(pen, gear.get(i), x, inside.bottom() + 0.2 * usual, width, 0.8 * usual, usual);
        }
    }

    /** A stream pump on a pane, its mouth into the tank; {@code size} is negative on the right. */
    private static void stream(SectionPen pen, CirculationPump pump, double wall, double y, double size) {
        pen.svg()
                .open("g")
                .open("title")
                .text(pump.name() + ", " + pump.power())
                .close();
        double high = Math.abs(size);
        pen.path(
                new SectionPen.Path()
                        .to(wall, y - 0.5 * high)
                        .line(wall + 0.5 * size, y - 0.5 * high)
                        .line(wall + 0.5 * size, y + 0.5 * high)
                        .line(wall, y + 0.5 * high),
                "seen filled");
        pen.path(
                new SectionPen.Path()
                        .to(wall + 0.5 * size, y - 0.7 * high)
                        .line(wall + 2 * size, y - high)
                        .line(wall + 2 * size, y + high)
                        .line(wall + 0.5 * size, y + 0.7 * high)
                        .closed(),
                "seen filled");
        pen.path(
                new SectionPen.Path()
                        .to(wall + 2.6 * size, y + 0.5 * high)
                        .line(wall + 5 * size, y + 0.7 * high)
                        .to(wall + 2.6 * size, y - 0.5 * high)
                        .line(wall + 5 * size, y - 0.7 * high),
                "fine");
        pen.svg().close();
    }

    private static void air(
            SectionPen pen, AirPump pump, double x, double surface, double depth, double rim, Area inside) {
        double stone = Math.max(inside.bottom() + 6, surface - depth);
        pen.svg()
                .open("g")
                .open("title")
                .text(pump.name() + ", " + pump.power())
                .close();
        pen.line(x, stone, x, rim + 14, "fine");
        if (pump.sponge() != null) {
            sponge(pen, x, stone - 14, Math.min(90, surface - stone - 20));
        }
        pen.area(new Area(x - 22, rim + 14, 44, 22), "seen filled", "rx", 4.0);
        pen.area(new Area(x - 12, stone - 14, 24, 14), "seen filled", "rx", 5.0);
        for (int i = 0; i < 7; i++) {
            double y = stone + 18 + i * (surface - stone - 30) / 7;
            pen.circle(x + (i % 2 == 0 ? -9 : 8) + i % 3, y, 3.5 + i % 3, "fine");
        }
        pen.svg().close();
    }

    /** A block of foam around the air's way up, its volume not to scale. */
    private static void sponge(SectionPen pen, double x, double foot, double high) {
        pen.area(new Area(x - 34, foot, 68, high), "seen", "rx", 12.0);
        for (int i = 0; i < 18; i++) {
            double along = (i * 37 % 100) / 100.0;
            double up = (i * 61 % 100) / 100.0;
            pen.circle(x - 28 + 56 * along, foot + 8 + (high - 16) * up, 2 + i % 2, "fine");
        }
    }

    private static void topOff(SectionPen pen, SectionLayout.SumpPlace sump, Area reservoir) {
        Area last = sump.last().inside();
        double over = Math.max(last.top(), reservoir.top()) + 34;
        double from = reservoir.left() + 0.22 * reservoir.width();
        double to = last.left() + Math.min(20, 0.1 * last.width());
        pen.path(
                new SectionPen.Path()
                        .to(from, reservoir.bottom() + 30)
                        .line(from, over)
                        .line(to, over)
                        .line(to, last.top() - 70),
                "fine");
    }
}
