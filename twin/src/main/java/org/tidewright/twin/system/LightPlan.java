package org.tidewright.twin.system;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.mechanism.heat.LampHeat;
import org.tidewright.twin.mechanism.light.Lamp;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;

/** The plan's lights: their clocks, what they shine on, the heat they leave. */
final class LightPlan {
    private static final double DAY = 86_400;
    private static final double MID_LIGHT = 14 * 3600;

    /** Share of a light's power that ends in the water where the plan does not say: 0.3 to 0.6; common practice. */
    private static final double TO_WATER = 0.45;

    /** Light of a fixture per power, µmol/J: blue-heavy reef lights 1.5–2.3; from memory. */
    private static final double EFFICACY = 1.9e-6;

    /** Share of it that reaches the animals, past surface, panes and water; common practice 0.5–0.8. */
    private static final double REACHES = 0.6;

    private final Map<String, List<Lamp>> byPlace = new LinkedHashMap<>();

    LightPlan(
            Plan plan,
            Network.Builder builder,
            Stated stated,
            Levers levers,
            PowerSupplies supplies,
            Basins basins,
            Body room) {
        for (Light light : plan.lights()) {
            Lamp lamp = lamp(light, stated, levers, supplies, surfaceOf(light.over(), basins, plan));
            byPlace.computeIfAbsent(light.over(), place -> new ArrayList<>()).add(lamp);
            builder.add(lamp.corners());
            double toWater =
                    light.heatToWater() == null ? TO_WATER : light.heatToWater().in("1");
            builder.add(new LampHeat(
                    lamp,
                    basins.holding(light.over(), plan),
                    room,
                    light.power().in("W"),
                    toWater));
        }
    }

    /** Water a lamp shines on: all of a vessel, of a sump the section it hangs over. */
    private static @Unit("m^2") double surfaceOf(String place, Basins basins, Plan plan) {
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                if (section.name().equals(place)) {
                    return section.length().in("m") * plan.sump().width().in("m");
                }
            }
        }
        Body body = basins.holding(place, plan);
        return basins.all().stream()
                .filter(basin -> basin.body() == body)
                .mapToDouble(Basins.Basin::surface)
                .findFirst()
                .orElseThrow();
    }

    /** Time of day it comes on; where the plan does not say, the middle of its hours is at two in the afternoon. */
    static @Unit("s") double startOf(Light light) {
        return light.starts() == null
                ? (MID_LIGHT - light.daily().in("s") / 2 + DAY) % DAY
                : light.starts().toSecondOfDay();
    }

    /** Light a lamp gives by its power alone, on the mean of what grows below. */
    private static @Unit("mol/(m^2*s)") double byPower(Light light, @Unit("m^2") double surface) {
        return light.power().in("W") * EFFICACY * REACHES / surface;
    }

    /** What it gives at full power on the mean of what grows below, as stated or by its power. */
    static @Unit("mol/(m^2*s)") double usual(Light light, @Unit("m^2") double surface) {
        return light.par() == null ? byPower(light, surface) : light.par().in("mol/(m^2*s)");
    }

    private static Lamp lamp(Light light, Stated stated, Levers levers, PowerSupplies supplies, double surface) {
        double daily = light.daily().in("s");
        double starts = startOf(light);
        Drawn full = stated.or(
                light.name() + ", light on what grows below",
                light.par(),
                "mol/(m^2*s)",
                Drawn.exactly(byPower(light, surface)));
        double ramp = light.ramp() == null ? 0 : light.ramp().in("s");
        return new Lamp(
                light.name(),
                levers.amount(light.name() + " start", "time after midnight it comes on", "s", starts),
                levers.amount(light.name() + " hours", "how long it shines", "s", daily),
                levers.factor(light.name() + " strength", "its light and power"),
                ramp,
                full,
                supplies.of(light.name()));
    }

    /** The lamps over a vessel. */
    Lamps over(String place) {
        return new Lamps(byPlace.getOrDefault(place, List.of()));
    }
}
