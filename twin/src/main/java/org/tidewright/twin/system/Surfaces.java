package org.tidewright.twin.system;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.gas.Stirring;
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
    private final Parameter stillActivity;
    private final Parameter movedActivity;
    private final Parameter still;
    private final Parameter stirred;
    private @Nullable Parameter lid;

    /** What is not known of one water is not known of the others: each number is drawn once for all of them. */
    Surfaces(Network.Builder builder, World world, Surroundings room, Water water) {
        this.builder = builder;
        this.world = world;
        this.room = room;
        usualSchmidt = SchmidtNumber.ofOxygen(water.temperature());
        stillActivity = builder.parameter(
                "evaporation, activity of still surfaces",
                "1",
                0.5,
                0.4,
                0.7,
                Basis.PUBLISHED,
                "still pools: 0.50–0.57 over 477 unoccupied hours (E3S Web Conf. 2022), 0.74 (Smith, Löf and Jones 1998)");
        movedActivity = builder.parameter(
                "evaporation, activity of moved surfaces",
                "1",
                0.7,
                0.5,
                1.0,
                Basis.COMMON_PRACTICE,
                "rippled by an overflow 0.7, strongly moved 1.0");
        still = builder.parameter(
                "gases through still surfaces",
                "m/s",
                1.2 * CENTIMETRE_PER_HOUR,
                0.5 * CENTIMETRE_PER_HOUR,
                3 * CENTIMETRE_PER_HOUR,
                Basis.FROM_MEMORY,
                "0.5–4 cm/h with the pumps off; low-wind lakes 1.5–3.1 cm/h (Cole et al. 2010)");
        stirred = builder.parameter(
                "gases through moved surfaces, all pumps on",
                "m/s",
                12 * CENTIMETRE_PER_HOUR,
                6 * CENTIMETRE_PER_HOUR,
                25 * CENTIMETRE_PER_HOUR,
                Basis.FROM_MEMORY,
                "visibly rippled 1–3 m a day, strongly stirred 3–8; weak");
    }

    void add(Basins.Basin basin, Cover cover, AirAbove.Breeze breeze, Stirring stirring) {
        Body water = basin.body();
        if (cover.letsAirPass()) {
            AirAbove air = AirAbove.of(room.air(), breeze);
            builder.add(new OpenSurface(
                    water, room.fabric(), air, basin.surface(), stillActivity, movedActivity, stirring));
        } else {
            builder.add(new CoveredSurface(water, room.fabric(), basin.surface()));
        }
        builder.add(new SurfaceGases(
                water,
                world.oxygenInAir(),
                AirOver.of(room.air()),
                basin.surface(),
                usualSchmidt,
                still,
                stirred,
                cover.letsAirPass() ? null : pastALid(),
                stirring));
    }

    private Parameter pastALid() {
        if (lid == null) {
            lid = builder.parameter(
                    "gases past a lid, factor",
                    "1",
                    0.7,
                    0.4,
                    1,
                    Basis.FROM_MEMORY,
                    "a lid keeps the air under it from changing");
        }
        return lid;
    }
}
