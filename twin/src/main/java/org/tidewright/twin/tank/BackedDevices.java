package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.mechanism.gas.AirStone;
import org.tidewright.twin.mechanism.heat.DeviceHeat;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;

/** The plan's devices while the mains are off: each runs as long as a battery or generator feeds it. */
final class BackedDevices {
    private final Plan plan;
    private final Water water;
    private final Network.Builder builder;
    private final PowerSupplies supplies;
    private final Body room;
    private final Body air;

    BackedDevices(Plan plan, Water water, Network.Builder builder, PowerSupplies supplies, Body room, Body air) {
        this.plan = plan;
        this.water = water;
        this.builder = builder;
        this.supplies = supplies;
        this.room = room;
        this.air = air;
    }

    /** Pumps whose running moves a body's surface; the return pump moves all that it feeds. */
    List<Supply> stirrersOf(String place) {
        List<Supply> stirrers = new ArrayList<>();
        for (CirculationPump pump : plan.circulationPumps()) {
            if (bodyNameOf(pump.standsIn()).equals(place)) {
                stirrers.add(supplies.of(pump.name()));
            }
        }
        for (AirPump pump : plan.airPumps()) {
            if (bodyNameOf(pump.standsIn()).equals(place)) {
                stirrers.add(supplies.of(pump.name()));
            }
        }
        if (plan.hasSump()) {
            stirrers.add(supplies.of(Names.RETURN_PUMP));
        }
        return stirrers;
    }

    private String bodyNameOf(String place) {
        return Names.sections(plan).contains(place) ? Vessels.SUMP : place;
    }

    private Body bodyOf(String place, Map<String, Body> bodies) {
        return requireNonNull(bodies.get(bodyNameOf(place)), place);
    }

    /**
     * Adds every device.
     *
     * @param bodies by name: the display, the sump, the refugium
     */
    void add(Map<String, Body> bodies) {
        for (Heater heater : plan.heaters()) {
            heater(heater, bodies);
        }
        for (CirculationPump pump : plan.circulationPumps()) {
            submerged(bodyOf(pump.standsIn(), bodies), pump.power().in("W"), supplies.of(pump.name()));
        }
        if (plan.returnLine() != null) {
            builder.add(new DeviceHeat(
                    bodyOf(Vessels.SUMP, bodies),
                    room,
                    plan.returnLine().pump().power().in("W"),
                    1,
                    supplies.of(Names.RETURN_PUMP)));
        }
        plan.gear().forEach(gear -> {
            if (gear.power() != null) {
                submerged(bodyOf(gear.standsIn(), bodies), gear.power().in("W"), supplies.of(gear.name()));
            }
        });
        plan.lights().forEach(light -> {
            double share =
                    light.heatToWater() == null ? 0.45 : light.heatToWater().in("1");
            Supply supply = supplies.of(light.name());
            builder.add(new DeviceHeat(
                    bodyOf(light.over(), bodies), room, light.power().in("W"), share, supply));
        });
        for (AirPump pump : plan.airPumps()) {
            airPump(pump, bodies);
        }
        supplies.generatorLoad(plan);
    }

    private void submerged(Body body, double power, Supply supply) {
        builder.add(new DeviceHeat(body, room, power, 1, supply));
    }

    private void heater(Heater heater, Map<String, Body> bodies) {
        double setpoint = heater.setpoint().in("degC");
        double band = heater.band() == null ? 0.3 : heater.band().in("K");
        Setting heating =
                builder.setting(heater.name() + " thermostat calls", water.temperature() < setpoint - band / 2 ? 1 : 0);
        builder.add(new org.tidewright.twin.mechanism.heat.Heater(
                heater.name(),
                bodyOf(heater.standsIn(), bodies),
                room,
                heater.power().in("W"),
                setpoint,
                band,
                supplies.of(heater.name()),
                heating));
    }

    private void airPump(AirPump pump, Map<String, Body> bodies) {
        Supply supply = supplies.of(pump.name());
        Parameter efficiency = builder.parameter(
                "oxygen off the bubbles of the " + pump.name(),
                "1/m",
                0.04,
                0.02,
                0.06,
                Basis.FROM_MEMORY,
                "2–4 % per metre of depth off coarse stones, 4–8 % off fine ones");
        builder.add(new AirStone(
                bodyOf(pump.standsIn(), bodies),
                air,
                pump.airFlow().in("m^3/s"),
                pump.depth().in("m"),
                efficiency,
                supply));
        builder.add(new DeviceHeat(
                bodyOf(pump.standsIn(), bodies), room, pump.power().in("W"), 0, supply));
    }
}
