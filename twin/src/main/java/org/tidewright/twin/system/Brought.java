package org.tidewright.twin.system;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.Nitrification;
import org.tidewright.twin.law.nutrient.Seeding;

/**
 * Nitrifiers that come into a tank which was washed and stood dry: on rock and in sponges as ripe as the plan says, and a
 * trace of them on everything else.
 *
 * @param ammoniaOxidisers as a share of the most that all surfaces can carry
 * @param nitriteOxidisers likewise
 */
record Brought(
        @Unit("1") double ammoniaOxidisers, @Unit("1") double nitriteOxidisers) {

    /** All films of a plan: sand, panes and foam together. */
    static Brought of(Plan plan, @Unit("m^2") double films) {
        Map<Rock.State, Double> capacity = new LinkedHashMap<>();
        rock(capacity, plan.display().rock());
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                rock(capacity, section.rock());
            }
        }
        if (plan.refugium() != null) {
            rock(capacity, plan.refugium().rock());
        }
        for (AirPump pump : plan.airPumps()) {
            AirPump.Sponge sponge = pump.sponge();
            if (sponge != null) {
                capacity.merge(sponge.stateOrLive(), carried(sponge), Double::sum);
            }
        }
        capacity.merge(Rock.State.DRY, (films - foam(plan)) * Nitrification.FILM.usual(), Double::sum);
        return new Brought(share(capacity, Seeding::ammoniaOxidisers), share(capacity, Seeding::nitriteOxidisers));
    }

    private static void rock(Map<Rock.State, Double> capacity, @Nullable Rock rock) {
        if (rock != null) {
            capacity.merge(rock.stateOrLive(), rock.dryMass().in("kg") * Nitrification.ROCK.usual(), Double::sum);
        }
    }

    private static double share(Map<Rock.State, Double> capacity, ToDoubleFunction<Seeding> oxidisers) {
        double most = 0;
        double comes = 0;
        for (Map.Entry<Rock.State, Double> surface : capacity.entrySet()) {
            most += surface.getValue();
            comes += surface.getValue() * oxidisers.applyAsDouble(seeding(surface.getKey()));
        }
        return comes / most;
    }

    private static Seeding seeding(Rock.State state) {
        return switch (state) {
            case DRY -> Seeding.TRACE;
            case SEEDED -> Seeding.SOME;
            case LIVE -> Seeding.RIPE;
        };
    }

    /** Surface in the foam of all sponges. */
    static @Unit("m^2") double foam(Plan plan) {
        return plan.airPumps().stream()
                .filter(pump -> pump.sponge() != null)
                .mapToDouble(pump -> area(requireNonNull(pump.sponge())))
                .sum();
    }

    private static double carried(AirPump.Sponge sponge) {
        return area(sponge) * Nitrification.FILM.usual();
    }

    private static double area(AirPump.Sponge sponge) {
        return sponge.foam().in("m^3") * Nitrification.FOAM;
    }
}
