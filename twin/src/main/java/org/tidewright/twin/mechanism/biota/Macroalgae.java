package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.MacroalgaeGrowth;
import org.tidewright.twin.mechanism.light.Lamps;

/** Macroalgae kept under lamps: they grow on light, nitrogen and phosphorus until the mat shades itself, and breathe. */
public final class Macroalgae implements Mechanism {
    /** Their tissue at its usual composition, per nitrogen. */
    public static final Composition TISSUE = new Composition(
            MacroalgaeGrowth.CARBON.usual() / MacroalgaeGrowth.NITROGEN.usual(),
            MacroalgaeGrowth.PHOSPHORUS.usual() / MacroalgaeGrowth.NITROGEN.usual());

    /** Share of the day with light in which growth was measured. */
    @Unit("1")
    public static final double LIT_SHARE_OF_MEASUREMENTS = 0.5;

    private final String name;
    private final Body water;
    private final Body algae;
    private final Lamps lamps;
    private final Setting litArea;
    private final Drawn greatest;
    private final Drawn growth;
    private final Parameter loss;
    private final Parameter lightSaturation;
    private final PlantRecipes recipes;

    /**
     * A stand of them.
     *
     * @param waste where what dies goes
     * @param litArea setting: of the lit ground, m²
     * @param greatest dry mass the mat can come to on a lit area, kg/m²
     * @param growth specific rate with plenty of all, 1/s over day and night
     * @param loss specific rate of what breathes away and dies, 1/s
     * @param lightSaturation mol/(m²·s)
     */
    public Macroalgae(
            String name,
            Body water,
            Body algae,
            Body waste,
            Body life,
            Lamps lamps,
            Setting litArea,
            Drawn greatest,
            Drawn growth,
            Parameter loss,
            Parameter lightSaturation) {
        this.name = name;
        this.water = water;
        this.algae = algae;
        this.lamps = lamps;
        this.litArea = litArea;
        this.greatest = greatest;
        this.growth = growth;
        this.loss = loss;
        this.lightSaturation = lightSaturation;
        recipes = new PlantRecipes(TISSUE, water, algae, waste, life);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double nitrogen = Math.max(0, now.stock(algae, Stock.ORGANIC_NITROGEN));
        if (nitrogen <= 0) {
            return;
        }
        double perDry = MacroalgaeGrowth.NITROGEN.usual();
        double dry = nitrogen / perDry;
        double temperature = now.temperature(water);
        double lost = perDry * MacroalgaeGrowth.lost(dry, now.value(loss), temperature);
        recipes.breathe(now, out, lost / 2);
        recipes.lose(out, lost / 2);
        double light = lamps.light(now);
        double area = now.value(litArea);
        if (light > 0 && area > 0) {
            double allowed = MacroalgaeGrowth.warmth(temperature, MacroalgaeGrowth.BEST_TEMPERATURE)
                    * MacroalgaeGrowth.limitation(
                            light,
                            now.value(lightSaturation),
                            now.concentration(water, Stock.AMMONIA) + now.concentration(water, Stock.NITRATE),
                            now.concentration(water, Stock.PHOSPHATE));
            // The rates were measured over whole days of about twelve lit hours.
            double whileLit = MacroalgaeGrowth.whileLit(growth.in(now), LIT_SHARE_OF_MEASUREMENTS);
            double most = area * greatest.in(now);
            recipes.grow(now, out, perDry * MacroalgaeGrowth.made(dry, most, whileLit, allowed));
        }
    }

    /** Nitrogen of a stand of this dry mass. */
    public static @Unit("mol") double nitrogenOf(@Unit("kg") double dryMass) {
        return dryMass * MacroalgaeGrowth.NITROGEN.usual();
    }
}
