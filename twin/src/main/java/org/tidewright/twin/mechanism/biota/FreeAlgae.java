package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.MicroalgalBloom;
import org.tidewright.twin.mechanism.light.Lamps;

/**
 * Microscopic algae in the water and on the panes, which nobody planted: few while grazers and filters keep up, a bloom
 * where nitrogen and phosphorus are in excess.
 */
public final class FreeAlgae implements Mechanism {
    private static final Composition CELLS =
            new Composition(MicroalgalBloom.CARBON_TO_NITROGEN, 1 / MicroalgalBloom.NITROGEN_TO_PHOSPHORUS);

    /** Algae out of reach, mol of nitrogen per m³; an estimate. */
    private static final double REFUGE = 1e-4;

    private final Body water;
    private final Body algae;
    private final Lamps lamps;
    private final double depth;
    private final double attenuation;
    private final Parameter growth;
    private final Parameter death;
    private final Parameter clearance;
    private final Setting grazers;
    private final PlantRecipes recipes;

    /**
     * The algae of one vessel.
     *
     * @param waste where what dies goes
     * @param depth of the water
     * @param attenuation of light in clear water
     * @param growth specific rate with plenty of all, 1/s
     * @param death specific rate, 1/s
     * @param clearance share of the few that grazers and filters clear, 1/s
     * @param grazers setting: 1 for those there are
     */
    public FreeAlgae(
            Body water,
            Body algae,
            Body waste,
            Body life,
            Lamps lamps,
            @Unit("m") double depth,
            @Unit("1/m") double attenuation,
            Parameter growth,
            Parameter death,
            Parameter clearance,
            Setting grazers) {
        this.water = water;
        this.algae = algae;
        this.lamps = lamps;
        this.depth = depth;
        this.attenuation = attenuation;
        this.growth = growth;
        this.death = death;
        this.clearance = clearance;
        this.grazers = grazers;
        recipes = new PlantRecipes(CELLS, water, algae, waste, life);
    }

    @Override
    public String name() {
        return "free algae";
    }

    @Override
    public void act(View now, Transfers out) {
        double nitrogen = Math.max(0, now.stock(algae, Stock.ORGANIC_NITROGEN));
        double volume = now.volume(water);
        if (nitrogen <= 0 || volume <= 0) {
            return;
        }
        double perVolume = nitrogen / volume;
        double surface = lamps.light(now);
        double light = MicroalgalBloom.meanLight(surface, depth, attenuation, perVolume);
        double specific = light > 0
                ? MicroalgalBloom.growth(
                        now.value(growth),
                        light,
                        now.concentration(water, Stock.AMMONIA) + now.concentration(water, Stock.NITRATE),
                        now.concentration(water, Stock.PHOSPHATE),
                        now.temperature(water))
                : 0;
        recipes.grow(now, out, specific * nitrogen);
        // Cracks and biofilm keep a few that nothing reaches.
        double exposed = Math.max(0, 1 - REFUGE / perVolume);
        recipes.lose(
                out,
                exposed
                        * volume
                        * MicroalgalBloom.loss(perVolume, now.value(death), now.value(grazers) * now.value(clearance)));
    }
}
