package org.tidewright.plan.model;

import java.util.ArrayList;
import java.util.List;

/** The names a plan gives, by which its parts refer to one another. */
public final class Names {
    /** The display's name in a plan. */
    public static final String DISPLAY = "display";

    /** The return pump's name in a plan. */
    public static final String RETURN_PUMP = "return pump";

    private Names() {}

    /** Display and refugium. */
    public static List<String> vessels(Plan plan) {
        List<String> names = new ArrayList<>(List.of(DISPLAY));
        if (plan.refugium() != null) {
            names.add(plan.refugium().name());
        }
        return names;
    }

    /** The sump's sections, in the order of the flow. */
    public static List<String> sections(Plan plan) {
        return plan.sump() == null
                ? List.of()
                : plan.sump().sections().stream().map(Sump.Section::name).toList();
    }

    /** Everything a device can stand in. */
    public static List<String> places(Plan plan) {
        List<String> names = new ArrayList<>(vessels(plan));
        names.addAll(sections(plan));
        return names;
    }

    /** Everything that draws power. */
    public static List<String> devices(Plan plan) {
        List<String> names = new ArrayList<>();
        if (plan.returnLine() != null) {
            names.add(RETURN_PUMP);
        }
        plan.gear().forEach(device -> names.add(device.name()));
        plan.heaters().forEach(device -> names.add(device.name()));
        plan.chillers().forEach(device -> names.add(device.name()));
        plan.fans().forEach(device -> names.add(device.name()));
        plan.lights().forEach(device -> names.add(device.name()));
        plan.circulationPumps().forEach(device -> names.add(device.name()));
        plan.airPumps().forEach(device -> names.add(device.name()));
        return names;
    }
}
