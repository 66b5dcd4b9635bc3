package org.tidewright.twin.system;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.law.biota.Carrion;
import org.tidewright.twin.law.biota.Digestion;
import org.tidewright.twin.law.biota.Hunger;
import org.tidewright.twin.law.gas.ReefRespiration;
import org.tidewright.twin.law.nutrient.MicroalgalBloom;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.law.nutrient.Spread;
import org.tidewright.twin.mechanism.biota.CarrionDecay;
import org.tidewright.twin.mechanism.biota.Fish;
import org.tidewright.twin.mechanism.biota.FreeAlgae;
import org.tidewright.twin.mechanism.biota.LitCommunity;
import org.tidewright.twin.mechanism.biota.Starvation;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.mechanism.light.LitDay;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;

/** What lives in the display: its fish, its corals, the turf on rock and sand, algae nobody planted, and the dead. */
final class Life {
    private static final double DAY = 86_400;

    /** Clear tank water, 0.1 to 0.6 per metre; from memory. */
    private static final double ATTENUATION = 0.25;

    /** A community whose reserve lasts two hours burns half as much; an estimate. */
    private static final double SCARCE = DAY / 12;

    private static final Spread LIGHT_SHARE = new Spread(
            ReefRespiration.LIGHT_SHARE_LOW, ReefRespiration.LIGHT_SHARE_USUAL, ReefRespiration.LIGHT_SHARE_HIGH);

    /** Beyond what is drawn of the light at which production bends over. */
    private static final double FAR = 4;

    private final Network.Builder builder;
    private final Doubt doubt;
    private final World world;
    private final Pools pools;
    private final Body water;
    private final Lamps lamps;
    private final Shoal shoal;
    private final Setting corals;
    private final Map<Body, LitCommunity.Rates> communities = new LinkedHashMap<>();

    Life(Plan plan, Network.Builder builder, World world, Pools pools, Basins basins, Lamps lamps, Levers levers) {
        this.builder = builder;
        this.doubt = new Doubt(builder);
        this.world = world;
        this.pools = pools;
        this.lamps = lamps;
        water = basins.display().body();
        shoal = Shoal.of(plan.inhabitants());
        corals = levers.factor("corals", "the plan's corals");
        if (plan.inhabitants() != null) {
            fish();
            new Stocking(builder, levers, world, pools);
            coralCommunity(plan.inhabitants());
        }
        turf(plan);
        freeAlgae(basins.display(), levers.factor("grazers", "snails and filters that clear free algae"));
        builder.add(new CarrionDecay(
                pools.carrion(),
                water,
                doubt.of(
                        "dead animals, half-time of falling apart",
                        "s",
                        Carrion.HALF_TIME,
                        Basis.FROM_MEMORY,
                        "0.8–5 days at 25 °C")));
    }

    /** Also where the plan names none: some may be put in. */
    private void fish() {
        Fish.Doubts doubts = new Fish.Doubts(
                doubt.of(
                        "fish, rate of stomach and gut",
                        "1/s",
                        Digestion.STAGE,
                        Basis.PUBLISHED,
                        "excretion peaks 3–6 h after a meal: Porter et al. 1987, Lee et al. 2015"),
                builder.parameter(
                        "fish, breath below which they burn themselves, factor on resting",
                        "1",
                        1.2,
                        1.0,
                        1.5,
                        Basis.FROM_MEMORY,
                        "resting rates: Clarke and Johnston 1999"),
                doubt.of(
                        "fish, ammonia's share of excreted nitrogen",
                        "1",
                        Digestion.AMMONIA_SHARE,
                        Basis.PUBLISHED,
                        "over 0.85 in croaker (Cai et al. 2016), half in sea bream (Porter et al. 1987)"),
                doubt.of(
                        "fish, share of droppings that rots soon",
                        "1",
                        Remineralisation.LABILE_SHARE,
                        Basis.FROM_MEMORY,
                        "60 : 40"));
        Fish.Places places = new Fish.Places(
                water, pools.stomach(), pools.gut(), pools.reserve(), pools.fish(), pools.ground(), world.life());
        builder.add(new Fish(places, shoal.diet(), shoal.measures(), doubts));
        builder.add(new Starvation(
                water,
                pools.fish(),
                List.of(pools.stomach(), pools.gut(), pools.reserve()),
                pools.carrion(),
                doubt.of(
                        "fish, condition at which the starving die",
                        "1",
                        Hunger.LETHAL,
                        Basis.PUBLISHED,
                        "trout lived at 0.68 (Weatherley and Gill 1981), cod died at half (Dutil and Lambert 2000)")));
    }

