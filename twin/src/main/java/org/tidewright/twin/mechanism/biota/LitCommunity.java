package org.tidewright.twin.mechanism.biota;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.Limitation;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.mechanism.light.LitDay;

/**
 * What makes its food in the light and breathes day and night: corals with their algae, the turf on living rock. It keeps
 * a reserve of carbon, burns it, and sheds of it what it has too much of as mucus. Where it grows, part of that surplus
 * becomes tissue instead, as far as there is nitrogen and phosphorus for it.
 *
 * <pre>
 * production = R min(8, ratio/L) tanh(I/I_k), R the breath of the fed in well-aired water,
 *              L the mean of tanh(I/I_k) over the plan's day
 * breathing  = R air B/(B + scarce)
 * surplus    = s B
 * </pre>
 */
public final class LitCommunity implements Mechanism {
    /** Tissue of a coral with its algae, C:N 7 and N:P 20; from memory. */
    private static final Composition TISSUE = new Composition(7, 1.0 / 20);

    /** Nitrogen and phosphorus at which half the tissue is built: corals take nitrate up fully at 3 µmol/L (Badgley 2006). */
    private static final double NITROGEN_HALF_SATURATION = 1e-3;

    /** A tenth of it; from memory. */
    private static final double PHOSPHORUS_HALF_SATURATION = 1e-4;

    /** Production in plenty of light over dark breath, 2 to 8; from memory. Under light too dim for that no day balances. */
    private static final double UTMOST = 8;

    private static final double REFERENCE = 26;

    private final String name;
    private final Places places;
    private final Rates rates;
    private final Lamps lamps;
    private final LitDay day;
    private final Setting extent;
    private final @Nullable Growth growth;
    private final Recipe production;
    private final Recipe breathing;
    private final @Nullable Recipe onAmmonia;
    private final @Nullable Recipe onNitrate;

    /**
     * Where it lives.
     *
     * @param reserve its stores of carbon
     * @param life what breathes
     */
    public record Places(Body water, Body reserve, Body life) {}

    /**
     * How fast it lives, all of it together at 26 °C.
     *
     * @param breathing in the dark, fed, in well-aired water, mol/s of oxygen
     * @param ratio production of a day of the plan's light, before breathing, over a day of breathing
     * @param saturation light at which production bends over, mol/(m²·s)
     * @param shedding share of the reserve that is surplus, 1/s
     * @param scarce reserve at which it can only burn half as much, as time it lasts
     */
    public record Rates(
            Parameter breathing,
            Parameter ratio,
            Parameter saturation,
            Parameter shedding,
            @Unit("s") double scarce) {
        /**
         * The reserve at which a day's breath and surplus together take what is made.
         *
         * <pre>r = B/(B + z) + s B, B and scarce z as times the breath lasts</pre>
         */
        public @Unit("mol") double reserveAtRest(@Unit("*") double[] parameters) {
            double made = parameters[ratio.index()];
            double shed = parameters[shedding.index()];
            double half = (made - 1 - shed * scarce) / 2;
            return parameters[breathing.index()] * (half + Math.sqrt(half * half + shed * made * scarce)) / shed;
        }
    }

    /**
     * How it grows.
     *
     * @param tissue what it has grown since the run began
     * @param share of the surplus that becomes tissue with plenty of nitrogen and phosphorus
     */
    public record Growth(Body tissue, Parameter share) {}

    /**
     * A community.
     *
     * @param lamps that shine on it
     * @param day of those lamps
     * @param extent setting: 1 for all of it, less after a loss, more as it grows
     * @param growth null where what grows is eaten at once and comes back
     */
    public LitCommunity(
            String name, Places places, Rates rates, Lamps lamps, LitDay day, Setting extent, @Nullable Growth growth) {
        this.name = name;
        this.places = places;
        this.rates = rates;
        this.lamps = lamps;
        this.day = day;
        this.extent = extent;
        this.growth = growth;
        production = Recipe.named("production of " + name)
                .takes(places.water(), Stock.INORGANIC_CARBON, 1)
                .gives(places.reserve(), Stock.ORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, places.life(), places.water(), 1)
                .build();
        breathing = Recipe.named("breathing of " + name)
                .takes(places.reserve(), Stock.ORGANIC_CARBON, 1)
                .gives(places.water(), Stock.INORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, places.water(), places.life(), 1)
                .build();
        onAmmonia = growth == null ? null : tissue(growth.tissue(), Stock.AMMONIA, 0);
        onNitrate = growth == null ? null : tissue(growth.tissue(), Stock.NITRATE, PlantRecipes.OXYGEN_OF_NITRATE);
    }

    private Recipe tissue(Body tissue, Stock nitrogen, double oxygen) {
        return Recipe.named("tissue of " + name + " on " + nitrogen)
                .moves(Stock.ORGANIC_CARBON, places.reserve(), tissue, TISSUE.carbon())
                .takes(places.water(), nitrogen, 1)
                .gives(tissue, Stock.ORGANIC_NITROGEN, 1)
                .takes(places.water(), Stock.PHOSPHATE, TISSUE.phosphorus())
                .gives(tissue, Stock.ORGANIC_PHOSPHORUS, TISSUE.phosphorus())
                .moves(Stock.OXYGEN, places.life(), places.water(), oxygen)
                .build();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double reserve = Math.max(0, now.stock(places.reserve(), Stock.ORGANIC_CARBON));
        double breath = now.value(extent) * now.value(rates.breathing());
        double pace = breath * Q10.factor(Q10.COMMUNITY, now.temperature(places.water()), REFERENCE);
        double light = lamps.light(now);
        if (light > 0) {
            double saturation = now.value(rates.saturation());
            double capacity = Math.min(UTMOST, now.value(rates.ratio()) / day.share(saturation))
                    * PlantRecipes.carbonLeft(now, places.water());
            out.run(production, pace * capacity * Limitation.light(light, saturation));
        }
        double air = OxygenLimitation.ofAired(now.oxygen(places.water()));
        double fed = reserve > 0 ? reserve / (reserve + breath * rates.scarce()) : 0;
        out.run(breathing, pace * air * fed);
        double surplus = now.value(rates.shedding()) * reserve;
        out.move(Stock.ORGANIC_CARBON, places.reserve(), places.water(), surplus - grow(surplus, now, out));
    }

    /** Turns part of the surplus into tissue and tells its carbon. */
    private double grow(double surplus, View now, Transfers out) {
        if (growth == null || onAmmonia == null || onNitrate == null) {
            return 0;
        }
        double ammonia = now.concentration(places.water(), Stock.AMMONIA);
        double present = ammonia + now.concentration(places.water(), Stock.NITRATE);
        double wanted = surplus
                * now.value(growth.share())
                * Limitation.monod(present, NITROGEN_HALF_SATURATION)
                * Limitation.monod(now.concentration(places.water(), Stock.PHOSPHATE), PHOSPHORUS_HALF_SATURATION);
        double ofAmmonia = wanted * PlantRecipes.onAmmonia(now, places.water());
        double ofNitrate = wanted * PlantRecipes.onNitrate(now, places.water());
        out.run(onAmmonia, ofAmmonia / TISSUE.carbon());
        out.run(onNitrate, ofNitrate / TISSUE.carbon());
        return ofAmmonia + ofNitrate;
    }
}
