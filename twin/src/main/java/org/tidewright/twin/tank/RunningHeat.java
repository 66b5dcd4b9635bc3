package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.numerics.root.Bracketed;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.model.Glass;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.heat.CarrierEvaporation;
import org.tidewright.twin.law.heat.LidFilm;
import org.tidewright.twin.law.heat.Radiation;
import org.tidewright.twin.law.heat.SurfaceConvection;
import org.tidewright.twin.law.heat.Wall;
import org.tidewright.twin.law.heat.WallConduction;

/**
 * The heat balance of a plan while everything runs and all its water has one temperature: what it loses to the room and
 * what its devices give it.
 */
public final class RunningHeat {
    private static final double STILL_AIR = 0;
    private static final double COLDEST_WATER = 0;
    private static final double HOTTEST_WATER = 59;

    /** Share of a light's power that ends in the water where the plan does not say: 0.3 to 0.6; common practice. */
    private static final double LIGHT_TO_WATER = 0.45;

    private final List<Part> parts = new ArrayList<>();
    private final double salinity;
    private final double pumps;
    private final double lights;

    /** A vessel as far as heat matters. */
    private record Part(Vessels.Vessel vessel, Glass glass, double wetted, Cover cover, double surface) {}

    private RunningHeat(Plan plan) {
        Vessels vessels = Vessels.of(plan);
        Water water = Water.of(plan);
        RunningState running = RunningState.of(plan, vessels, water.viscosity());
        salinity = water.salinity();
        double displayLevel = running.displayLevel();
        parts.add(new Part(
                vessels.display(),
                plan.display().glass(),
                displayLevel,
                plan.display().cover(),
                vessels.display().shape().surface(displayLevel)));
        if (plan.sump() != null) {
            parts.add(sump(vessels, running, plan.sump()));
        }
        if (plan.refugium() != null) {
            Vessels.Vessel refugium = requireNonNull(vessels.refugium());
            parts.add(new Part(
                    refugium,
                    plan.refugium().glass(),
                    running.refugiumLevel(),
                    plan.refugium().cover(),
                    refugium.shape().surface(running.refugiumLevel())));
        }
        pumps = pumpHeat(plan);
        lights = lightHeat(plan);
    }

    /** Heat leaves through the outer walls alone, wetted to the mean of the levels. */
    private static Part sump(Vessels vessels, RunningState running, Sump sump) {
        double surface = 0;
        double front = 0;
        for (int i = 0; i < vessels.sections().size(); i++) {
            Vessels.Vessel section = vessels.sections().get(i).vessel();
            double level = running.sectionLevels()[i];
            surface += section.shape().surface(level);
            front += section.length() * level;
        }
        Vessels.Vessel whole = vessels.wholeSump();
        return new Part(whole, sump.glass(), front / whole.length(), sump.cover(), surface);
    }

    public static RunningHeat of(Plan plan) {
        return new RunningHeat(plan);
    }

    /** Heat of everything submerged that runs all day. */
    public @Unit("W") double pumps() {
        return pumps;
    }

    /** Mean over the day of what the lights leave in the water. */
    public @Unit("W") double lights() {
        return lights;
    }

    /** Heat lost to the room. */
    public @Unit("W") double loss(@Unit("degC") double water, @Unit("degC") double room, @Unit("1") double humidity) {
        double airVapour = MoistAir.vapourPressure(room, humidity);
        double sum = 0;
        for (Part part : parts) {
            sum += wallLoss(part, water, room) + surfaceLoss(part, water, room, airVapour);
        }
        return sum;
    }

    /** Temperature at which the loss equals a heat. */
    public @Unit("degC") double settlesAt(
            @Unit("W") double heat, @Unit("degC") double room, @Unit("1") double humidity) {
        return Bracketed.root(water -> loss(water, room, humidity) - heat, COLDEST_WATER, HOTTEST_WATER, 1e-6);
    }

    /** Water that evaporates while all runs. */
    public @Unit("kg/s") double evaporation(
            @Unit("degC") double water, @Unit("degC") double room, @Unit("1") double humidity) {
        double latent = LatentHeat.ofEvaporation(water);
        double atWater = VapourPressure.ofSeawater(water, salinity);
        double inAir = MoistAir.vapourPressure(room, humidity);
        return parts.stream()
                .filter(part -> part.cover().letsAirPass())
                .mapToDouble(part -> part.surface()
                        * CarrierEvaporation.massFlux(CarrierEvaporation.RIPPLED, STILL_AIR, atWater, inAir, latent))
                .sum();
    }

    private static double wallLoss(Part part, double water, double room) {
        Wall wall = Wall.ofGlass(part.wetted(), part.glass().panes().in("m"), Wall.CIRCULATED);
        // The film needs a difference to exist; at none it passes no heat anyway.
        double difference = Math.abs(water - room) < 0.1 ? 0.1 : water - room;
        double side = WallConduction.through(wall, room + difference, room).transmittance();
        double area = part.vessel().rimLength() * part.wetted();
        double bottom = part.vessel().length() * part.vessel().width();
        return (side * area + WallConduction.BOTTOM_ON_FOAM_AND_WOOD * bottom) * (water - room);
    }

    private double surfaceLoss(Part part, double water, double room, double airVapour) {
        if (!part.cover().letsAirPass()) {
            return part.surface() * LidFilm.coefficient(water, room) * (water - room);
        }
        double latent = LatentHeat.ofEvaporation(water);
        double atWater = VapourPressure.ofSeawater(water, salinity);
        double evaporative =
                latent * CarrierEvaporation.massFlux(CarrierEvaporation.RIPPLED, STILL_AIR, atWater, airVapour, latent);
        double convective = SurfaceConvection.heatFlux(evaporative, water, room, atWater, airVapour);
        double radiative = Radiation.film(Radiation.EMISSIVITY_OF_WATER, water, room) * (water - room);
        return part.surface() * (evaporative + convective + radiative);
    }

    private static double pumpHeat(Plan plan) {
        double sum =
                plan.returnLine() == null ? 0 : plan.returnLine().pump().power().in("W");
        sum += plan.circulationPumps().stream()
                .mapToDouble(pump -> pump.power().in("W"))
                .sum();
        return sum
                + plan.gear().stream()
                        .mapToDouble(
                                gear -> gear.power() == null ? 0 : gear.power().in("W"))
                        .sum();
    }

    private static double lightHeat(Plan plan) {
        return plan.lights().stream()
                .mapToDouble(light -> light.power().in("W")
                        * light.daily().in("s")
                        / 86_400
                        * (light.heatToWater() == null
                                ? LIGHT_TO_WATER
                                : light.heatToWater().in("1")))
                .sum();
    }
}