    private void coralCommunity(Inhabitants inhabitants) {
        double tissue = inhabitants.coralTissue() == null
                ? 0
                : inhabitants.coralTissue().in("m^2");
        if (tissue > 0) {
            Parameter breathing = builder.parameter(
                    "corals, breathing in the dark",
                    "mol/s",
                    tissue * ReefRespiration.CORAL,
                    0.5 * tissue * ReefRespiration.CORAL,
                    2.5 * tissue * ReefRespiration.CORAL,
                    Basis.FROM_MEMORY,
                    "0.6 µmol/cm²/h of tissue, 0.3–1.5");
            Parameter ratio = builder.parameter(
                    "corals, production of a day over breathing",
                    "1",
                    1.1,
                    0.85,
                    1.6,
                    Basis.FROM_MEMORY,
                    "1 to 1.5 in shallow water; 0.79–0.89 at 9–18 m (Helgol. Wiss. Meeresunters. 1977)");
            Parameter grown = builder.parameter(
                    "corals, share of the surplus that becomes tissue",
                    "1",
                    0.15,
                    0.03,
                    0.4,
                    Basis.FROM_MEMORY,
                    "growth takes a few percent of what is made, mucus several times that");
            LitCommunity.Growth growth = new LitCommunity.Growth(pools.coralTissue(), grown);
            community("corals", pools.corals(), breathing, ratio, corals, growth);
        }
    }

    private void turf(Plan plan) {
        double rock = plan.display().rock() == null
                ? 0
                : plan.display().rock().dryMass().in("kg");
        double bed = plan.display().sand() == null
                ? 0
                : plan.display().length().in("m") * plan.display().width().in("m");
        double rate = rock * ReefRespiration.ROCK + bed * ReefRespiration.SAND;
        if (rate > 0) {
            Parameter breathing = doubt.of(
                    "turf on rock and sand, breathing in the dark",
                    "mol/s",
                    new Spread(0.5, 1, 2).times(LIGHT_SHARE).times(rate),
                    Basis.FROM_MEMORY,
                    "half (0.2–0.9) of rock's 0.6 mg/kg/h and sand's 40 mmol/m² a day, themselves within a factor of two");
            Parameter ratio = builder.parameter(
                    "turf on rock and sand, production of a day over breathing",
                    "1",
                    1.0,
                    0.8,
                    1.3,
                    Basis.PUBLISHED,
                    "reef sands 1.0–1.1, below 1 in winter on fine sand (Johnstone, Koop and Larkum 1990)");
            community("turf on rock and sand", pools.turf(), breathing, ratio, builder.setting("turf", 1), null);
        }
    }

    private void community(
            String name,
            Body reserve,
            Parameter breathing,
            Parameter ratio,
            Setting extent,
            LitCommunity.@Nullable Growth growth) {
        Parameter saturation = builder.parameter(
                name + ", light at which production bends over",
                "mol/(m^2*s)",
                150e-6,
                80e-6,
                300e-6,
                Basis.FROM_MEMORY,
                "corals of moderate depth 100–300 µmol/m²/s");
        Parameter shedding = builder.parameter(
                name + ", share of reserves that is surplus",
                "1/s",
                0.1 / DAY,
                0.05 / DAY,
                0.3 / DAY,
                Basis.FROM_MEMORY,
                "corals shed a tenth to a half of what they make");
        LitCommunity.Rates rates = new LitCommunity.Rates(breathing, ratio, saturation, shedding, SCARCE);
        LitDay day = new LitDay(lamps, saturation.low() / FAR, saturation.high() * FAR);
        LitCommunity.Places places = new LitCommunity.Places(water, reserve, world.life());
        builder.add(new LitCommunity(name, places, rates, lamps, day, extent, growth));
        communities.put(reserve, rates);
    }

    private void freeAlgae(Basins.Basin display, Setting grazers) {
        builder.add(new FreeAlgae(
                water,
                pools.freeAlgae(),
                pools.ground(),
                world.life(),
                lamps,
                display.vessel().shape().level(display.volume()),
                ATTENUATION,
                doubt.of(
                        "free algae, growth",
                        "1/s",
                        MicroalgalBloom.GROWTH,
                        Basis.PUBLISHED,
                        "below the ceiling of Eppley 1972"),
                doubt.of("free algae, death", "1/s", MicroalgalBloom.DEATH, Basis.FROM_MEMORY, "0.02–0.2 a day"),
                doubt.of(
                        "free algae, what grazers and filters clear",
                        "1/s",
                        MicroalgalBloom.CLEARANCE,
                        Basis.FROM_MEMORY,
                        "0.2–5 times the water a day"),
                grazers));
    }

    /** Fish as the plan states them, as fat as they are bought. */
    void stock(State state) {
        state.set(pools.fish(), Stock.ORGANIC_CARBON, shoal.mass() * BodyComposition.CARBON)
                .set(pools.fish(), Stock.ORGANIC_NITROGEN, shoal.mass() * BodyComposition.NITROGEN)
                .set(pools.fish(), Stock.ORGANIC_PHOSPHORUS, shoal.mass() * BodyComposition.PHOSPHORUS);
    }

    /** Reserves where they rest, of fish that are fed and of communities in the plan's light. */
    void rest(State state, @Unit("*") double[] parameters, Ration fed) {
        state.set(
                pools.reserve(),
                Stock.ORGANIC_CARBON,
                DAY * fed.carbon() * shoal.ofThePlan().carbon().excreted());
        communities.forEach(
                (reserve, rates) -> state.set(reserve, Stock.ORGANIC_CARBON, rates.reserveAtRest(parameters)));
    }

    /** What becomes of the food of its fish. */
    Fish.Diet diet() {
        return shoal.ofThePlan();
    }

    /** Setting: corals of the plan, 1 for all. */
    Setting corals() {
        return corals;
    }
}
