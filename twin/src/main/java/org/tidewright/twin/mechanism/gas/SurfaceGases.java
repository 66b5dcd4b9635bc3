package org.tidewright.twin.mechanism.gas;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.CarbonDioxideTransfer;
import org.tidewright.twin.law.gas.GasTransfer;
import org.tidewright.twin.mechanism.air.AirOver;

/**
 * Oxygen and carbon dioxide between air and water. The surface is the more stirred the more power its
 * stirrers spend now, and never less open to gases than a still one.
 *
 * @param oxygenStore the air as a source of oxygen, which a room never runs short of
 * @param usualSchmidt of oxygen at the temperature the two velocities are given for
 * @param still transfer velocity of oxygen over still water
 * @param stirred the same while all that stirs it runs; where less does, it falls by {@link Stirring}
 * @param cover factor of what lies over the water; null for nothing
 * @param stirring pumps that move this body's surface
 */
public record SurfaceGases(
        Body water,
        Body oxygenStore,
        AirOver air,
        @Unit("m^2") double area,
        @Unit("1") double usualSchmidt,
        Parameter still,
        Parameter stirred,
        @Nullable Parameter cover,
        Stirring stirring)
        implements Mechanism {
    @Override
    public String name() {
        return "gas exchange at the surface";
    }

    @Override
    public void act(View now, Transfers out) {
        double temperature = now.temperature(water);
        double strength = stirring.strength(now) * now.value(stirred);
        boolean moved = strength > now.value(still);
        double exponent = moved ? GasTransfer.RIPPLED : GasTransfer.SMOOTH;
        double schmidt = SchmidtNumber.ofOxygen(temperature);
        double usual = moved ? strength : now.value(still);
        double velocity = usual * (cover == null ? 1 : now.value(cover)) * Math.pow(usualSchmidt / schmidt, exponent);
        Solution solution = now.solution(water);
        out.move(
                Stock.OXYGEN,
                oxygenStore,
                water,
                area * GasTransfer.flux(velocity, solution.oxygenAtRest(), now.oxygen(water)));
        double ofCarbonDioxide = CarbonDioxideTransfer.velocity(velocity, temperature, exponent);
        if (!moved) {
            // Only a film as thick as that of still water lasts long enough for carbon dioxide to react in it.
            double salinity = now.salinity(water);
            ofCarbonDioxide *= CarbonDioxideTransfer.enhancement(
                    ofCarbonDioxide,
                    solution.ph(),
                    temperature,
                    salinity,
                    CarbonicAcid.LUEKER_2000.first(temperature, salinity),
                    CarbonicAcid.LUEKER_2000.second(temperature, salinity));
        }
        double atRest = solution.carbonDioxideUnder(air.carbonDioxide(now));
        out.move(
                Stock.INORGANIC_CARBON,
                air.body(),
                water,
                area * ofCarbonDioxide * (atRest - solution.carbonDioxide()));
    }
}
