package org.tidewright.web.drawing;

import static org.tidewright.web.drawing.Area.mm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;

/** Places side by side for what stands in one section of the sump or ends there. */
final class SectionSlots {
    /** What may stand in a section, in the order from left to right. */
    enum Kind {
        PUMP,
        GEAR,
        HEATER,
        DRAIN,
        REFUGIUM_OVERFLOW
    }

    /** A place: its middle and the width the thing may take there. */
    record Slot(double middle, double width) {}

    private record Item(Kind kind, String name, double width) {}

    /** Pixels kept free at the left for the level mark with its number, and without. */
    private static final double NUMBERED_MARK = 46;

    private static final double BARE_MARK = 17;

    /** Width a pump's pipe takes where it passes the rim. */
    private static final double PIPE = 44;

    private final double pixel;
    private final Map<String, Slot> slots = new HashMap<>();
    private final Set<String> crowded = new HashSet<>();

    private SectionSlots(double pixel) {
        this.pixel = pixel;
    }

    /**
     * Finds the places.
     *
     * @param pixel millimetres per pixel, for the marks' numbers
     */
    static SectionSlots of(SectionLayout layout, double pixel) {
        SectionSlots made = new SectionSlots(pixel);
        if (layout.sump() != null) {
            for (SectionLayout.SectionPlace section : layout.sump().sections()) {
                made.fill(section, items(layout, section.name()));
            }
        }
        return made;
    }

    Slot of(Kind kind, String name) {
        Slot slot = slots.get(kind + name);
        if (slot == null) {
            throw new IllegalStateException("no place for " + kind + " " + name);
        }
        return slot;
    }

    /** Whether a section has no room for a number beside its level mark. */
    boolean isCrowded(String section) {
        return crowded.contains(section);
    }

    /** What reaches over the sump's rim, from left to right. */
    List<Slot> passingTheRim() {
        return slots.entrySet().stream()
                .filter(slot -> !slot.getKey().startsWith(Kind.HEATER.name()))
                .filter(slot -> !slot.getKey().startsWith(Kind.GEAR.name()) || isSkimmer(slot.getKey()))
                .map(slot -> slot.getKey().startsWith(Kind.PUMP.name())
                        ? new Slot(slot.getValue().middle(), PIPE)
                        : slot.getValue())
                .sorted(Comparator.comparingDouble(Slot::middle))
                .toList();
    }

    boolean has(Kind kind, String name) {
        return slots.containsKey(kind + name);
    }

    private static List<Item> items(SectionLayout layout, String section) {
        Plan plan = layout.plan();
        List<Item> items = new ArrayList<>();
        if (layout.sump() != null && section.equals(layout.sump().last().name())) {
            items.add(new Item(Kind.PUMP, "", 92));
        }
        for (Gear gear : plan.gear()) {
            if (gear.standsIn().equals(section)) {
                items.add(new Item(Kind.GEAR, gear.name(), isSkimmer(gear.name()) ? 164 : 84));
            }
        }
        for (Heater heater : plan.heaters()) {
            if (heater.standsIn().equals(section)) {
                items.add(new Item(Kind.HEATER, heater.name(), 32));
            }
        }
        if (plan.overflow() != null && layout.sump() != null) {
            String first = layout.sump().sections().get(0).name();
            for (Overflow.Drain drain : plan.overflow().drains()) {
                if (section.equals(drain.into() == null ? first : drain.into())) {
                    items.add(new Item(
                            Kind.DRAIN,
                            drain.name(),
                            PipeRoutes.outside(mm(drain.pipe().bore())) + 12));
                }
            }
        }
        if (plan.refugium() != null && plan.refugium().into().equals(section)) {
            items.add(new Item(Kind.REFUGIUM_OVERFLOW, "", 40));
        }
        return items;
    }

    /** Whether a device is drawn with a neck and a cup; its name is all the plan says. */
    static boolean isSkimmer(String name) {
        return name.toLowerCase(Locale.ROOT).contains("skimmer");
    }

    private void fill(SectionLayout.SectionPlace section, List<Item> items) {
        if (items.isEmpty()) {
            return;
        }
        double wanted = items.stream().mapToDouble(Item::width).sum();
        double mark = NUMBERED_MARK * pixel;
        if (0.92 * (section.inside().width() - mark - 8) < wanted) {
            crowded.add(section.name());
            mark = Math.min(BARE_MARK * pixel, 0.25 * section.inside().width());
        }
        double free = section.inside().width() - mark - 8;
        double scale = Math.min(1, 0.92 * free / wanted);
        double gap = (free - scale * wanted) / (items.size() + 1);
        double left = section.inside().left() + mark + gap;
        for (Item item : items) {
            double width = scale * item.width();
            slots.put(item.kind() + item.name(), new Slot(left + width / 2, width));
            left += width + gap;
        }
    }
}
