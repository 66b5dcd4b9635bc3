package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.PhosphateAdsorption;

/** Phosphate that rock and sand hold and give back as the water changes. */
public final class RockPhosphate implements Mechanism {
    private final Body water;
    private final Body rock;
    private final Parameter ratio;
    private final Parameter exchange;
    private final Recipe adsorption;

    /**
     * The store of one tank.
     *
     * @param rock holds the phosphate
     * @param ratio of what is held to what is dissolved, at rest
     * @param exchange specific rate, 1/s
     */
    public RockPhosphate(Body water, Body rock, Parameter ratio, Parameter exchange) {
        this.water = water;
        this.rock = rock;
        this.ratio = ratio;
        this.exchange = exchange;
        adsorption = Recipe.named("adsorption of phosphate on rock")
                .moves(Stock.PHOSPHATE, water, rock, 1)
                .build();
    }

    @Override
    public String name() {
        return "phosphate on rock and sand";
    }

    @Override
    public void act(View now, Transfers out) {
        out.run(
                adsorption,
                PhosphateAdsorption.reservoirUptake(
                        now.stock(rock, Stock.PHOSPHATE),
                        now.stock(water, Stock.PHOSPHATE),
                        now.value(ratio),
                        now.value(exchange)));
    }
}
