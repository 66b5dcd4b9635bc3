package org.tidewright.twin.system;

import java.util.List;
import org.tidewright.plan.model.Cover;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.gas.Stirrer;
import org.tidewright.twin.mechanism.gas.SurfaceGases;
import org.tidewright.twin.mechanism.heat.AirAbove;
import org.tidewright.twin.mechanism.heat.CoveredSurface;
import org.tidewright.twin.mechanism.heat.OpenSurface;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.Water;

/** What passes between a water and the air over it: heat, vapour, oxygen and carbon dioxide, with or without a lid. */
final class Surfaces {
    private static final double CENTIMETRE_PER_HOUR = 0.01 / 3600;

    private final Network.Builder builder;
    private final World world;
    private final Surroundings room;
    private final double usualSchmidt;

    Surfaces(Network.Builder builder, World world, Surroundings room, Water water) {
        this.builder = builder;
        this.world = world;
        this.room = room;
        usualSchmidt = SchmidtNumber.ofOxygen(water.temperature());
    }

    void add(Basins.Basin basin, Cover cover, AirAbove.Breeze breeze, List<Stirrer> stirrers) {
        Body water = basin.body();
        boolean open = cover == Cover.OPEN;
        if (open) {
            Parameter activity = builder.parameter(
                    "evaporation, activity of the surface of the " + water.name(),
                    "1",
                    0.7,
                    0.5,
                    1.0,
                    Basis.COMMON_PRACTICE,
                    "rippled by an overflow 0.7, strongly moved 1.0; still pools 0.50–0.57 (E3S Web Conf. 2022)");
            AirAbove air = AirAbove.of(room.air(), breeze);
            builder.add(new OpenSurface(water, room.fabric(), air, basin.surface(), activity));
        } else {
            builder.add(new CoveredSurface(water, room.fabric(), basin.surface()));
        }
        Parameter still = builder.parameter(
                "gases through the still surface of the " + water.name(),
                "m/s",
                1.2 * CENTIMETRE_PER_HOUR,
                0.5 * CENTIMETRE_PER_HOUR,
                3 * CENTIMETRE_PER_HOUR,
                Basis.FROM_MEMORY,
                "0.5–4 cm/h with the pumps off; low-wind lakes 1.5–3.1 cm/h (Cole et al. 2010)");
        Parameter stirred = builder.parameter(
                "gases through the stirred surface of the " + water.name(),
                "m/s",
                12 * CENTIMETRE_PER_HOUR,
                6 * CENTIMETRE_PER_HOUR,
                25 * CENTIMETRE_PER_HOUR,
                Basis.FROM_MEMORY,
                "visibly rippled 1–3 m a day, strongly stirred 3–8; weak");
        Parameter covered = builder.parameter(
                "gases past the cover of the " + water.name() + ", factor",
                "1",
                open ? 1 : 0.7,
                open ? 1 : 0.4,
                1,
                Basis.FROM_MEMORY,
                open ? "nothing lies over it" : "a lid keeps the air under it from changing");
        builder.add(new SurfaceGases(
                water,
                world.oxygenInAir(),
                AirOver.of(room.air()),
                basin.surface(),
                usualSchmidt,
                still,
                stirred,
                covered,
                stirrers));
    }
}
