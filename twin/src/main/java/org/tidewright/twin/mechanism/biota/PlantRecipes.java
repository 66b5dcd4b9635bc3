package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.nutrient.Limitation;

/**
 * What a plant takes from the water to grow by one mole of nitrogen and what it gives back: carbon dioxide, ammonium or
 * nitrate, phosphate in; oxygen out, two more with nitrate, which it must reduce first. Ammonium is preferred.
 */
final class PlantRecipes {
    /** Oxygen set free per nitrate reduced to ammonia. */
    static final double OXYGEN_OF_NITRATE = 2;

    /** Ammonia at which half the nitrogen is taken from it: 1 µmol/L, from memory of ammonium inhibition of nitrate uptake. */
    private static final double AMMONIA_PREFERRED = 1e-3;

    /** Nitrate at which half of what is wanted of it is found: 0.1 µmol/L, far below what holds growth back; an estimate. */
    private static final double NITRATE_SCARCE = 1e-4;

    /** Inorganic carbon that lets half of growth go, a hundredth of seawater's; an estimate. */
    private static final double SCARCE_CARBON = 0.02;

    private final Body water;
    private final Recipe onAmmonia;
    private final Recipe onNitrate;
    private final Recipe breathing;
    private final Recipe loss;

    PlantRecipes(Composition matter, Body water, Body plant, Body waste, Body life) {
        this.water = water;
        onAmmonia = growth(matter, water, plant, life, Stock.AMMONIA, matter.carbon());
        onNitrate = growth(matter, water, plant, life, Stock.NITRATE, matter.carbon() + OXYGEN_OF_NITRATE);
        breathing = Recipe.named("breathing of plants")
                .takes(plant, Stock.ORGANIC_CARBON, matter.carbon())
                .gives(water, Stock.INORGANIC_CARBON, matter.carbon())
                .moves(Stock.OXYGEN, water, life, matter.carbon())
                .takes(plant, Stock.ORGANIC_NITROGEN, 1)
                .gives(water, Stock.AMMONIA, 1)
                .takes(plant, Stock.ORGANIC_PHOSPHORUS, matter.phosphorus())
                .gives(water, Stock.PHOSPHATE, matter.phosphorus())
                .build();
        loss = Recipe.named("death of plants")
                .moves(Stock.ORGANIC_CARBON, plant, waste, matter.carbon())
                .moves(Stock.ORGANIC_NITROGEN, plant, waste, 1)
                .moves(Stock.ORGANIC_PHOSPHORUS, plant, waste, matter.phosphorus())
                .build();
    }

    private static Recipe growth(Composition matter, Body water, Body plant, Body life, Stock nitrogen, double oxygen) {
        return Recipe.named("growth on " + nitrogen)
                .takes(water, nitrogen, 1)
                .gives(plant, Stock.ORGANIC_NITROGEN, 1)
                .takes(water, Stock.PHOSPHATE, matter.phosphorus())
                .gives(plant, Stock.ORGANIC_PHOSPHORUS, matter.phosphorus())
                .takes(water, Stock.INORGANIC_CARBON, matter.carbon())
                .gives(plant, Stock.ORGANIC_CARBON, matter.carbon())
                .moves(Stock.OXYGEN, life, water, oxygen)
                .build();
    }

    /** Share of growth that inorganic carbon lets go: all of it but where next to none is left. */
    static double carbonLeft(View now, Body water) {
        double carbon = now.concentration(water, Stock.INORGANIC_CARBON);
        return carbon * carbon / (carbon * carbon + SCARCE_CARBON * SCARCE_CARBON);
    }

    /** Share of the wanted nitrogen that is taken as ammonia. */
    static double onAmmonia(View now, Body water) {
        return Limitation.monod(now.concentration(water, Stock.AMMONIA), AMMONIA_PREFERRED);
    }

    /** Share that is taken as nitrate: the rest, as long as there is nitrate. */
    static double onNitrate(View now, Body water) {
        return (1 - onAmmonia(now, water)) * Limitation.monod(now.concentration(water, Stock.NITRATE), NITRATE_SCARCE);
    }

    /** Grows by so much nitrogen, as long as there is carbon and nitrogen for it. */
    void grow(View now, Transfers out, @Unit("mol/s") double plenty) {
        double rate = plenty * carbonLeft(now, water);
        out.run(onAmmonia, rate * onAmmonia(now, water));
        out.run(onNitrate, rate * onNitrate(now, water));
    }

    /** Burns so much of itself in well-aired water, less where oxygen runs out. */
    void breathe(View now, Transfers out, @Unit("mol/s") double rate) {
        out.run(breathing, rate * OxygenLimitation.ofAired(now.oxygen(water)));
    }

    /** Loses so much of itself to the waste. */
    void lose(Transfers out, @Unit("mol/s") double rate) {
        out.run(loss, rate);
    }
}
