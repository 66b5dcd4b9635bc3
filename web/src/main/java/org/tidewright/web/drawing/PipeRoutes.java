package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.model.Sump;

/**
 * How the pipes run in the drawing. Their ends stand at the plan's heights; the way between is chosen, as the plan gives
 * only its length.
 */
final class PipeRoutes {
    /** A corner of a pipe. */
    record Point(double x, double y) {}

    /**
     * A pipe.
     *
     * @param key which flow it carries, as in {@link WaterScript}
     * @param outside its outer diameter
     * @param points in the direction the water usually goes
     */
    record Route(String key, String title, double outside, List<Point> points) {}

    /** A hole or a mouth, for its mark and label. */
    record Mouth(
            ReturnLine.Outlet outlet, Point end, @Nullable Point airHole) {}

    static final String RETURN = "return";
    static final String FEED = "feed";
    static final String REFUGIUM_OVERFLOW = "refugium-overflow";

    private final SectionLayout layout;
    private final SectionSlots slots;
    private final List<Route> routes = new ArrayList<>();
    private final List<Mouth> mouths = new ArrayList<>();
    private final List<Point> valves = new ArrayList<>();
    private final List<Point> drainMouths = new ArrayList<>();

    private PipeRoutes(SectionLayout layout, SectionSlots slots) {
        this.layout = layout;
        this.slots = slots;
    }

    static PipeRoutes of(SectionLayout layout, SectionSlots slots) {
        PipeRoutes made = new PipeRoutes(layout, slots);
        if (layout.sump() != null && layout.box() != null && layout.plan().returnLine() != null) {
            made.feed(layout.sump());
            made.drains(layout.sump(), layout.box());
            made.returnLine(layout.sump(), layout.plan().returnLine());
            made.refugiumOverflow(layout.sump());
        }
        return made;
    }

    List<Route> routes() {
        return routes;
    }

    /** The return's mouths in the display. */
    List<Mouth> mouths() {
        return mouths;
    }

    /** Middles of the valves that throttle full siphons. */
    List<Point> valves() {
        return valves;
    }

    /** The drains' mouths, in the plan's order. */
    List<Point> drainMouths() {
        return drainMouths;
    }

    static String drainKey(int index) {
        return "drain-" + index;
    }

    /** Outer diameter of a plastic pipe of this bore; common practice. */
    static double outside(double bore) {
        return bore + Math.max(4, 0.16 * bore);
    }

    /** Height in the room between the sump's rim (0) and what carries the display (1). */
    private double lane(SectionLayout.SumpPlace sump, double share) {
        double rim = sump.tank().inside().top();
        double ceiling = sump.underDisplay() ? layout.ceiling() : rim + 300;
        return rim + share * (ceiling - rim);
    }

    private static double bore(ReturnLine line) {
        return mm(line.pipe().bore());
    }

    private double pumpX() {
        return slots.of(SectionSlots.Kind.PUMP, "").middle();
    }

    Point pump() {
        SectionLayout.SumpPlace sump = required(layout.sump());
        return new Point(pumpX(), sump.tank().inside().bottom() + 6 + pumpRadius());
    }

    double pumpRadius() {
        return Math.min(44, slots.of(SectionSlots.Kind.PUMP, "").width() / 2);
    }

    private void returnLine(SectionLayout.SumpPlace sump, ReturnLine line) {
        double outside = outside(bore(line));
        double lane = lane(sump, 0.42);
        double over = layout.overRim();
        double base = layout.display().inside().bottom();
        List<Double> downs = nozzleXs(line.outlets().size(), outside);
        List<Point> main = new ArrayList<>(List.of(
                pump(), new Point(pumpX(), lane), new Point(layout.riserX(), lane), new Point(layout.riserX(), over)));
        for (int i = line.outlets().size() - 1; i >= 0; i--) {
            ReturnLine.Outlet outlet = line.outlets().get(i);
            double x = downs.get(i);
            double mouth = outside(mm(outlet.bore()));
            // The mouth looks into the tank, a little down; its lowest point is where the plan says.
            double reach = Math.min(46, 0.12 * layout.display().inside().width());
            double end = base + mm(outlet.lowerEdge()) + 0.87 * mouth / 2;
            Point bend = new Point(x, end + 0.57 * reach);
            Point tip = new Point(x + reach, end);
            List<Point> drop = new ArrayList<>(i == line.outlets().size() - 1 ? main : List.of());
            drop.add(new Point(x, over));
            drop.add(bend);
            drop.add(tip);
            routes.add(new Route(RETURN, "return line", outside, drop));
            mouths.add(0, new Mouth(outlet, tip, airHole(outlet, base, bend, tip, outside)));
        }
    }

