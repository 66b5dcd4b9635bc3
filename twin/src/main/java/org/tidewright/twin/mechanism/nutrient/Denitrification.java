package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.Limitation;

/**
 * Nitrate turned into gas inside rock and sand, at the expense of the matter that lies there; the nitrogen and phosphorus of
 * what is burnt are set free.
 */
public final class Denitrification implements Mechanism {
    /** Carbon on the ground at which half the rate is left: a thousandth of what a fed tank holds; an estimate. */
    private static final double SCARCE_CARBON = 1e-3;

    private final Body water;
    private final Body ground;
    private final Drawn full;
    private final Parameter halfSaturation;
    private final Recipe recipe;
    private final Recipe ammoniaSetFree;
    private final Recipe phosphateSetFree;

    /**
     * Denitrification in one place.
     *
     * @param ground the matter it lives on
     * @param air where the gas goes
     * @param full rate with plenty of nitrate, mol/s
     * @param halfSaturation of nitrate, mol/m³
     */
    public Denitrification(Body water, Body ground, Body air, Drawn full, Parameter halfSaturation) {
        this.water = water;
        this.ground = ground;
        this.full = full;
        this.halfSaturation = halfSaturation;
        recipe = Recipe.named("denitrification")
                .takes(water, Stock.NITRATE, 1)
                .gives(air, Stock.NITROGEN_GAS, 1)
                .takes(
                        ground,
                        Stock.ORGANIC_CARBON,
                        org.tidewright.twin.law.nutrient.Denitrification.CARBON_PER_NITRATE)
                .gives(
                        water,
                        Stock.INORGANIC_CARBON,
                        org.tidewright.twin.law.nutrient.Denitrification.CARBON_PER_NITRATE)
                .build();
        ammoniaSetFree = setFree(Stock.ORGANIC_NITROGEN, Stock.AMMONIA);
        phosphateSetFree = setFree(Stock.ORGANIC_PHOSPHORUS, Stock.PHOSPHATE);
    }

    private Recipe setFree(Stock organic, Stock dissolved) {
        return Recipe.named(dissolved + " set free by denitrifiers")
                .takes(ground, organic, 1)
                .gives(water, dissolved, 1)
                .build();
    }

    @Override
    public String name() {
        return "denitrification";
    }

    @Override
    public void act(View now, Transfers out) {
        double carbon = Math.max(0, now.stock(ground, Stock.ORGANIC_CARBON));
        double rate = org.tidewright.twin.law.nutrient.Denitrification.rate(
                full.in(now),
                now.concentration(water, Stock.NITRATE),
                now.value(halfSaturation),
                now.oxygen(water),
                now.temperature(water));
        double reduced = rate * Limitation.monod(carbon, SCARCE_CARBON);
        out.run(recipe, reduced);
        if (carbon > 0) {
            double burnt = reduced * org.tidewright.twin.law.nutrient.Denitrification.CARBON_PER_NITRATE / carbon;
            out.run(ammoniaSetFree, burnt * Math.max(0, now.stock(ground, Stock.ORGANIC_NITROGEN)));
            out.run(phosphateSetFree, burnt * Math.max(0, now.stock(ground, Stock.ORGANIC_PHOSPHORUS)));
        }
    }
}
