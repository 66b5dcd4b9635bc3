package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.PhosphateAdsorption;

/** Iron oxide in a reactor: it loads with phosphate until the load stands in equilibrium with the water. */
public final class PhosphateMedium implements Mechanism {
    private final String name;
    private final Body water;
    private final Body medium;
    private final Setting mass;
    private final Setting flow;
    private final Parameter singlePass;
    private final Parameter usable;
    private final Recipe adsorption;

    /**
     * A reactor.
     *
     * @param medium holds the phosphate
     * @param mass setting: of the dry medium, kg
     * @param flow setting: of water through it, m³/s
     */
    public PhosphateMedium(
            String name, Body water, Body medium, Setting mass, Setting flow, Parameter singlePass, Parameter usable) {
        this.name = name;
        this.water = water;
        this.medium = medium;
        this.mass = mass;
        this.flow = flow;
        this.singlePass = singlePass;
        this.usable = usable;
        // Phosphate takes the place of hydroxide on the grains, so the water gains alkalinity.
        adsorption = Recipe.named("adsorption of phosphate")
                .moves(Stock.PHOSPHATE, water, medium, 1)
                .build();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double grams = now.value(mass);
        double through = now.value(flow);
        if (grams > 0 && through > 0) {
            double load = Math.max(0, now.stock(medium, Stock.PHOSPHATE)) / grams;
            out.run(
                    adsorption,
                    PhosphateAdsorption.uptake(
                            through,
                            now.value(singlePass),
                            now.concentration(water, Stock.PHOSPHATE),
                            load,
                            now.value(usable)));
        }
    }
}
