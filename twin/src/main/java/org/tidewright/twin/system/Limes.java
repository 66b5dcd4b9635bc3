package org.tidewright.twin.system;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.law.carbonate.Calcification;
import org.tidewright.twin.law.carbonate.Calcifier;
import org.tidewright.twin.law.carbonate.CalciumReactor;
import org.tidewright.twin.law.carbonate.Precipitation;
import org.tidewright.twin.mechanism.carbonate.Reactor;
import org.tidewright.twin.mechanism.carbonate.Scaling;
import org.tidewright.twin.mechanism.carbonate.SkeletonGrowth;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;
import org.tidewright.twin.tank.Water;

/** Lime: what corals and coralline algae lay down, what falls out, what a reactor dissolves. */
final class Limes {
    private static final String CORALS = "corals' skeletons";
    private static final String CORALLINE = "coralline algae";
    private static final String USE = "alkalinity use";
    private static final String MATCH = "skeletons, growth that makes up the stated use, factor";

    /** An electrode set with dilute buffers reads so much above the total scale in seawater; from memory. */
    private static final double METER_ABOVE_TOTAL = 0.13;

    /** Area seen from above over area of tissue where only tissue is stated; an estimate. */
    private static final double PLAN_OVER_TISSUE = 0.4;

    private final Plan plan;
    private final Network.Builder builder;
    private final Stated stated;
    private final Water water;
    private final Basins basins;
    private final Pools pools;
    private final Lamps lamps;
    private @Nullable Matched matched;

    /**
     * Skeletons that shall make up a stated use.
     *
     * @param factor on their growth; 1 lays down the whole use under the reference conditions of {@link Calcification}
     * @param use of alkalinity by the whole system, mol/s
     */
    record Matched(Parameter factor, Drawn use) {}

    Limes(
            Plan plan,
            Network.Builder builder,
            Stated stated,
            Levers levers,
            World world,
            Pools pools,
            Basins basins,
            Water water,
            PowerSupplies supplies,
            Lamps lamps,
            Setting corals) {
        this.plan = plan;
        this.builder = builder;
        this.stated = stated;
        this.water = water;
        this.basins = basins;
        this.pools = pools;
        this.lamps = lamps;
        if (plan.inhabitants() != null) {
            skeletons(plan.inhabitants(), corals, levers);
        }
        scaling();
        for (Gear gear : plan.gear()) {
            if (gear.reactor() != null) {
                reactor(gear, gear.reactor(), world, levers, supplies);
            }
        }
    }

    // ── skeletons ──

    private void skeletons(Inhabitants inhabitants, Setting corals, Levers levers) {
        double ofCorals = coralRate(inhabitants);
        Drawn area = stated.or("coralline algae, area", inhabitants.corallineArea(), "m^2", Drawn.exactly(0));
        Drawn ofCoralline = draw -> area.in(draw) * Calcifier.CORALLINE_ALGAE.rate();
        Setting coralline = levers.factor("coralline algae", "the plan's coralline algae");
        if (inhabitants.alkalinityUse() != null) {
            Drawn stated = use(inhabitants.alkalinityUse());
            double volume = systemVolume();
            Drawn use = draw -> stated.in(draw) * volume;
            Parameter factor = builder.parameter(
                    MATCH,
                    "1",
                    1,
                    1,
                    1,
                    Basis.YOUR_PLAN,
                    "found for each draw while it settles, so that the system uses what the plan states");
            matched = new Matched(factor, use);
            Drawn share = draw -> {
                double all = ofCorals + ofCoralline.in(draw);
                return all > 0 ? ofCorals / all : 1;
            };
            growth(
                    CORALS,
                    draw -> share.in(draw) * draw.value(factor) * use.in(draw) / 2,
                    Calcification.MAGNESIUM_IN_CORAL,
                    corals);
            growth(
                    CORALLINE,
                    draw -> (1 - share.in(draw)) * draw.value(factor) * use.in(draw) / 2,
                    Calcification.MAGNESIUM_IN_CORALLINE,
                    coralline);
        } else {
            growth(CORALS, byArea(CORALS, Drawn.exactly(ofCorals)), Calcification.MAGNESIUM_IN_CORAL, corals);
            growth(CORALLINE, byArea(CORALLINE, ofCoralline), Calcification.MAGNESIUM_IN_CORALLINE, coralline);
        }
    }

    /** A use that was measured counts as known to a tenth where its keeper gives no doubt. */
    private Drawn use(Amount measured) {
        double usual = measured.in("mol/(m^3*s)");
        return measured.doubt() > 0
                ? stated.of(USE, measured, "mol/(m^3*s)")
                : builder.parameter(
                        USE,
                        "mol/(m^3*s)",
                        usual,
                        0.9 * usual,
                        1.1 * usual,
                        Basis.YOUR_PLAN,
                        "as stated, without a doubt of its own: a tenth");
    }

