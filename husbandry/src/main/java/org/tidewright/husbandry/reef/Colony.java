package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Inhabitants.Coral;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/**
 * Colonies of one row of the plan, each a disc seen from above.
 *
 * @param name as the plan calls it
 * @param number of colonies
 * @param radius of each
 * @param place of the only one; null where the plan does not say, and for several
 */
public record Colony(
        String name,
        int number,
        @Unit("m") double radius,
        CoralTraits traits,
        @Nullable Place place) {

    /** All rows of a plan, in its order. */
    public static List<Colony> of(Plan plan, CoralLore lore) {
        List<Colony> colonies = new ArrayList<>();
        if (plan.inhabitants() != null) {
            for (Coral coral : plan.inhabitants().corals()) {
                int number = coral.colonyCount();
                colonies.add(new Colony(
                        coral.name(),
                        number,
                        Math.sqrt(coral.planArea().in("m^2") / number / Math.PI),
                        lore.of(coral),
                        coral.at() == null ? null : Place.of(coral.at())));
            }
        }
        return List.copyOf(colonies);
    }

    /** Whether it is the same row of the plan, whatever its size is taken to be. */
    boolean isRow(Colony other) {
        return name.equals(other.name) && Objects.equals(place, other.place);
    }

    /** The same colony elsewhere. */
    public Colony at(Place other) {
        return new Colony(name, number, radius, traits, other);
    }

    /** Radius after some time. */
    @Unit("m")
    double radiusAfter(@Unit("y") double years, @Unit("m/y") double extension) {
        return radius + extension * years;
    }
}
