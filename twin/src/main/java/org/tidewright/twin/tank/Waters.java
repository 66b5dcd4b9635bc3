package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.law.hydraulic.FrancisWeir;
import org.tidewright.twin.mechanism.water.RimSpill;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** The bodies of a plumbing while it is put together: which there are, where, and how full while all runs. */
final class Waters {
    private final Water water;
    private final Vessels vessels;
    private final RunningState running;
    private final Network.Builder builder;
    private final Map<Body, Double> filled = new LinkedHashMap<>();
    private final Map<Body, Place> places = new LinkedHashMap<>();
    private final Body display;
    private final Body box;
    private final List<Body> sections = new ArrayList<>();
    private final @Nullable Body refugium;

    Waters(Plan plan) {
        water = Water.of(plan);
        vessels = Vessels.of(plan);
        running = RunningState.of(plan, vessels, water.viscosity());
        builder = new Network.Builder(Layout.OF_WATER_AND_HEAT, water.density(), water.specificHeat());
        Body floor = place(builder.body(Plumbing.FLOOR), Place.FLOOR, 0);
        display = vessel(vessels.display(), Place.DISPLAY, running.displayLevel(), floor);
        box = vessel(requireNonNull(vessels.box()), Place.OVERFLOW_BOX, running.boxLevel(), null);
        for (int i = 0; i < vessels.sections().size(); i++) {
            Vessels.Vessel section = vessels.sections().get(i).vessel();
            sections.add(vessel(section, Place.SUMP_SECTION, running.sectionLevels()[i], floor));
        }
        refugium = vessels.refugium() == null
                ? null
                : vessel(vessels.refugium(), Place.REFUGIUM, running.refugiumLevel(), floor);
    }

    Water water() {
        return water;
    }

    Vessels vessels() {
        return vessels;
    }

    RunningState running() {
        return running;
    }

    Network.Builder builder() {
        return builder;
    }

    Map<Body, Place> places() {
        return places;
    }

    Body display() {
        return display;
    }

    Body box() {
        return box;
    }

    List<Body> sections() {
        return sections;
    }

    /** The section the return pump stands in. */
    Body last() {
        return sections.get(sections.size() - 1);
    }

    @Nullable
    Body refugium() {
        return refugium;
    }

    /** The section that bears a name of the plan. */
    Body section(String name) {
        return sections.get(vessels.sections().indexOf(vessels.section(name)));
    }

    boolean isSection(String name) {
        return vessels.sections().stream().anyMatch(section -> section.names().contains(name));
    }

    /** A body's level while all runs. */
    @Unit("m")
    double levelOf(Body body) {
        return body.shape().level(requireNonNull(filled.get(body)));
    }

    /** Notes a body's place and what it holds while all runs. */
    Body place(Body body, Place place, @Unit("m^3") double volume) {
        places.put(body, place);
        filled.put(body, volume);
        return body;
    }

    /** Every body as it stands while all runs. */
    State runningState(Network network) {
        State state = new State(network);
        filled.forEach(
                (body, volume) -> state.fill(body, volume, water.temperature(), water.salinity(), water.oxygen()));
        return state;
    }

    private Body vessel(Vessels.Vessel vessel, Place place, double level, @Nullable Body floor) {
        Body body = builder.body(vessel.name(), vessel.shape(), vessel.bottomHeight(), 0);
        place(body, place, vessel.shape().volume(level));
        if (floor != null) {
            builder.add(new RimSpill(body, floor, vessel.rimLevel(), new FrancisWeir(vessel.rimLength(), 0)));
        }
        return body;
    }
}
