package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.CarbonDosing;
import org.tidewright.twin.law.nutrient.Limitation;
import org.tidewright.twin.law.nutrient.Remineralisation;

/**
 * Bacteria that live on organic matter. They break its carbon down by first order and build part of it into new cells,
 * which stay with the matter. What nitrogen and phosphorus the carbon brought beyond the need of those cells is set free;
 * what it lacked is taken up from the water, so that a dose of carbon without nitrogen draws nitrate down.
 *
 * <pre>
 * broken down D = k (a + (1 - a) s) C,  breathed (1 - Y) k s C,  s = O/(K + O)
 * net release   = D (N/C) - Y D / (C:N), its sign that of the need
 * </pre>
 *
 * <p>Nitrate that is built into cells is reduced first, which spares the oxygen it brings.
 */
public final class Decay implements Mechanism {
    private final String name;
    private final Body matter;
    private final Body water;
    private final Parameter rate;
    private final Parameter phosphorusFactor;
    private final Recipe breathing;
    private final Recipe ammoniaSetFree;
    private final Recipe phosphateSetFree;
    private final Recipe ammoniaTaken;
    private final Recipe nitrateTaken;
    private final Recipe phosphateTaken;
    private final double growing;
    private final double nitrogenNeed;
    private final double phosphorusNeed;

    /**
     * Decay of one store of matter.
     *
     * @param matter the store: the water itself, or what lies on the ground
     * @param water around it
     * @param life what breathes
     * @param rate of the carbon, 1/s at 25 °C in well aired water
     * @param phosphorusFactor how much faster phosphorus goes than carbon
     * @param growing 1 where cells grow on fresh matter, 0 on what is left when they have gone through it
     */
    public Decay(
            String name,
            Body matter,
            Body water,
            Body life,
            Parameter rate,
            Parameter phosphorusFactor,
            @Unit("1") double growing) {
        this.name = name;
        this.matter = matter;
        this.water = water;
        this.rate = rate;
        this.phosphorusFactor = phosphorusFactor;
        this.growing = growing;
        double yield = CarbonDosing.YIELD.usual();
        double carbonToNitrogen = CarbonDosing.CARBON_TO_NITROGEN.usual();
        nitrogenNeed = CarbonDosing.nitrogenPerCarbon(yield, carbonToNitrogen);
        phosphorusNeed =
                CarbonDosing.phosphorusPerCarbon(yield, carbonToNitrogen, CarbonDosing.NITROGEN_TO_PHOSPHORUS.usual());
        breathing = Recipe.named("breathing of bacteria")
                .takes(matter, Stock.ORGANIC_CARBON, 1)
                .gives(water, Stock.INORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, water, life, Remineralisation.OXYGEN_PER_CARBON)
                .build();
        ammoniaSetFree = Recipe.named("ammonia set free")
                .takes(matter, Stock.ORGANIC_NITROGEN, 1)
                .gives(water, Stock.AMMONIA, 1)
                .build();
        phosphateSetFree = Recipe.named("phosphate set free")
                .takes(matter, Stock.ORGANIC_PHOSPHORUS, 1)
                .gives(water, Stock.PHOSPHATE, 1)
                .build();
        ammoniaTaken = taken(Stock.AMMONIA, Stock.ORGANIC_NITROGEN).build();
        nitrateTaken = taken(Stock.NITRATE, Stock.ORGANIC_NITROGEN)
                .moves(Stock.OXYGEN, life, water, CarbonDosing.OXYGEN_IN_NITRATE)
                .build();
        phosphateTaken = taken(Stock.PHOSPHATE, Stock.ORGANIC_PHOSPHORUS).build();
    }

    private Recipe.Builder taken(Stock dissolved, Stock organic) {
        return Recipe.named(dissolved + " taken up by bacteria")
                .takes(water, dissolved, 1)
                .gives(matter, organic, 1);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double carbon = now.stock(matter, Stock.ORGANIC_CARBON);
        if (!(carbon > 0)) {
            return;
        }
        double oxygen = now.oxygen(water);
        double full = Remineralisation.rate(now.value(rate), now.temperature(water));
        double specific = full
                * Remineralisation.share(
                        oxygen, Remineralisation.HALF_SATURATION.usual(), Remineralisation.WITHOUT_OXYGEN.usual());
        double brokenDown = specific * carbon;
        double aerobic = Remineralisation.aerobicShare(oxygen, Remineralisation.HALF_SATURATION.usual());
        double yield = growing * CarbonDosing.YIELD.usual();
        // Where there is no oxygen the matter still falls apart, but nothing breathes: fermentation is left out.
        out.run(breathing, (1 - yield) * full * aerobic * carbon);
        nitrogen(now, out, specific, growing * nitrogenNeed * brokenDown);
        phosphorus(now, out, specific, growing * phosphorusNeed * brokenDown);
    }

    private void nitrogen(View now, Transfers out, double specific, double need) {
        double freed = specific * Math.max(0, now.stock(matter, Stock.ORGANIC_NITROGEN));
        double net = freed - need;
        if (net >= 0) {
            out.run(ammoniaSetFree, net);
            return;
        }
        double ofAmmonia = Limitation.monod(
                now.concentration(water, Stock.AMMONIA), CarbonDosing.NITROGEN_HALF_SATURATION.usual());
        double ofNitrate = Limitation.monod(
                now.concentration(water, Stock.NITRATE), CarbonDosing.NITROGEN_HALF_SATURATION.usual());
        out.run(ammoniaTaken, -net * ofAmmonia);
        out.run(nitrateTaken, -net * (1 - ofAmmonia) * ofNitrate);
    }

    private void phosphorus(View now, Transfers out, double specific, double need) {
        double freed =
                now.value(phosphorusFactor) * specific * Math.max(0, now.stock(matter, Stock.ORGANIC_PHOSPHORUS));
        double net = freed - need;
        if (net >= 0) {
            out.run(phosphateSetFree, net);
        } else {
            double present = Limitation.monod(
                    now.concentration(water, Stock.PHOSPHATE), CarbonDosing.PHOSPHORUS_HALF_SATURATION.usual());
            out.run(phosphateTaken, -net * present);
        }
    }
}
