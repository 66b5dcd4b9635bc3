package org.tidewright.twin.system;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.mechanism.gas.UnnamedBreath;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.Water;

/**
 * A plan that names no animals has some all the same. What they eat and what their corals make by day nobody can tell, so
 * a forecast leaves them out; in the hours of an outage a rule of thumb says how much they breathe. Rock and sand, which
 * the plan does name, breathe besides.
 */
final class UnnamedAnimals {
    /** Of a tank with everything in it, 0.5 mg/L per hour; 0.2 lightly to 1 or 2 densely stocked; from memory. */
    private static final double OF_A_TANK = 0.5e-3 / MolarMass.OXYGEN / 3600;

    private UnnamedAnimals() {}

    /** Adds their breath and gives the setting that counts it. */
    static Setting add(Network.Builder builder, World world, Basins basins, Water water) {
        Parameter factor = builder.parameter(
                "breathing of the display, factor",
                "1",
                1,
                0.4,
                2.4,
                Basis.FROM_MEMORY,
                "0.5 mg/L per hour, 0.2 lightly to 1–2 densely stocked; the plan names no animals");
        Setting counted = builder.setting("unnamed animals breathe", 0);
        builder.add(new UnnamedBreath(
                basins.display().body(),
                world.life(),
                OF_A_TANK * basins.display().volume(),
                factor,
                water.temperature(),
                water.saturation(),
                counted));
        return counted;
    }
}