    private static @Nullable Point airHole(
            ReturnLine.Outlet outlet, double base, Point bend, Point tip, double outside) {
        if (outlet.airHole() == null) {
            return null;
        }
        double y = base + mm(outlet.airHole().height());
        if (y >= bend.y()) {
            return new Point(bend.x() + outside / 2 - 3, y);
        }
        double along = Math.min(1, (bend.y() - y) / (bend.y() - tip.y()));
        return new Point(bend.x() + along * (tip.x() - bend.x()), y);
    }

    private List<Double> nozzleXs(int count, double outside) {
        double clear = layout.box() == null
                ? layout.display().inside().width()
                : layout.box().crestX();
        double first = Math.min(78, 0.12 * clear);
        double step = count == 1 ? 0 : Math.min(260, (0.6 * clear - first) / (count - 1));
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            xs.add(Math.max(outside, first) + i * step);
        }
        return xs;
    }

    private void drains(SectionLayout.SumpPlace sump, SectionLayout.Box box) {
        List<Overflow.Drain> drains = required(layout.plan().overflow()).drains();
        Area from = box.drained();
        String first = sump.sections().get(0).name();
        Slant slant = slant(sump, box);
        double turn = lane(sump, 0.58);
        Point before = null;
        double beforeOutside = 0;
        for (int i = 0; i < drains.size(); i++) {
            Overflow.Drain drain = drains.get(i);
            double outside = outside(mm(drain.pipe().bore()));
            double x = from.left() + from.width() * (i + 1) / (drains.size() + 1);
            double inlet = layout.display().inside().bottom() + mm(drain.inlet());
            SectionLayout.SectionPlace into = sump.section(drain.into() == null ? first : drain.into());
            double slot = slots.of(SectionSlots.Kind.DRAIN, drain.name()).middle();
            double end = into.inside().bottom() + under(into);
            List<Point> way = new ArrayList<>(List.of(new Point(x, inlet)));
            if (sump.underDisplay()) {
                if (before != null) {
                    turn = before.y() - slant.drop(x - before.x(), (outside + beforeOutside) / 2 + 8);
                }
                if (Math.abs(slot - x) > 1) {
                    way.add(new Point(x, turn));
                    way.add(new Point(slot, turn - slant.slope() * Math.abs(slot - x)));
                }
                before = new Point(x, turn);
                beforeOutside = outside;
            } else {
                double below = layout.display().outside().bottom() / 2 + i * (outside + 6);
                double up = layout.display().outside().left() - 30 - i * (outside + 6);
                double over = sump.tank().inside().top() + 50 + i * (outside + 6);
                way.add(new Point(x, below));
                way.add(new Point(up, below));
                way.add(new Point(up, over));
                way.add(new Point(slot, over));
            }
            way.add(new Point(slot, end));
            routes.add(new Route(drainKey(i), drain.name(), outside, way));
            drainMouths.add(new Point(x, inlet));
            if (drain.kind() == Overflow.DrainKind.SIPHON && sump.underDisplay()) {
                valves.add(new Point(x, (layout.ceiling() + turn) / 2 - 4));
            }
        }
    }

    /** How the drains run from under the box to their section: all at one slope, so that none crosses another. */
    private record Slant(double slope, boolean leftward) {
        /** How much lower the next pipe to the right must turn to keep its distance. */
        double drop(double right, double distance) {
            double needed = distance * Math.hypot(1, slope);
            return leftward ? Math.max(0, needed - slope * right) : -Math.max(0, needed - slope * right);
        }
    }

    private Slant slant(SectionLayout.SumpPlace sump, SectionLayout.Box box) {
        List<Overflow.Drain> drains = required(layout.plan().overflow()).drains();
        Area from = box.drained();
        double farthest = 1;
        double leftward = 0;
        for (int i = 0; i < drains.size(); i++) {
            double x = from.left() + from.width() * (i + 1) / (drains.size() + 1);
            double slot =
                    slots.of(SectionSlots.Kind.DRAIN, drains.get(i).name()).middle();
            farthest = Math.max(farthest, Math.abs(slot - x));
            leftward += x - slot;
        }
        double room = lane(sump, 0.58) - lane(sump, 0.26) - 20 * (drains.size() - 1);
        return new Slant(Math.max(0.08, Math.min(0.8, room / farthest)), leftward >= 0);
    }

    /** Height above a section's bottom at which pipes end: a little under its usual level. */
    private double under(SectionLayout.SectionPlace section) {
        Sump plan = required(layout.plan().sump());
        double level = plan.sections().stream()
                .filter(s -> s.name().equals(section.name()))
                .findFirst()
                .map(s -> s.baffle() != null && s.baffle().over() != null
                        ? mm(s.baffle().over())
                        : s.waterLevel() != null
                                ? mm(s.waterLevel())
                                : 0.5 * section.inside().height())
                .orElse(0.5 * section.inside().height());
        return Math.max(15, level - 35);
    }

    private void feed(SectionLayout.SumpPlace sump) {
        SectionLayout.Tank refugium = layout.refugium();
        if (refugium == null || layout.plan().refugium() == null) {
            return;
        }
        ReturnLine.Outlet outlet = layout.plan().refugium().outlet();
        double outside = outside(mm(layout.plan().refugium().feed().bore()));
        double x = refugium.inside().left() + 0.45 * refugium.inside().width();
        double rim = refugium.inside().top();
        double mouth = refugium.inside().bottom() + mm(outlet.lowerEdge());
        List<Point> way = new ArrayList<>();
        if (sump.underDisplay()) {
            double run = lane(sump, 1) - 14 - outside / 2;
            way.add(new Point(pumpX(), lane(sump, 0.42)));
            way.add(new Point(pumpX(), run));
            if (run < rim + 18) {
                double up = refugium.outside().left() - 22 - outside / 2;
                way.add(new Point(up, run));
                way.add(new Point(up, rim + 36));
                way.add(new Point(x, rim + 36));
            } else {
                way.add(new Point(x, run));
            }
        } else {
            double over = Math.max(layout.overRim(), rim + 36);
            way.add(new Point(layout.riserX(), layout.overRim()));
            way.add(new Point(layout.riserX(), over + 40));
            way.add(new Point(x, over + 40));
        }
        way.add(new Point(x, mouth));
        routes.add(new Route(FEED, "feed of " + layout.plan().refugium().name(), outside, way));
    }

    private void refugiumOverflow(SectionLayout.SumpPlace sump) {
        SectionLayout.Tank refugium = layout.refugium();
        if (refugium == null || layout.plan().refugium() == null) {
            return;
        }
        double outside = 32;
        double crest = refugium.inside().bottom() + mm(layout.plan().refugium().crest());
        double from = crest - outside / 2;
        double down = refugium.outside().left() - 48;
        double over = sump.tank().inside().top() + 8 + outside / 2;
        SectionLayout.SectionPlace into = sump.section(layout.plan().refugium().into());
        double slot = slots.of(SectionSlots.Kind.REFUGIUM_OVERFLOW, "").middle();
        routes.add(new Route(
                REFUGIUM_OVERFLOW,
                "overflow of " + layout.plan().refugium().name(),
                outside,
                List.of(
                        new Point(refugium.inside().left(), from),
                        new Point(down, from),
                        new Point(down, over),
                        new Point(slot, over),
                        new Point(slot, into.inside().bottom() + under(into)))));
    }

    private static <T> T required(@Nullable T there) {
        if (there == null) {
            throw new IllegalStateException("a loop without one of its parts");
        }
        return there;
    }
}
