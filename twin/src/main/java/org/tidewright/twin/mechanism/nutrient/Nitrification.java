package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.Nitrifiers;

/**
 * One step of nitrification by cells that grow on it as far as surface is left, and die.
 *
 * <p>What is not known exactly enters as factors: of growth, and of the affinity for what is oxidised.
 */
public final class Nitrification implements Mechanism {
    /** Carbon per nitrogen of cells C5H7O2N. */
    private static final double CARBON_OF_CELLS = 5;

    private final Step step;
    private final Place place;
    private final Parameter growth;
    private final Parameter affinity;
    private final Drawn greatestCapacity;
    private final Parameter perKelvin;
    private final Recipe oxidation;
    private final Recipe death;

    /** Which of the two. */
    public enum Step {
        AMMONIA(Nitrifiers.AMMONIA_OXIDISERS, Stock.AMMONIA, Stock.NITRITE),
        NITRITE(Nitrifiers.NITRITE_OXIDISERS, Stock.NITRITE, Stock.NITRATE);

        private final Nitrifiers cells;
        private final Stock from;
        private final Stock to;

        Step(Nitrifiers cells, Stock from, Stock to) {
            this.cells = cells;
            this.from = from;
            this.to = to;
        }

        /** The guild that lives on it, at its usual constants. */
        public Nitrifiers cells() {
            return cells;
        }
    }

    /**
     * Where it goes on.
     *
     * @param water around the surfaces
     * @param cells the cells themselves
     * @param waste where dead cells go
     * @param life what breathes
     */
    public record Place(Body water, Body cells, Body waste, Body life) {}

    /**
     * One step in one place.
     *
     * @param growth factor on the cells' growth
     * @param affinity factor on the concentration they feel
     * @param greatestCapacity what the surfaces can carry, mol/s
     * @param perKelvin factor of warmth
     */
    public Nitrification(
            Step step, Place place, Parameter growth, Parameter affinity, Drawn greatestCapacity, Parameter perKelvin) {
        this.step = step;
        this.place = place;
        this.growth = growth;
        this.affinity = affinity;
        this.greatestCapacity = greatestCapacity;
        this.perKelvin = perKelvin;
        double yield = step.cells.yield();
        oxidation = Recipe.named("oxidation of " + step.from)
                .takes(place.water(), step.from, 1 + yield)
                .gives(place.water(), step.to, 1)
                .gives(place.cells(), Stock.ORGANIC_NITROGEN, yield)
                .moves(Stock.OXYGEN, place.water(), place.life(), step.cells.oxygenPerOxidised())
                .takes(place.water(), Stock.INORGANIC_CARBON, CARBON_OF_CELLS * yield)
                .gives(place.cells(), Stock.ORGANIC_CARBON, CARBON_OF_CELLS * yield)
                .build();
        death = Recipe.named("death of nitrifiers")
                .moves(Stock.ORGANIC_NITROGEN, place.cells(), place.waste(), 1)
                .moves(Stock.ORGANIC_CARBON, place.cells(), place.waste(), CARBON_OF_CELLS)
                .build();
    }

    @Override
    public String name() {
        return step == Step.AMMONIA ? "ammonia oxidation" : "nitrite oxidation";
    }

    @Override
    public void act(View now, Transfers out) {
        Nitrifiers guild = step.cells;
        double capacity = guild.capacity(Math.max(0, now.stock(place.cells(), Stock.ORGANIC_NITROGEN)));
        double warmth = org.tidewright.twin.law.nutrient.Nitrification.warmth(
                now.temperature(place.water()), now.value(perKelvin));
        double substrate = now.concentration(place.water(), step.from);
        double activity = guild.activity(now.value(affinity) * substrate, now.oxygen(place.water()), freeAmmonia(now));
        double quick = warmth * now.value(growth);
        double oxidised = guild.oxidised(capacity, quick, activity);
        double change = guild.capacityChange(capacity, greatestCapacity.in(now), quick, activity);
        out.run(oxidation, oxidised);
        out.run(death, guild.givenBack(oxidised, change));
    }

    private double freeAmmonia(View now) {
        if (step == Step.AMMONIA) {
            return 0;
        }
        return now.concentration(place.water(), Stock.AMMONIA)
                * now.solution(place.water()).freeAmmoniaShare();
    }

    /** Cells that can oxidise so much at 25 °C with plenty of everything. */
    public static @Unit("mol") double cellsOf(Step step, @Unit("mol/s") double capacity) {
        return step.cells.cells(capacity);
    }
}
