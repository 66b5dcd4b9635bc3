package org.tidewright.twin.system;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.Limewater;
import org.tidewright.twin.law.nutrient.CarbonDosing;
import org.tidewright.twin.mechanism.nutrient.CarbonFedBacteria;
import org.tidewright.twin.mechanism.water.SteadyDose;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;

/** Solutions that are dosed, in pulses or spread, and the bacteria that live on those of organic carbon. */
final class Dosing {
    private static final double DAY = 86_400;

    private final @Nullable Eaters eaters;

    /**
     * Bacteria that live on what is dosed of organic carbon.
     *
     * @param dose what they have not yet eaten
     * @param usual carbon of the cells that the plan's doses keep alive
     */
    private record Eaters(
            Body dose, Body cells, @Unit("mol") double usual) {}

    /**
     * A solution on its way into a water, its organic carbon to those who eat it.
     *
     * @param mains setting: 1 while the pumps have power
     */
    private record Poured(
            Brew solution,
            double organicCarbon,
            World world,
            Body into,
            @Nullable Eaters eaters,
            Setting mains) {
        void pour(View now, Transfers out, double wanted) {
            double volume = now.value(mains) * wanted;
            solution.pour(out, world.store(), into, volume);
            if (eaters != null && organicCarbon > 0) {
                out.move(Stock.ORGANIC_CARBON, world.store(), eaters.dose(), volume * organicCarbon);
            }
        }
    }

    /**
     * What a plan doses.
     *
     * @param mains setting: 1 while the pumps have power
     */
    Dosing(Plan plan, Network.Builder builder, Levers levers, World world, Basins basins, Setting mains) {
        eaters = eaters(plan, builder, world, basins);
        double temperature = plan.room().temperature().in("degC");
        for (org.tidewright.plan.model.Dosing dosed : plan.dosing()) {
            Body into = basins.holding(dosed.into(), plan);
            double moles = strength(dosed, temperature);
            Poured solution = new Poured(
                    new Brew(contentOf(dosed.salt(), moles, temperature * builder.heatPerVolume())),
                    moles * dosed.salt().organicCarbon(),
                    world,
                    into,
                    eaters,
                    mains);
            Setting perDay = levers.amount(
                    dosed.name() + " dose",
                    "solution dosed over a day",
                    "m^3/s",
                    dosed.perDay().in("m^3/s"));
            if (dosed.times().isEmpty()) {
                spread(dosed, builder, solution, perDay);
            } else {
                for (LocalTime time : dosed.times()) {
                    int pulses = dosed.times().size();
                    builder.add(new Routine(
                            dosed.name(),
                            Routine.daily(time.toSecondOfDay(), 1),
                            (now, switches) -> solution.pour(now, switches.atOnce(), now.value(perDay) * DAY / pulses),
                            false));
                }
            }
        }
    }

    private static void spread(
            org.tidewright.plan.model.Dosing dosed, Network.Builder builder, Poured solution, Setting perDay) {
        double from = dosed.from() == null ? 0 : dosed.from().toSecondOfDay();
        double lasts = dosed.daily() == null ? DAY : dosed.daily().in("s");
        builder.add(
                new SteadyDose(dosed.name(), perDay, from, lasts, (now, out, rate) -> solution.pour(now, out, rate)));
        if (lasts < DAY) {
            builder.add(Routine.quiet(dosed.name() + " begins", Routine.daily(from, 1)));
            builder.add(Routine.quiet(dosed.name() + " ends", Routine.daily((from + lasts) % DAY, 1)));
        }
    }

    /** Bacteria that eat dosed carbon; null where none is dosed. */
    private static @Nullable Eaters eaters(Plan plan, Network.Builder builder, World world, Basins basins) {
        double temperature = plan.room().temperature().in("degC");
        double perSecond = plan.dosing().stream()
                .mapToDouble(dosed -> dosed.perDay().in("m^3/s")
                        * strength(dosed, temperature)
                        * dosed.salt().organicCarbon())
                .sum();
        if (perSecond <= 0) {
            return null;
        }
        Body dose = builder.pool("dosed carbon", Stock.ORGANIC_CARBON);
        Body cells = builder.pool(
                "bacteria on dosed carbon", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
        Doubt doubt = new Doubt(builder);
        builder.add(new CarbonFedBacteria(
                basins.display().body(),
                dose,
                cells,
                world.life(),
                doubt.of(
                        "bacteria on dosed carbon, growth",
                        "1/s",
                        CarbonDosing.GROWTH,
                        Basis.FROM_MEMORY,
                        "1–8 a day with plenty"),
                doubt.of("bacteria on dosed carbon, death", "1/s", CarbonDosing.LOSS, Basis.FROM_MEMORY, "0.1–1 a day"),
                basins.all().stream().mapToDouble(Basins.Basin::volume).sum()));
        return new Eaters(dose, cells, perSecond * CarbonDosing.YIELD.usual() / CarbonDosing.LOSS.usual());
    }

    /** Bacteria as many as the plan's doses of organic carbon keep alive. */
    void fill(State state) {
        if (eaters != null) {
            double nitrogen = eaters.usual() / CarbonDosing.CARBON_TO_NITROGEN.usual();
            state.set(eaters.cells(), Stock.ORGANIC_CARBON, eaters.usual())
                    .set(eaters.cells(), Stock.ORGANIC_NITROGEN, nitrogen)
                    .set(
                            eaters.cells(),
                            Stock.ORGANIC_PHOSPHORUS,
                            nitrogen / CarbonDosing.NITROGEN_TO_PHOSPHORUS.usual());
        }
    }

    private static @Unit("mol/m^3") double strength(
            org.tidewright.plan.model.Dosing dosed, @Unit("degC") double temperature) {
        if (dosed.saturation() != null) {
            return dosed.saturation().in("1") * Limewater.saturated(temperature);
        }
        return dosed.strength() == null
                ? 0
                : dosed.strength().in("kg/m^3") / dosed.salt().molarMass();
    }

    /**
     * What a volume of a solution brings into the water, organic carbon left out. Acetate is taken as if its bacteria had
     * given back at once the alkalinity that the acid takes: they do within hours.
     */
    private static Map<Stock, Double> contentOf(Salt salt, @Unit("mol/m^3") double moles, double heat) {
        Map<Stock, Double> content = new EnumMap<>(Stock.class);
        content.put(Stock.HEAT, heat);
        content.put(Stock.ALKALINITY, salt.organicCarbon() > 0 ? 0 : moles * salt.alkalinity());
        content.put(Stock.INORGANIC_CARBON, moles * salt.inorganicCarbon());
        content.put(Stock.CALCIUM, moles * salt.calcium());
        content.put(Stock.MAGNESIUM, moles * salt.magnesium());
        content.put(Stock.AMMONIA, moles * salt.ammonia());
        content.put(Stock.NITRATE, moles * salt.nitrate());
        content.put(Stock.PHOSPHATE, moles * salt.phosphate());
        content.put(Stock.SALT, moles * salt.seaSalt());
        content.values().removeIf(amount -> amount == 0);
        return content;
    }

    /** Limewater of a share of saturation, for a reservoir. */
    static Brew limewater(double saturation, double temperature, double heatPerVolume) {
        double moles = saturation * Limewater.saturated(temperature);
        return new Brew(contentOf(Salt.CALCIUM_HYDROXIDE, moles, temperature * heatPerVolume));
    }
}
