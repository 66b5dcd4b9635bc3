package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Glass;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sand;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.law.heat.TankHeatCapacity;
import org.tidewright.twin.mechanism.heat.WallLoss;
import org.tidewright.twin.mechanism.water.OverRim;
import org.tidewright.twin.run.Network;

/** A plan's water in as few bodies as matter when levels do not: display, sump as one, refugium, each behind its panes. */
public final class Basins {
    private final Water water;
    private final Vessels vessels;
    private final RunningState running;
    private final Basin display;
    private final @Nullable Basin sump;
    private final @Nullable Basin refugium;

    /**
     * Water in each.
     *
     * @param sump 0 where there is none
     * @param refugium 0 where there is none
     */
    public record Volumes(
            @Unit("m^3") double display,
            @Unit("m^3") double sump,
            @Unit("m^3") double refugium) {}

    /**
     * One of them.
     *
     * @param volume of its water at the start
     * @param surface of its water
     * @param solids dry mass of rock and sand in it
     */
    public record Basin(
            Body body,
            Vessels.Vessel vessel,
            Glass glass,
            @Unit("m^3") double volume,
            @Unit("m^2") double surface,
            @Unit("kg") double solids) {}

    /** The basins of a plan, declared as bodies. */
    public Basins(Plan plan, Water water, Volumes volumes, Declaration declaration) {
        this.water = water;
        vessels = Vessels.of(plan);
        running = RunningState.of(plan, vessels, water.viscosity());
        Vessels.Vessel tank = vessels.display();
        double level = tank.shape().level(volumes.display());
        double displaySolids =
                massOf(plan.display().rock()) + massOf(plan.display().sand());
        display = basin(
                declaration,
                tank,
                plan.display().glass(),
                volumes.display(),
                tank.shape().surface(level),
                displaySolids);
        sump = plan.sump() == null ? null : sump(declaration, plan, volumes.sump());
        refugium = plan.refugium() == null ? null : refugium(declaration, plan, volumes.refugium());
    }

    public Vessels vessels() {
        return vessels;
    }

    /** Flows and levels while everything runs. */
    public RunningState running() {
        return running;
    }

    public Basin display() {
        return display;
    }

    /** Null where there is none. */
    public @Nullable Basin sump() {
        return sump;
    }

    /** Null where there is none. */
    public @Nullable Basin refugium() {
        return refugium;
    }

    /** All there are, the display first. */
    public List<Basin> all() {
        List<Basin> all = new ArrayList<>();
        all.add(display);
        if (sump != null) {
            all.add(sump);
        }
        if (refugium != null) {
            all.add(refugium);
        }
        return all;
    }

    /** The bodies by name. */
    public Map<String, Body> bodies() {
        Map<String, Body> bodies = new HashMap<>();
        all().forEach(basin -> bodies.put(basin.body().name(), basin.body()));
        return bodies;
    }

    /** The body in which something stands, by the plan's name of a vessel or a section of the sump. */
    public Body holding(String place, Plan plan) {
        String name = Names.sections(plan).contains(place) ? Vessels.SUMP : place;
        return requireNonNull(bodies().get(name), place);
    }

    /** Lets every basin lose heat through its panes and bottom. */
    public void addWalls(Network.Builder builder, Body room) {
        Parameter factor = builder.parameter(
                "heat loss of the tanks, factor",
                "1",
                1,
                0.75,
                1.3,
                Basis.FROM_MEMORY,
                "films by Churchill and Chu 1975 and radiation; what stands around the tank is not described");
        for (Basin basin : all()) {
            Vessels.Vessel vessel = basin.vessel();
            double wetted = Math.min(vessel.rimLevel(), vessel.shape().level(basin.volume()));
            builder.add(new WallLoss(
                    basin.body(),
                    room,
                    Panes.transmittance(basin.glass(), wetted),
                    vessel.rimLength(),
                    vessel.rimLevel(),
                    Panes.bottomConductance(vessel),
                    factor));
        }
    }

    /** Lets what stands above the rim of the lowest vessel, to which all surplus comes, run to the floor. */
    public void addRims(Network.Builder builder, Body floor) {
        Basin lowest = sump == null ? display : sump;
        Vessels.Vessel vessel = lowest.vessel();
        builder.add(new OverRim(
                lowest.body(),
                floor,
                vessel.shape().volume(vessel.rimLevel()) + (sump == null ? 0 : heldBesideSump())));
    }

    /** Water that counts for the sump and stands in pipes and gear. */
    private double heldBesideSump() {
        double inSections = 0;
        for (int i = 0; i < vessels.sections().size(); i++) {
            inSections += vessels.sections().get(i).vessel().shape().volume(running.sectionLevels()[i]);
        }
        return Math.max(0, requireNonNull(sump).volume() - inSections);
    }

    private Basin sump(Declaration declaration, Plan plan, double volume) {
        Vessels.Vessel whole = vessels.wholeSump();
        double rock = requireNonNull(plan.sump()).sections().stream()
                .mapToDouble(section -> massOf(section.rock()))
                .sum();
        return basin(declaration, whole, plan.sump().glass(), volume, whole.length() * whole.width(), rock);
    }

    private Basin refugium(Declaration declaration, Plan plan, double volume) {
        Vessels.Vessel vessel = requireNonNull(vessels.refugium());
        double solids = massOf(requireNonNull(plan.refugium()).rock())
                + massOf(plan.refugium().sand());
        double area = vessel.length() * vessel.width();
        return basin(declaration, vessel, plan.refugium().glass(), volume, area, solids);
    }

    private Basin basin(
            Declaration declaration, Vessels.Vessel vessel, Glass glass, double volume, double surface, double solids) {
        double all =
                TankHeatCapacity.of(volume, water.temperature(), water.salinity(), solids, Panes.mass(vessel, glass));
        double ofSolids = Math.max(0, all - water.density() * water.specificHeat() * volume);
        Body body = declaration.body(vessel.name(), vessel.shape(), vessel.bottomHeight(), ofSolids);
        return new Basin(body, vessel, glass, volume, surface, solids);
    }

    private static double massOf(@Nullable Rock rock) {
        return rock == null ? 0 : rock.dryMass().in("kg");
    }

    private static double massOf(@Nullable Sand sand) {
        return sand == null ? 0 : sand.dryMass().in("kg");
    }
}
