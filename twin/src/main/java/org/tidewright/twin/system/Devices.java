package org.tidewright.twin.system;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.CirculationPump;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.law.gas.WeirAeration;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.gas.BubbleGases;
import org.tidewright.twin.mechanism.gas.FallGases;
import org.tidewright.twin.mechanism.gas.Stirrer;
import org.tidewright.twin.mechanism.gas.Stirring;
import org.tidewright.twin.mechanism.heat.AirAbove;
import org.tidewright.twin.mechanism.heat.Chiller;
import org.tidewright.twin.mechanism.heat.DeviceHeat;
import org.tidewright.twin.mechanism.heat.Fan;
import org.tidewright.twin.mechanism.heat.HeldHeater;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.mechanism.water.StreamPump;
import org.tidewright.twin.mechanism.water.WaveProgramme;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;
import org.tidewright.twin.tank.Vessels;

/** Pumps, heaters, air stones and what else draws power, with the heat they leave and the gases they exchange. */
final class Devices {
    /** Band of a thermostat where the plan does not say; common practice. */
    private static final double USUAL_BAND = 0.3;

    /** Colder than any water: a fan without a thermostat runs all the time. */
    private static final double ALWAYS = -100;

    /** Share of a circulation pump's power that sets water in motion, 0.15 to 0.35; from memory. */
    private static final double INTO_MOTION = 0.25;

    /** Of seawater, as near as a jet's power is known. */
    private static final double DENSITY = 1023;

    /** W; so that a surface stirred by the return alone is stirred. */
    private static final double LEAST_JET = 1e-3;

    private final Plan plan;
    private final Network.Builder builder;
    private final World world;
    private final PowerSupplies supplies;
    private final Basins basins;
    private final Surroundings room;
    private final Map<String, WaveProgramme> programmes = new HashMap<>();
    private final Map<String, List<Fan>> fans = new HashMap<>();

    Devices(
            Plan plan,
            Network.Builder builder,
            Levers levers,
            World world,
            PowerSupplies supplies,
            Basins basins,
            Surroundings room) {
        this.plan = plan;
        this.builder = builder;
        this.world = world;
        this.supplies = supplies;
        this.basins = basins;
        this.room = room;
        plan.heaters().forEach(this::heater);
        for (CirculationPump pump : plan.circulationPumps()) {
            stream(pump, levers);
        }
        for (Gear gear : plan.gear()) {
            if (gear.power() != null) {
                submerged(gear.standsIn(), gear.power().in("W"), supplies.of(gear.name()));
            }
        }
        plan.airPumps().forEach(this::airPump);
        plan.chillers().forEach(this::chiller);
        plan.fans().forEach(this::fan);
        returnPump();
        supplies.generatorLoad(plan);
    }

    private void submerged(String place, double power, Supply supply) {
        builder.add(new DeviceHeat(basins.holding(place, plan), room.fabric(), power, 1, supply));
    }

    private void stream(CirculationPump pump, Levers levers) {
        WaveProgramme programme = new WaveProgramme(
                levers.factor(pump.name() + " speed", "its speed, by the plan's programme"),
                pump.programme().stream()
                        .map(part -> new WaveProgramme.Part(
                                part.from().toSecondOfDay(),
                                part.daily().in("s"),
                                part.speed().in("1"),
                                part.running() == null ? 1 : part.running().in("1")))
                        .toList());
        programmes.put(pump.name(), programme);
        if (!pump.programme().isEmpty()) {
            builder.add(programme.jumps(pump.name()));
        }
        builder.add(new StreamPump(
                basins.holding(pump.standsIn(), plan),
                room.fabric(),
                pump.power().in("W"),
                programme,
                supplies.of(pump.name())));
    }

    private void heater(Heater heater) {
        builder.add(new HeldHeater(
                heater.name(),
                basins.holding(heater.standsIn(), plan),
                room.fabric(),
                heater.power().in("W"),
                heater.setpoint().in("degC"),
                heater.band() == null ? USUAL_BAND : heater.band().in("K"),
                supplies.of(heater.name())));
    }

    private void airPump(AirPump pump) {
        Parameter efficiency = builder.parameter(
                "oxygen off the bubbles of the " + pump.name(),
                "1/m",
                0.04,
                0.02,
                0.06,
                Basis.FROM_MEMORY,
                "2–4 % per metre of depth off coarse stones, 4–8 % off fine ones");
        Body water = basins.holding(pump.standsIn(), plan);
        Supply supply = supplies.of(pump.name());
        builder.add(new BubbleGases(
                water,
                world.oxygenInAir(),
                AirOver.of(room.air()),
                pump.airFlow().in("m^3/s"),
                pump.depth().in("m"),
                Double.POSITIVE_INFINITY,
                efficiency,
                supply));
        builder.add(new DeviceHeat(water, room.fabric(), pump.power().in("W"), 0, supply));
    }