    private Drawn byArea(String name, Drawn rate) {
        if (rate.usual() <= 0) {
            return rate;
        }
        Parameter factor = builder.parameter(
                name + ", growth by area, factor",
                "1",
                1,
                0.4,
                2,
                Basis.PUBLISHED,
                "field rates of Courtney et al. 2024 on the plan's areas, and how far they hold in captivity");
        return draw -> draw.value(factor) * rate.in(draw);
    }

    private void growth(String name, Drawn given, double magnesium, Setting extent) {
        if (given.usual() <= 0) {
            return;
        }
        Drawn rate = builder.derived(given);
        Parameter exponent = builder.parameter(
                name + ", exponent of saturation",
                "1",
                Calcification.EXPONENT_USUAL,
                Calcification.EXPONENT_LOW,
                Calcification.EXPONENT_HIGH,
                Basis.PUBLISHED,
                "Langdon and Atkinson 2005; Chan and Connolly 2013");
        Parameter ratio = builder.parameter(
                name + ", growth in the light over that in the dark",
                "1",
                Calcification.LIGHT_RATIO_USUAL,
                Calcification.LIGHT_RATIO_LOW,
                Calcification.LIGHT_RATIO_HIGH,
                Basis.FROM_MEMORY,
                "commonly 2–3");
        builder.add(new SkeletonGrowth(
                name, basins.display().body(), pools.skeletons(), lamps, magnesium, extent, rate, exponent, ratio));
    }

    private static double coralRate(Inhabitants inhabitants) {
        double sum = 0;
        for (Inhabitants.Coral coral : inhabitants.corals()) {
            @Nullable Calcifier calcifier = CALCIFIERS.get(coral.form());
            if (calcifier != null) {
                sum += coral.planArea().in("m^2") * calcifier.rate() * Calcification.CAPTIVITY_USUAL;
            }
        }
        if (inhabitants.corals().isEmpty() && inhabitants.coralTissue() != null) {
            double plan = PLAN_OVER_TISSUE * inhabitants.coralTissue().in("m^2");
            sum = plan * Calcifier.EUPHYLLIA.rate() * Calcification.CAPTIVITY_USUAL;
        }
        return sum;
    }

    private static final Map<CoralForm, Calcifier> CALCIFIERS = new EnumMap<>(Map.of(
            CoralForm.BRANCHING_ACROPORA, Calcifier.ACROPORA_BRANCHING,
            CoralForm.POCILLOPORA, Calcifier.POCILLOPORA,
            CoralForm.STYLOPHORA, Calcifier.STYLOPHORA,
            CoralForm.BRANCHING_MONTIPORA, Calcifier.MONTIPORA_BRANCHING,
            CoralForm.PLATING_MONTIPORA, Calcifier.MONTIPORA_PLATING,
            CoralForm.MASSIVE_PORITES, Calcifier.PORITES_MASSIVE,
            CoralForm.EUPHYLLIA, Calcifier.EUPHYLLIA,
            CoralForm.LOBOPHYLLIA, Calcifier.LOBOPHYLLIA,
            CoralForm.FAVITES, Calcifier.FAVITES));

    /** What is to be matched; null where no use is stated. */
    @Nullable
    Matched matched() {
        return matched;
    }

    private @Unit("m^3") double systemVolume() {
        return basins.all().stream().mapToDouble(Basins.Basin::volume).sum();
    }

    // ── scale and reactor ──

    private void scaling() {
        Parameter bare = builder.parameter(
                "lime that falls out, bare surface",
                "1/m",
                Precipitation.BARE_USUAL,
                Precipitation.BARE_LOW,
                Precipitation.BARE_HIGH,
                Basis.FROM_MEMORY,
                "what heaters, pumps and bare sand offer; an estimate");
        Parameter fine = builder.parameter(
                "lime that falls out, surface of a runaway's particles",
                "1/m",
                Precipitation.FINE_USUAL,
                Precipitation.FINE_LOW,
                Precipitation.FINE_HIGH,
                Basis.PUBLISHED,
                "runaway above a saturation of 7 (Moras et al. 2022); rate 1–5 meq/L a day");
        for (Basins.Basin basin : basins.all()) {
            builder.add(new Scaling(basin.body(), pools.scale(), bare, fine));
        }
    }

    private void reactor(Gear gear, Gear.Reactor described, World world, Levers levers, PowerSupplies supplies) {
        Body into = basins.holding(gear.standsIn(), plan);
        Setting effluent = levers.amount(
                gear.name() + " effluent",
                "water that leaves it",
                "m^3/s",
                described.effluent().in("m^3/s"));
        Parameter rate = builder.parameter(
                gear.name() + ", rate constant of its media",
                "m^3/(kg*s)",
                CalciumReactor.RATE_USUAL,
                CalciumReactor.RATE_LOW,
                CalciumReactor.RATE_HIGH,
                Basis.FROM_MEMORY,
                "effluent of 15–40 dKH from usual reactors");
        builder.add(new Reactor(
                gear.name(),
                into,
                world.store(),
                CalciumReactor.at(water.temperature(), water.salinity()),
                described.chamberPh().in("1") - METER_ABOVE_TOTAL,
                described.mediaMass().in("kg"),
                effluent,
                rate,
                supplies.of(gear.name())));
    }
}
