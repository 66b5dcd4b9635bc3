package org.tidewright.twin.tank;

import java.util.List;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.mechanism.gas.SurfaceOxygen;
import org.tidewright.twin.mechanism.heat.AirAbove;
import org.tidewright.twin.mechanism.heat.CoveredSurface;
import org.tidewright.twin.mechanism.heat.OpenSurface;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Network;

/** What passes between a body of water and the air over it: heat, vapour and oxygen, with or without a lid. */
final class WaterSurfaces {
    private final Network.Builder builder;
    private final Body room;
    private final Body air;
    private final double airVapourPressure;
    private final double usualSchmidt;

    WaterSurfaces(Plan plan, Water water, Network.Builder builder, Body room, Body air) {
        this.builder = builder;
        this.room = room;
        this.air = air;
        airVapourPressure = MoistAir.vapourPressure(
                plan.room().temperature().in("degC"), plan.room().humidity().in("1"));
        usualSchmidt = SchmidtNumber.ofOxygen(water.temperature());
    }

    void add(Body body, Cover cover, @Unit("m^2") double area, List<Supply> stirrers) {
        boolean open = cover == Cover.OPEN;
        if (open) {
            Parameter activity = builder.parameter(
                    "evaporation, activity of the surface of the " + body.name(),
                    "1",
                    0.5,
                    0.4,
                    0.7,
                    Basis.PUBLISHED,
                    "still pools: 0.50–0.57 over 477 unoccupied hours (E3S Web Conf. 2022), 0.74 (Smith, Löf and Jones 1998)");
            builder.add(new OpenSurface(body, room, AirAbove.shutIn(air, room, airVapourPressure), area, activity));
        } else {
            builder.add(new CoveredSurface(body, room, area));
        }
        Parameter still = builder.parameter(
                "oxygen through the still surface of the " + body.name(),
                "m/s",
                cmPerHour(1.2),
                cmPerHour(0.5),
                cmPerHour(3),
                Basis.FROM_MEMORY,
                "0.5–4 cm/h with the pumps off; low-wind lakes 1.5–3.1 cm/h (Cole et al. 2010)");
        Parameter stirred = builder.parameter(
                "oxygen through the stirred surface of the " + body.name(),
                "m/s",
                cmPerHour(6),
                cmPerHour(4),
                cmPerHour(10),
                Basis.FROM_MEMORY,
                "one small pump at the surface");
        Parameter covered = builder.parameter(
                "oxygen past the cover of the " + body.name() + ", factor",
                "1",
                open ? 1 : 0.7,
                open ? 1 : 0.4,
                1,
                Basis.FROM_MEMORY,
                open ? "nothing lies over it" : "a lid keeps the air under it from changing");
        builder.add(new SurfaceOxygen(body, air, area, usualSchmidt, still, stirred, covered, stirrers));
    }

    private static double cmPerHour(double velocity) {
        return velocity / 100 / 3600;
    }
}
