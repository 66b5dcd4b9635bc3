package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.CarbonDosing;
import org.tidewright.twin.law.nutrient.Limitation;

/**
 * Bacteria that grow on acetate dosed to the water. They take nitrogen and phosphorus as they grow and breathe what they do
 * not build in; dead ones are waste afloat, which rots, settles or is skimmed.
 *
 * <pre>
 * growth = mu B C/(K_C + C) N/(K_N + N) P/(K_P + P) O/(K_O + O) 2^((T - 25)/10), B their carbon, growth/Y eaten
 * death  = d B 2^((T - 25)/10)
 * </pre>
 */
public final class CarbonFedBacteria implements Mechanism {
    private static final String NAME = "bacteria on dosed carbon";
    private static final double REFERENCE = 25; // degC
    private static final double YIELD = CarbonDosing.YIELD.usual();
    private static final double CARBON_TO_NITROGEN = CarbonDosing.CARBON_TO_NITROGEN.usual();

    private final Body water;
    private final Body dose;
    private final Body cells;
    private final Parameter growth;
    private final Parameter loss;
    private final double systemVolume;
    private final Recipe onAmmonia;
    private final Recipe onNitrate;

    /**
     * Them and their food, spread evenly over the system.
     *
     * @param water whose nitrogen, phosphorus and oxygen they live on
     * @param dose what is left of the dosed carbon
     * @param life what breathes
     * @param growth mu
     * @param loss d
     * @param systemVolume that the dosed carbon is spread over
     */
    public CarbonFedBacteria(
            Body water,
            Body dose,
            Body cells,
            Body life,
            Parameter growth,
            Parameter loss,
            @Unit("m^3") double systemVolume) {
        this.water = water;
        this.dose = dose;
        this.cells = cells;
        this.growth = growth;
        this.loss = loss;
        this.systemVolume = systemVolume;
        onAmmonia = eating(life, Stock.AMMONIA, 0);
        onNitrate = eating(life, Stock.NITRATE, 1);
    }

    /** One mole of acetate's carbon eaten. */
    private Recipe eating(Body life, Stock nitrogen, double nitrateShare) {
        double ofNitrogen = CarbonDosing.nitrogenPerCarbon(YIELD, CARBON_TO_NITROGEN);
        double ofPhosphorus = CarbonDosing.phosphorusPerCarbon(
                YIELD, CARBON_TO_NITROGEN, CarbonDosing.NITROGEN_TO_PHOSPHORUS.usual());
        double oxygen =
                CarbonDosing.oxygenPerCarbon(CarbonDosing.OXYGEN_OF_ACETATE, YIELD, CARBON_TO_NITROGEN, nitrateShare);
        return Recipe.named("growth on dosed carbon and " + nitrogen)
                .takes(dose, Stock.ORGANIC_CARBON, 1)
                .gives(cells, Stock.ORGANIC_CARBON, YIELD)
                .gives(water, Stock.INORGANIC_CARBON, 1 - YIELD)
                .moves(Stock.OXYGEN, water, life, oxygen)
                .takes(water, nitrogen, ofNitrogen)
                .gives(cells, Stock.ORGANIC_NITROGEN, ofNitrogen)
                .takes(water, Stock.PHOSPHATE, ofPhosphorus)
                .gives(cells, Stock.ORGANIC_PHOSPHORUS, ofPhosphorus)
                .build();
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public void act(View now, Transfers out) {
        double living = Math.max(0, now.stock(cells, Stock.ORGANIC_CARBON));
        if (living <= 0) {
            return;
        }
        double carbon = Math.max(0, now.stock(dose, Stock.ORGANIC_CARBON)) / systemVolume;
        double ammonia = Math.max(0, now.concentration(water, Stock.AMMONIA));
        double nitrate = Math.max(0, now.concentration(water, Stock.NITRATE));
        double temperature = now.temperature(water);
        double eaten = living
                / YIELD
                * CarbonDosing.growth(
                        now.value(growth),
                        carbon,
                        ammonia + nitrate,
                        Math.max(0, now.concentration(water, Stock.PHOSPHATE)),
                        now.oxygen(water),
                        temperature);
        double ofAmmonia = Limitation.monod(ammonia, CarbonDosing.NITROGEN_HALF_SATURATION.usual());
        out.run(onAmmonia, eaten * ofAmmonia);
        out.run(
                onNitrate,
                eaten * (1 - ofAmmonia) * Limitation.monod(nitrate, CarbonDosing.NITROGEN_HALF_SATURATION.usual()));
        double dying = now.value(loss) * Q10.factor(Q10.COMMUNITY, temperature, REFERENCE);
        for (Stock stock : cells.held()) {
            out.move(stock, cells, water, dying * now.stock(cells, stock));
        }
    }
}
