package org.tidewright.twin.mechanism.biota;

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

/**
 * What makes its food in the light and breathes day and night: corals with their algae, the turf on living rock. It keeps
 * a reserve of carbon, burns it, and sheds what it has too much of as mucus.
 */
public final class LitCommunity implements Mechanism {
    private final String name;
    private final Places places;
    private final Rates rates;
    private final Lamps lamps;
    private final Setting extent;
    private final Recipe production;
    private final Recipe breathing;

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
     * @param breathing in the dark, mol/s of oxygen
     * @param production in plenty of light, mol/s of oxygen, before breathing
     * @param saturation light at which production bends over, mol/(m²·s)
     * @param shedding share of the reserve shed, 1/s
     * @param scarce reserve at which it can only burn half as much, mol
     */
    public record Rates(
            Parameter breathing,
            Parameter production,
            Parameter saturation,
            Parameter shedding,
            @Unit("mol") double scarce) {}

    /**
     * A community.
     *
     * @param lamps that shine on it
     * @param extent setting: 1 for all of it, less after a loss, more as it grows
     */
    public LitCommunity(String name, Places places, Rates rates, Lamps lamps, Setting extent) {
        this.name = name;
        this.places = places;
        this.rates = rates;
        this.lamps = lamps;
        this.extent = extent;
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
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double size = now.value(extent);
        double reserve = Math.max(0, now.stock(places.reserve(), Stock.ORGANIC_CARBON));
        double warmth = Q10.factor(Q10.COMMUNITY, now.temperature(places.water()), 26);
        double light = lamps.light(now);
        out.run(
                production,
                size * now.value(rates.production()) * warmth * Limitation.light(light, now.value(rates.saturation())));
        double air = OxygenLimitation.share(now.oxygen(places.water()), OxygenLimitation.HALF_SATURATION);
        double fed = reserve / (reserve + size * rates.scarce());
        out.run(breathing, size * now.value(rates.breathing()) * warmth * air * fed);
        out.move(Stock.ORGANIC_CARBON, places.reserve(), places.water(), now.value(rates.shedding()) * reserve);
    }
}
