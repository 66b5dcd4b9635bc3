package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sand;
import org.tidewright.seawater.unit.Unit;

/** The display with its light, its flow and who stands in it: what every placement is judged by. */
public final class ReefSite {
    /** Dry coral sand in bulk; from memory, 1400 to 1600. */
    private static final double SAND = 1500; // kg/m^3

    private final Plan plan;
    private final List<Colony> colonies;
    private final @Nullable LightField light;
    private final FlowField flow;

    public ReefSite(Plan plan, CoralLore lore) {
        this.plan = plan;
        colonies = Colony.of(plan, lore);
        light = LightField.of(plan).orElse(null);
        flow = FlowField.of(plan);
    }

    public Plan plan() {
        return plan;
    }

    /** All corals of the plan. */
    public List<Colony> colonies() {
        return colonies;
    }

    /** Corals whose place is known. */
    public List<Colony> placed() {
        return colonies.stream().filter(colony -> colony.place() != null).toList();
    }

    /** Light at a place; empty where the plan has neither light nor points. */
    public Optional<PointValue> lightAt(Place place) {
        return Optional.ofNullable(light).map(field -> field.at(place));
    }

    public Optional<LightField> light() {
        return Optional.ofNullable(light);
    }

    /** Flow at a place; empty where no measured point is near. */
    public Optional<PointValue> flowAt(Place place) {
        return flow.at(place);
    }

    /** How a colony stands where it stands. */
    public Placement placement(Colony colony) {
        return at(colony, requireNonNull(colony.place(), "the place of a colony"));
    }

    /**
     * How a colony would stand somewhere.
     *
     * @param colony one of the plan's, which is then thought away from its own place, or a candidate
     */
    public Placement at(Colony colony, Place place) {
        Colony there = colony.at(place);
        List<Neighbours> neighbours = new ArrayList<>();
        for (Colony other : placed()) {
            if (!other.isRow(colony)) {
                neighbours.add(Neighbours.of(there, other));
            }
        }
        neighbours.sort(Comparator.comparingDouble(Neighbours::spare).thenComparingDouble(Neighbours::gap));
        PointValue lit = lightAt(place).orElse(null);
        PointValue flowing = flowAt(place).orElse(null);
        return new Placement(there, lit, suitsLight(colony, lit), flowing, suitsFlow(colony, flowing), neighbours);
    }

    private static Suits suitsLight(Colony colony, @Nullable PointValue lit) {
        Ranged need = colony.traits().light();
        return lit == null || need == null ? Suits.NOT_KNOWN : Suits.of(lit, need.low(), need.high());
    }

    private static Suits suitsFlow(Colony colony, @Nullable PointValue flowing) {
        FlowClass need = colony.traits().flow();
        return flowing == null ? Suits.NOT_KNOWN : Suits.of(flowing, need.least(), need.most());
    }

    // ── room to stand in ──

    public @Unit("m") double length() {
        return plan.display().length().in("m");
    }

    public @Unit("m") double width() {
        return plan.display().width().in("m");
    }

    public @Unit("m") double waterLevel() {
        return LightModel.waterLevel(plan);
    }

    /** Height of the sand, its mass spread over the bottom. */
    public @Unit("m") double sandHeight() {
        Sand sand = plan.display().sand();
        return sand == null ? 0 : sand.dryMass().in("kg") / SAND / (length() * width());
    }

    /** Height up to which there may be rock: its top, or two thirds of the water where the plan does not say; 0 without rock. */
    public @Unit("m") double rockTop() {
        Rock rock = plan.display().rock();
        if (rock == null || rock.dryMass().in("kg") <= 0) {
            return 0;
        }
        return rock.top() == null
                ? waterLevel() * 2 / 3
                : Math.min(waterLevel(), rock.top().in("m"));
    }
}
