package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sand;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Shape;

/**
 * A plan's geometry in metres: every vessel with its shape, height and rim.
 *
 * @param display its water, without the overflow box
 * @param box the overflow box, null without an overflow
 * @param sections of the sump in the order of the flow; sections parted only by a baffle the water passes under are one
 * @param refugium null where there is none
 */
public record Vessels(
        Vessel display,
        @Nullable Vessel box,
        List<Section> sections,
        @Nullable Vessel refugium) {
    /** Name of the overflow box among the bodies. */
    public static final String OVERFLOW_BOX = "overflow box";

    /** Name of all sections of the sump taken as one. */
    public static final String SUMP = "sump";

    /** Density of the grains of rock and sand, kg/m³: between calcite 2710 and aragonite 2930; from memory. */
    static final double GRAIN_DENSITY = 2800;

    /** Water displaced by dry rock with air and closed pores in it, m³/kg: 0.36 to 0.5 L/kg; common practice. */
    static final double ROCK_DISPLACEMENT = 0.42e-3;

    /**
     * An open vessel.
     *
     * @param bottomHeight of its inside bottom above the finished floor
     * @param rimLevel of its rim above that bottom
     * @param length along the front
     * @param width front to back
     */
    public record Vessel(
            String name,
            Shape shape,
            @Unit("m") double bottomHeight,
            @Unit("m") double rimLevel,
            @Unit("m") double length,
            @Unit("m") double width) {
        /** Length of the rim all round. */
        public @Unit("m") double rimLength() {
            return 2 * (length + width);
        }
    }

    /**
     * A section of the sump.
     *
     * @param names of the plan's sections it is made of
     * @param baffleLevel the baffle at its end above the sump's bottom; infinite for the last section
     */
    public record Section(
            Vessel vessel, List<String> names, @Unit("m") double baffleLevel) {}

    /** The vessels of a plan. */
    public static Vessels of(Plan plan) {
        Overflow overflow = plan.overflow();
        return new Vessels(
                display(plan.display(), overflow),
                overflow == null ? null : box(plan.display(), overflow),
                plan.sump() == null ? List.of() : sections(plan, plan.sump()),
                plan.refugium() == null ? null : refugium(plan.refugium()));
    }

    /** The last section, in which the return pump stands. */
    public Section lastSection() {
        return sections.get(sections.size() - 1);
    }

    /** All sections as one vessel with the sump's outer walls; without what stands in them. */
    public Vessel wholeSump() {
        Vessel first = sections.get(0).vessel();
        double length = sections.stream()
                .mapToDouble(section -> section.vessel().length())
                .sum();
        Shape shape = Shape.upright(length * first.width(), 0, 0);
        return new Vessel(SUMP, shape, first.bottomHeight(), first.rimLevel(), length, first.width());
    }

    /** The section that bears a name of the plan. */
    public Section section(String name) {
        return sections.stream()
                .filter(section -> section.names().contains(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no section is called " + name));
    }

    private static Vessel display(Display display, @Nullable Overflow overflow) {
        double length = display.length().in("m");
        double width = display.width().in("m");
        double boxFootprint = 0;
        double waterUnderBox = 0;
        if (overflow != null) {
            Overflow.Box box = overflow.box();
            boxFootprint = box.length().in("m") * box.width().in("m");
            waterUnderBox =
                    box.bottom() == null ? 0 : boxFootprint * box.bottom().in("m");
        }
        double area = length * width - boxFootprint;
        double solids = rock(display.rock()) + sand(display.sand()) - waterUnderBox;
        double height = display.height().in("m");
        return new Vessel(
                Names.DISPLAY,
                Shape.upright(area, solids, solidsTop(display.rock(), overflow, height, solids / area)),
                display.bottomHeight().in("m"),
                height,
                length,
                width);
    }

    /** Height up to which the solids reach; where the plan does not say, below the lowest level that moves. */
    private static double solidsTop(
            @Nullable Rock rock, @Nullable Overflow overflow, double height, double solidsPerArea) {
        if (rock != null && rock.top() != null) {
            return rock.top().in("m");
        }
        double lowest = overflow == null ? height : overflow.crest().in("m");
        return Math.max(0.6 * lowest, Math.min(lowest, 1.5 * solidsPerArea));
    }

    private static Vessel box(Display display, Overflow overflow) {
        Overflow.Box box = overflow.box();
        double wall = box.wall().in("m");
        double length = box.length().in("m") - 2 * wall;
        double width = box.width().in("m") - wall;
        double bottom = box.bottom() == null ? 0 : box.bottom().in("m");
        Shape shape = overflow.outerBox() == null
                ? Shape.upright(length * width, 0, 0)
                : hungBox(overflow, length * width, bottom);
        return new Vessel(
                OVERFLOW_BOX,
                shape,
                display.bottomHeight().in("m") + bottom,
                display.height().in("m") - bottom,
                length,
                width);
    }

    /**
     * Siphon tubes hold both parts of a hung overflow at one level, so they move as one vessel, up to where the working
     * drain's mouth is under water. Above that the siphon is lost, and only the part inside the display fills.
     */
    private static Shape hungBox(Overflow overflow, @Unit("m^2") double innerArea, @Unit("m") double bottom) {
        Overflow.Drain working = overflow.drains().get(0);
        double sealed = working.inlet().in("m") + working.pipe().bore().in("m") - bottom;
        Overflow.OuterBox outer = requireNonNull(overflow.outerBox());
        return Shape.stepped(innerArea + outer.length().in("m") * outer.width().in("m"), sealed, innerArea);
    }

    private static List<Section> sections(Plan plan, Sump sump) {
        List<Section> sections = new ArrayList<>();
        List<String> names = new ArrayList<>();
        double length = 0;
        double solids = 0;
        for (Sump.Section part : sump.sections()) {
            names.add(part.name());
            length += part.length().in("m");
            solids += rock(part.rock()) + displacedBy(plan, part.name());
            boolean passesUnder = part.baffle() != null && part.baffle().under() != null;
            if (passesUnder) {
                length += sump.baffleThickness().in("m");
                continue;
            }
            double baffle = part.baffle() == null
                    ? Double.POSITIVE_INFINITY
                    : requireNonNull(part.baffle().over()).in("m");
            sections.add(section(sump, names, length, solids, baffle));
            names = new ArrayList<>();
            length = 0;
            solids = 0;
        }
        return List.copyOf(sections);
    }

    private static Section section(Sump sump, List<String> names, double length, double solids, double baffleLevel) {
        double width = sump.width().in("m");
        double height = sump.height().in("m");
        // Devices stand in the water up to about the baffle; above it the whole area is free.
        double solidsTop = Math.min(height, Math.max(0.5 * height, 1.5 * solids / (length * width)));
        Vessel vessel = new Vessel(
                String.join(" + ", names),
                Shape.upright(length * width, solids, solids == 0 ? 0 : solidsTop),
                sump.bottomHeight().in("m"),
                height,
                length,
                width);
        return new Section(vessel, List.copyOf(names), baffleLevel);
    }

    private static double displacedBy(Plan plan, String place) {
        return plan.gear().stream()
                .filter(gear -> gear.standsIn().equals(place) && gear.displaces() != null)
                .mapToDouble(gear -> requireNonNull(gear.displaces()).in("m^3"))
                .sum();
    }

    private static Vessel refugium(Refugium refugium) {
        double length = refugium.length().in("m");
        double width = refugium.width().in("m");
        double solids = rock(refugium.rock()) + sand(refugium.sand());
        double crest = refugium.crest().in("m");
        return new Vessel(
                refugium.name(),
                Shape.upright(length * width, solids, solids == 0 ? 0 : 0.8 * crest),
                refugium.bottomHeight().in("m"),
                refugium.height().in("m"),
                length,
                width);
    }

    static double rock(@Nullable Rock rock) {
        if (rock == null) {
            return 0;
        }
        double perMass =
                rock.displaces() == null ? ROCK_DISPLACEMENT : rock.displaces().in("m^3/kg");
        return rock.dryMass().in("kg") * perMass;
    }

    static double sand(@Nullable Sand sand) {
        return sand == null ? 0 : sand.dryMass().in("kg") / GRAIN_DENSITY;
    }
}
