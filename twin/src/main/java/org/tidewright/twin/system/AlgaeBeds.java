package org.tidewright.twin.system;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Draw;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.law.biota.MacroalgaeGrowth;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.mechanism.biota.Macroalgae;
import org.tidewright.twin.mechanism.light.Lamps;
import org.tidewright.twin.mechanism.light.LitDay;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;

/** Macroalgae grown for harvest, in the refugium or under a lamp over a section of the sump. */
final class AlgaeBeds {
    private static final double DAY = 86_400;

    /** What the plan says stands there is at most so much of what could, or the plan's bed would hardly grow; an estimate. */
    private static final double STANDING_OF_GREATEST = 0.8;

    /** A harvest is known to a fifth; common practice. */
    private static final double HARVEST_LOW = 1 / 1.2;

    private static final double HARVEST_HIGH = 1.2;

    /** Drawn apart, what is left and what stands may come close; some growth there was. */
    private static final double LEAST_GROWTH = 0.95;

    private final Network.Builder builder;
    private final KeptWater kept;
    private final double temperature;
    private final Levers levers;
    private final Doubt doubt;
    private final Stated stated;
    private final World world;
    private final Pools pools;
    private final Map<Body, Drawn> nitrogen = new LinkedHashMap<>();

    AlgaeBeds(
            Plan plan,
            Network.Builder builder,
            Stated stated,
            KeptWater.InDraw kept,
            Levers levers,
            World world,
            Pools pools,
            Basins basins,
            LightPlan lamps) {
        this.builder = builder;
        this.kept = kept.in(Draw.USUAL);
        temperature = plan.water().temperature().in("degC");
        this.stated = stated;
        this.levers = levers;
        this.doubt = new Doubt(builder);
        this.world = world;
        this.pools = pools;
        if (plan.refugium() != null && plan.refugium().algae() != null) {
            bed(
                    plan.refugium().name(),
                    plan.refugium().algae(),
                    requireNonNull(basins.refugium()).body(),
                    lamps);
        }
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                if (section.algae() != null) {
                    bed(
                            section.name(),
                            section.algae(),
                            requireNonNull(basins.sump()).body(),
                            lamps);
                }
            }
        }
    }

    private void bed(String place, Algae described, Body water, LightPlan lamps) {
        Lamps over = lamps.over(place);
        Body algae = builder.pool(
                "algae in the " + place, Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
        Drawn mass = stated.of("algae in the " + place + ", wet mass", described.wetMass(), "kg");
        nitrogen.put(algae, draw -> nitrogenOf(mass.in(draw)));
        double area = described.litArea().in("m^2");
        Setting litArea = levers.amount(place + " lit area", "algae under the light", "m^2", area);
        Parameter perArea = doubt.of(
                "algae in the " + place + ", greatest dry mass on a lit area",
                "kg/m^2",
                MacroalgaeGrowth.GREATEST,
                Basis.FROM_MEMORY,
                "2–4 kg wet to the square metre");
        Drawn standing = draw -> mass.in(draw) * MacroalgaeGrowth.DRY.usual();
        Drawn greatest = builder.derived(
                draw -> Math.max(draw.value(perArea), standing.in(draw) / (STANDING_OF_GREATEST * area)));
        Parameter loss = doubt.of(
                "algae in the " + place + ", loss", "1/s", MacroalgaeGrowth.LOSS, Basis.FROM_MEMORY, "0.01–0.04 a day");
        Parameter saturation = doubt.of(
                "algae in the " + place + ", light saturation",
                "mol/(m^2*s)",
                MacroalgaeGrowth.LIGHT_SATURATION,
                Basis.FROM_MEMORY,
                "80–120 µmol/m²/s");
        Drawn left = leftStanding(place, described, mass);
        Drawn growth =
                growth(place, described, over, standing, left, draw -> area * greatest.in(draw), loss, saturation);
        builder.add(new Macroalgae(
                "algae in the " + place,
                water,
                algae,
                pools.ground(),
                world.life(),
                over,
                litArea,
                greatest,
                growth,
                loss,
                saturation));
        if (described.harvestedEvery() != null) {
            harvest(place, described, algae, left);
        }
    }

    /** What the plan's harvests tell under its light and in its water; where it tells of none, what was measured elsewhere. */
    private Drawn growth(
            String place,
            Algae described,
            Lamps over,
            Drawn standing,
            Drawn leftWet,
            Drawn greatest,
            Parameter loss,
            Parameter saturation) {
        LitDay day = new LitDay(over, saturation.low() / 4, saturation.high() * 4);
        double inTheWater = MacroalgaeGrowth.warmth(temperature, MacroalgaeGrowth.BEST_TEMPERATURE)
                * MacroalgaeGrowth.limitation(
                        1,
                        MacroalgaeGrowth.LIGHT_SATURATION.usual(),
                        kept.ammonia() + kept.nitrate(),
                        kept.phosphate());
        double allowed = day.share(saturation.usual()) * inTheWater;
        boolean grows = leftWet.usual() * MacroalgaeGrowth.DRY.usual() < standing.usual();
        if (described.harvestedEvery() == null || !grows || !(allowed > 0)) {
            return doubt.of(
                    "algae in the " + place + ", growth",
                    "1/s",
                    MacroalgaeGrowth.GROWTH,
                    Basis.PUBLISHED,
                    "0.11–0.13 a day on nitrogen pulses (Menéndez 2005)");
        }
        double interval = described.harvestedEvery().in("s");
        Parameter harvest = builder.parameter(
                "algae in the " + place + ", growth by its harvest, factor",
                "1",
                1,
                HARVEST_LOW,
                HARVEST_HIGH,
                Basis.YOUR_PLAN,
                "as its harvests tell, to a fifth");
        double warm = Q10.factor(Q10.COMMUNITY, temperature, MacroalgaeGrowth.BEST_TEMPERATURE);
        return builder.derived(draw -> {
            double most = greatest.in(draw);
            double now = standing.in(draw);
            double left = Math.min(leftWet.in(draw) * MacroalgaeGrowth.DRY.usual(), LEAST_GROWTH * now);
            double made = MacroalgaeGrowth.ofHarvest(left, now - left, interval, most - now, draw.value(loss) * warm);
            double lit = day.share(draw.value(saturation)) * inTheWater / Macroalgae.LIT_SHARE_OF_MEASUREMENTS;
            return Math.min(MacroalgaeGrowth.FASTEST, draw.value(harvest) * made / lit);
        });
    }

    /** Wet mass: half of what stands where the plan does not say. */
    private Drawn leftStanding(String place, Algae described, Drawn mass) {
        return stated.or(
                "algae in the " + place + ", left standing", described.leftStanding(), "kg", draw -> mass.in(draw) / 2);
    }

    private void harvest(String place, Algae described, Body algae, Drawn leftStanding) {
        int days = (int) Math.max(
                1, Math.round(requireNonNull(described.harvestedEvery()).in("s") / DAY));
        builder.add(new Routine("harvest in the " + place, Routine.daily(DAY / 2, days), (now, switches) -> {
            double left = nitrogenOf(leftStanding.in(now));
            double standing = now.stock(algae, Stock.ORGANIC_NITROGEN);
            double share = standing > left ? 1 - left / standing : 0;
            Transfers out = switches.atOnce();
            for (Stock stock : new Stock[] {Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS}) {
                out.move(stock, algae, world.waste(), share * now.stock(algae, stock));
            }
        }));
    }

    private static double nitrogenOf(double wetMass) {
        return Macroalgae.nitrogenOf(wetMass * MacroalgaeGrowth.DRY.usual());
    }

    void fill(State state, Draw draw) {
        nitrogen.forEach((body, drawn) -> {
            double standing = drawn.in(draw);
            state.set(body, Stock.ORGANIC_NITROGEN, standing);
            state.set(body, Stock.ORGANIC_CARBON, standing * Macroalgae.TISSUE.carbon());
            state.set(body, Stock.ORGANIC_PHOSPHORUS, standing * Macroalgae.TISSUE.phosphorus());
        });
    }
}
