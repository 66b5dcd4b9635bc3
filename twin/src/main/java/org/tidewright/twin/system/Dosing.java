package org.tidewright.twin.system;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.carbonate.Limewater;
import org.tidewright.twin.mechanism.water.SteadyDose;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;

/** Solutions that are dosed, in pulses or spread. */
final class Dosing {
    private static final double DAY = 86_400;

    /**
     * What a plan doses.
     *
     * @param mains setting: 1 while the pumps have power
     */
    Dosing(Plan plan, Network.Builder builder, Levers levers, World world, Basins basins, Setting mains) {
        double temperature = plan.room().temperature().in("degC");
        for (org.tidewright.plan.model.Dosing dosed : plan.dosing()) {
            Body into = basins.holding(dosed.into(), plan);
            Brew solution = solution(dosed, temperature, builder.heatPerVolume());
            Setting perDay = levers.amount(
                    dosed.name() + " dose",
                    "solution dosed over a day",
                    "m^3/s",
                    dosed.perDay().in("m^3/s"));
            if (dosed.times().isEmpty()) {
                spread(dosed, builder, world, into, solution, perDay, mains);
            } else {
                for (LocalTime time : dosed.times()) {
                    int pulses = dosed.times().size();
                    builder.add(new Routine(
                            dosed.name(),
                            Routine.daily(time.toSecondOfDay(), 1),
                            (now, switches) -> solution.pour(
                                    switches.atOnce(),
                                    world.store(),
                                    into,
                                    now.value(mains) * now.value(perDay) * DAY / pulses),
                            false));
                }
            }
        }
    }

    private static void spread(
            org.tidewright.plan.model.Dosing dosed,
            Network.Builder builder,
            World world,
            Body into,
            Brew solution,
            Setting perDay,
            Setting mains) {
        double from = dosed.from() == null ? 0 : dosed.from().toSecondOfDay();
        double lasts = dosed.daily() == null ? DAY : dosed.daily().in("s");
        builder.add(new SteadyDose(
                dosed.name(),
                perDay,
                from,
                lasts,
                (now, out, rate) -> solution.pour(out, world.store(), into, now.value(mains) * rate)));
        if (lasts < DAY) {
            builder.add(Routine.quiet(dosed.name() + " begins", Routine.daily(from, 1)));
            builder.add(Routine.quiet(dosed.name() + " ends", Routine.daily((from + lasts) % DAY, 1)));
        }
    }

    private static Brew solution(org.tidewright.plan.model.Dosing dosed, double temperature, double heatPerVolume) {
        Salt salt = dosed.salt();
        double moles;
        if (dosed.saturation() != null) {
            moles = dosed.saturation().in("1") * Limewater.saturated(temperature);
        } else if (dosed.strength() != null) {
            moles = dosed.strength().in("kg/m^3") / salt.molarMass();
        } else {
            moles = 0;
        }
        return new Brew(contentOf(salt, moles, temperature * heatPerVolume));
    }

    /**
     * What a volume of a solution holds. Acetate is taken as if its bacteria had given back at once the alkalinity that the
     * acid takes: they do within hours.
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
        content.put(Stock.ORGANIC_CARBON, moles * salt.organicCarbon());
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