    private void returnPump() {
        if (plan.returnLine() == null || plan.overflow() == null) {
            return;
        }
        Supply supply = supplies.of(Names.RETURN_PUMP);
        submerged(Vessels.SUMP, plan.returnLine().pump().power().in("W"), supply);
        double box = plan.overflow().box().bottom() == null
                ? 0
                : plan.overflow().box().bottom().in("m");
        double fall = Math.max(
                0, basins.running().displayLevel() - box - basins.running().boxLevel());
        Parameter form = builder.parameter(
                "gases at the overflow, form of the fall",
                "1",
                WeirAeration.ALONG_A_WALL,
                0.3,
                1,
                Basis.FROM_MEMORY,
                "a free fall 1, along a wall 0.6–0.8");
        builder.add(new FallGases(
                basins.display().body(),
                world.oxygenInAir(),
                AirOver.of(room.air()),
                basins.running().displayFlow(),
                fall,
                form,
                supply));
    }

    /** Pumps whose running moves a vessel's surface, by streams or bubbles; the return pump moves all that it feeds. */
    Stirring stirring(String place) {
        List<Stirrer> stirrers = new ArrayList<>();
        for (CirculationPump pump : plan.circulationPumps()) {
            if (nameOf(pump.standsIn()).equals(place)) {
                stirrers.add(new Stirrer(
                        supplies.of(pump.name()), INTO_MOTION * pump.power().in("W"), programmes.get(pump.name())));
            }
        }
        for (AirPump pump : plan.airPumps()) {
            if (nameOf(pump.standsIn()).equals(place)) {
                stirrers.add(new Stirrer(supplies.of(pump.name()), lift(pump), null));
            }
        }
        if (plan.hasSump()) {
            stirrers.add(new Stirrer(supplies.of(Names.RETURN_PUMP), jet(), null));
        }
        return new Stirring(stirrers);
    }

    /** Power of rising bubbles, rho g Q h. */
    private static double lift(AirPump pump) {
        return DENSITY
                * Gravity.STANDARD
                * pump.airFlow().in("m^3/s")
                * pump.depth().in("m");
    }

    /** Power of the jets into the display, rho Q v^2/2; where nothing else stirs it, as in a sump, its size means nothing. */
    private double jet() {
        double mouths = requireNonNull(plan.returnLine()).outlets().stream()
                .mapToDouble(outlet -> Math.PI / 4 * Math.pow(outlet.bore().in("m"), 2))
                .sum();
        double flow = basins.running().displayFlow();
        return Math.max(LEAST_JET, DENSITY * Math.pow(flow, 3) / (mouths * mouths) / 2);
    }

    private void chiller(org.tidewright.plan.model.Chiller chiller) {
        builder.add(new Chiller(
                chiller.name(),
                basins.holding(chiller.standsIn(), plan),
                room.fabric(),
                chiller.cooling().in("W"),
                chiller.power().in("W"),
                chiller.setpoint().in("degC"),
                chiller.band() == null ? USUAL_BAND : chiller.band().in("K"),
                supplies.of(chiller.name())));
    }

    private void fan(org.tidewright.plan.model.Fan described) {
        Fan fan = new Fan(
                described.name(),
                basins.holding(described.over(), plan),
                room.fabric(),
                described.airSpeed().in("m/s"),
                described.power().in("W"),
                described.setpoint() == null ? ALWAYS : described.setpoint().in("degC"),
                described.band() == null ? USUAL_BAND : described.band().in("K"),
                supplies.of(described.name()));
        builder.add(fan);
        fans.computeIfAbsent(nameOf(described.over()), place -> new ArrayList<>())
                .add(fan);
    }

    /** The fans over a vessel, the strongest at a time. */
    AirAbove.Breeze breezeOver(String place) {
        List<Fan> over = fans.getOrDefault(place, List.of());
        return now -> {
            double speed = 0;
            for (Fan fan : over) {
                speed = Math.max(speed, fan.speed(now));
            }
            return speed;
        };
    }

    private String nameOf(String place) {
        return Names.sections(plan).contains(place) ? Vessels.SUMP : place;
    }
}
