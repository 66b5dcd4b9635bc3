package org.tidewright.twin.law.heat;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/** Evaporation into still air by the analogy of heat and mass transfer: vapour leaves as heat would. */
public final class MassTransferEvaporation {
    /** Diffusivity of water vapour in air near 25 degC; from memory. */
    private static final double VAPOUR_DIFFUSIVITY = 2.5e-5; // m^2/s

    private MassTransferEvaporation() {}

    /**
     * Water that leaves a level surface into still air; negative when it condenses.
     *
     * <pre>
     * E = h_m (rho_v,w - rho_v,a),  h_m = Sh D / L
     * Sh = 0.54 (Gr Sc)^(1/4) or 0.14 (Gr Sc)^(1/3), the greater
     * Gr = g (rho_a - rho_w) / rho_mean L^3 / nu^2,  Sc = nu / D
     * </pre>
     *
     * rho is the density of the moist air, rho_v of the vapour in it. When the air over the water is the heavier it
     * lies still in layers; the film then is that of half the transfer, as for heat (0.27 for 0.54).
     *
     * @param water temperature of the surface, ITS-90
     * @param waterVapourPressure saturation over the seawater
     * @param room temperature of the air, ITS-90
     * @param airVapourPressure partial pressure of vapour in the room
     * @param pressure total pressure of the air
     * @param length area of the surface over its perimeter
     * @return mass per area and time
     * @source analogy of heat and mass transfer with McAdams's plate, {@link NaturalConvection#nusseltOfStirringPlate}
     * @validity Gr Sc 1e4 to 1e11; still air
     */
    @Unit("kg/(m^2*s)")
    public static double massFlux(
            @Unit("degC") double water,
            @Unit("Pa") double waterVapourPressure,
            @Unit("degC") double room,
            @Unit("Pa") double airVapourPressure,
            @Unit("Pa") double pressure,
            @Unit("m") double length) {
        Bounds.within(length, "m", 0.001, 100, "area over perimeter of the surface");
        double overWater = density(water, waterVapourPressure, pressure);
        double inRoom = density(room, airVapourPressure, pressure);
        double lift = (inRoom - overWater) / ((inRoom + overWater) / 2);
        double viscosity = RoomAir.kinematicViscosity((water + room) / 2);
        double grashofSchmidt =
                Gravity.STANDARD * Math.abs(lift) * length * length * length / (viscosity * VAPOUR_DIFFUSIVITY);
        double sherwood = lift > 0
                ? NaturalConvection.nusseltOfStirringPlate(grashofSchmidt)
                : 0.27 * Math.pow(grashofSchmidt, 0.25);
        double vapourDifference =
                MoistAir.vapourDensity(water, waterVapourPressure) - MoistAir.vapourDensity(room, airVapourPressure);
        return sherwood * VAPOUR_DIFFUSIVITY / length * vapourDifference;
    }

    private static double density(double temperature, double vapourPressure, double pressure) {
        return MoistAir.dryAirDensity(temperature, vapourPressure, pressure)
                + MoistAir.vapourDensity(temperature, vapourPressure);
    }
}
