package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.heat.CarrierEvaporation;
import org.tidewright.twin.law.heat.Radiation;
import org.tidewright.twin.law.heat.SurfaceConvection;
import org.tidewright.twin.mechanism.gas.Stirring;

/**
 * The open water surface: evaporation by the Carrier form, convection by Bowen's ratio, radiation to the room. Where the
 * room is damper than the water's own vapour, it condenses on the water instead.
 *
 * @param water the body
 * @param room the room's fabric, which the surface warms
 * @param air over it
 * @param area of the surface
 * @param still Fa, how restless the surface is by itself
 * @param moved the same while anything stirs it
 * @param stirring pumps that move it
 */
public record OpenSurface(
        Body water,
        Body room,
        AirAbove air,
        @Unit("m^2") double area,
        Parameter still,
        Parameter moved,
        Stirring stirring)
        implements Mechanism {
    private static final double LAST_LITRE = 1e-3;
    private static final double SALTY = 90;
    private static final double SALTIEST = 115;

    @Override
    public String name() {
        return "evaporation";
    }

    @Override
    public void act(View now, Transfers out) {
        double waterTemperature = now.temperature(water);
        double roomTemperature = now.temperature(room);
        double salinity = now.salinity(water);
        double atWater = VapourPressure.ofSeawater(waterTemperature, Math.min(SALTIEST, salinity));
        double inAir = air.vapourPressure(now);
        double latent = LatentHeat.ofEvaporation(waterTemperature);
        double activity = now.value(stirring.moves(now) ? moved : still);
        double evaporation = CarrierEvaporation.massFlux(activity, air.speed(now), atWater, inAir, latent);
        double convection =
                SurfaceConvection.heatFlux(evaporation * latent, waterTemperature, roomTemperature, atWater, inAir);
        double radiation = Radiation.film(Radiation.EMISSIVITY_OF_WATER, waterTemperature, roomTemperature)
                * (waterTemperature - roomTemperature);
        // From the last litre, and from brine three times as salt as the sea, ever less evaporates: a forgotten vessel
        // dries up, and the laws of seawater are not asked beyond their range.
        double wet = Math.max(
                0, Math.min(1, Math.min(now.volume(water) / LAST_LITRE, (SALTIEST - salinity) / (SALTIEST - SALTY))));
        out.vapour(water, air.body(), wet * area * evaporation, latent);
        out.heat(water, room, area * (convection + radiation));
    }
}
