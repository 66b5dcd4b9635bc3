package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.Sump;

/**
 * Where the vessels of a plan stand in its drawing. Heights and lengths are the plan's; what the plan does not say, how far
 * apart things stand, is chosen here: the sump under the display where it fits, the top-off reservoir and the refugium
 * beside it.
 *
 * @param display inside of the display, its left inside edge at zero
 * @param ground height of the lowest floor: zero, or a cellar's
 */
public record SectionLayout(
        Plan plan,
        Tank display,
        @Nullable Box box,
        @Nullable SumpPlace sump,
        @Nullable Tank refugium,
        @Nullable Area reservoir,
        double ground) {

    /** A glass vessel: its inside and the panes around it. */
    public record Tank(Area inside, double pane, double bottomPane) {
        /** The vessel with its glass. */
        public Area outside() {
            return inside.around(pane, bottomPane);
        }
    }

    /**
     * The overflow box.
     *
     * @param inside of the part in the display, from its bottom to its crest
     * @param outer inside of a hung box's part behind the pane
     * @param wall thickness of its walls
     */
    public record Box(Area inside, double wall, @Nullable Area outer) {
        /** Where the drains stand. */
        public Area drained() {
            return outer == null ? inside : outer;
        }

        /** The wall the water falls over. */
        public double crestX() {
            return inside.left() - wall;
        }
    }

    /** The sump; its first section stands at the right, under the drains, and the water goes left. */
    public record SumpPlace(Tank tank, boolean underDisplay, List<SectionPlace> sections, List<BafflePlace> baffles) {
        public SectionPlace section(String name) {
            return sections.stream()
                    .filter(section -> section.name().equals(name))
                    .findFirst()
                    .orElse(sections.get(0));
        }

        public SectionPlace last() {
            return sections.get(sections.size() - 1);
        }
    }

    /** A section of the sump. */
    public record SectionPlace(String name, Area inside) {}

    /** A baffle, the pane itself; the water passes over it or under it. */
    public record BafflePlace(Area pane, boolean passedOver) {}

    /** Free height a sump needs under the display for its pipes. */
    private static final double HEADROOM = 60;

    /** From the display's left pane to the middle of the return's riser. */
    private static final double RISER = 58;

    private static final double POST = 62;

    public static SectionLayout of(Plan plan) {
        Area inside = new Area(
                0,
                mm(plan.display().bottomHeight()),
                mm(plan.display().length()),
                mm(plan.display().height()));
        Tank display = new Tank(
                inside,
                mm(plan.display().glass().panes()),
                mm(plan.display().glass().bottom()));
        Box box = plan.overflow() == null ? null : box(plan.overflow(), display);
        double reservoirHeight = 330;
        double reservoirLength = plan.topOff() == null
                ? 0
                : Math.max(60, plan.topOff().reservoir().in("m^3") * 1e9 / (reservoirHeight * 400));
        Sump sump = plan.sump();
        SumpPlace sumpPlace = sump == null ? null : sump(sump, display, reservoirLength);
        double ground = sumpPlace == null ? 0 : ground(sumpPlace.tank());
        Area reservoir = sumpPlace == null || plan.topOff() == null
                ? null
                : reservoir(reservoirLength, reservoirHeight, sumpPlace, display, ground);
        Tank refugium = plan.refugium() == null ? null : refugium(plan.refugium(), display, box, sumpPlace);
        return new SectionLayout(plan, display, box, sumpPlace, refugium, reservoir, ground);
    }

    /** The finished floor, or a cellar's where the sump stands below it. */
    private static double ground(Tank sump) {
        double glass = sump.outside().bottom();
        return sump.inside().bottom() < 0 ? glass - 20 : Math.min(0, glass);
    }

    private static Box box(Overflow overflow, Tank display) {
        Overflow.Box box = overflow.box();
        double wall = mm(box.wall());
        double bottom = display.inside().bottom() + (box.bottom() == null ? 0 : mm(box.bottom()));
        double height = display.inside().bottom() + mm(overflow.crest()) - bottom;
        double end = display.inside().right();
        if (overflow.outerBox() != null) {
            // Hung over a pane: seen along it, so the box shows its width.
            double width = mm(box.width());
            Area inner = new Area(end - width + wall, bottom, width - 2 * wall, height);
            double outerLeft = end + display.pane() + 4 + wall;
            Area outer = new Area(
                    outerLeft,
                    bottom,
                    mm(overflow.outerBox().width()),
                    display.inside().top() - bottom);
            return new Box(inner, wall, outer);
        }
        // A box along a whole pane is drawn end on, or it would hide the display.
        double across = mm(box.length()) <= 0.4 * display.inside().width() ? mm(box.length()) : mm(box.width());
        across = Math.min(across, 0.6 * display.inside().width());
        return new Box(new Area(end - across + wall, bottom, across - wall, height), wall, null);
    }

    private static SumpPlace sump(Sump sump, Tank display, double reservoirLength) {
        double baffle = mm(sump.baffleThickness());
        double pane = mm(sump.glass().panes());
        double length = baffle * (sump.sections().size() - 1);
        for (Sump.Section section : sump.sections()) {
            length += mm(section.length());
        }
        double bottom = mm(sump.bottomHeight());
        double height = mm(sump.height());
        boolean under = display.outside().bottom() - bottom - height >= HEADROOM;
        double left;
        if (under) {
            double free = display.inside().width() - 2 * POST;
            double beside =
                    reservoirLength == 0 || reservoirLength + 50 + length + 2 * pane > free ? 0 : reservoirLength + 50;
            double slack = free - beside - length - 2 * pane;
            left = slack >= 0
                    ? POST + 0.35 * slack + beside + pane
                    : (display.inside().width() - length) / 2;
        } else {
            left = display.outside().left() - 2 * RISER - pane - length;
        }
        Tank tank = new Tank(
                new Area(left, bottom, length, height), pane, mm(sump.glass().bottom()));

        List<SectionPlace> sections = new ArrayList<>();
        List<BafflePlace> baffles = new ArrayList<>();
        double right = tank.inside().right();
        for (Sump.Section section : sump.sections()) {
            double width = mm(section.length());
            sections.add(new SectionPlace(section.name(), new Area(right - width, bottom, width, height)));
            right -= width;
            if (section.baffle() != null) {
                baffles.add(baffle(section.baffle(), new Area(right - baffle, bottom, baffle, height)));
                right -= baffle;
            }
        }
        return new SumpPlace(tank, under, sections, baffles);
    }

    private static BafflePlace baffle(Sump.Baffle baffle, Area whole) {
        if (baffle.over() != null) {
            return new BafflePlace(new Area(whole.left(), whole.bottom(), whole.width(), mm(baffle.over())), true);
        }
        double gap = baffle.under() == null ? 0 : mm(baffle.under());
        double upTo = Math.max(gap + 1, whole.height() - 25);
        return new BafflePlace(new Area(whole.left(), whole.bottom() + gap, whole.width(), upTo - gap), false);
    }

    private static Area reservoir(double length, double height, SumpPlace sump, Tank display, double ground) {
        Area sumpGlass = sump.tank().outside();
        double bottom = ground + 20;
        double tallest = display.outside().bottom() - bottom - 40;
        if (sump.underDisplay()) {
            double beside = sumpGlass.left() - 50 - length;
            if (beside >= POST - 1 && height <= tallest) {
                return new Area(beside, bottom, length, height);
            }
            double outside = Math.min(sumpGlass.left(), display.outside().left() - 2 * RISER) - 50 - length;
            return new Area(outside, bottom, length, height);
        }
        return new Area(sumpGlass.left() - 50 - length, bottom, length, height);
    }

    private static Tank refugium(Refugium refugium, Tank display, @Nullable Box box, @Nullable SumpPlace sump) {
        double pane = mm(refugium.glass().panes());
        double beside = display.outside().right();
        if (box != null && box.outer() != null) {
            beside = Math.max(beside, box.outer().right() + box.wall());
        }
        if (sump != null) {
            beside = Math.max(beside, sump.tank().outside().right());
        }
        return new Tank(
                new Area(
                        beside + 110 + pane, mm(refugium.bottomHeight()), mm(refugium.length()), mm(refugium.height())),
                pane,
                mm(refugium.glass().bottom()));
    }

    /** Where the return's riser stands, left of the display. */
    double riserX() {
        return display.outside().left() - RISER;
    }

    /** Height of the return where it crosses the display's rim. */
    double overRim() {
        return display.inside().top() + 48;
    }

    /** Underside of what carries the display: pipes run below it. */
    double ceiling() {
        return display.outside().bottom() - railHeight();
    }

    /** Height of the rail that carries the display. */
    double railHeight() {
        return Math.max(0, Math.min(56, 0.08 * display.outside().bottom()));
    }

    /** The vessels with their glass, none of which may overlap another. */
    public List<Area> vessels() {
        List<Area> all = new ArrayList<>();
        all.add(display.outside());
        if (sump != null) {
            all.add(sump.tank().outside());
        }
        if (refugium != null) {
            all.add(refugium.outside());
        }
        if (reservoir != null) {
            all.add(reservoir);
        }
        if (box != null && box.outer() != null) {
            all.add(box.outer().around(box.wall(), box.wall()));
        }
        return all;
    }
}
