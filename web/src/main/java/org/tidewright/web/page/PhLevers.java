package org.tidewright.web.page;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.ph.GasExchange;
import org.tidewright.husbandry.ph.Lever;
import org.tidewright.husbandry.ph.OutdoorAir;
import org.tidewright.husbandry.ph.OwnSurface;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.solution.DailyUse;
import org.tidewright.husbandry.solution.OwnDosing;
import org.tidewright.husbandry.solution.Supply;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.law.carbonate.Limewater;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;
import org.tidewright.web.page.FieldUnits.One;

/** What could be done about a pH, in the measure the plan or common practice suggests. */
final class PhLevers {
    private static final double DAY = 86_400;
    private static final double WEEK = 7 * DAY;
    private static final double OUNCE = 0.028349523125;

    /** Carbon dioxide of a room with a window ajar; common practice. */
    private static final double AIRED = 500e-6;

    /** Carbon dioxide after an absorber; from memory. */
    private static final double ABSORBED = 50e-6;

    private static final double EXAMPLE_OF_ALGAE = 0.1 / WEEK;

    private final Levers.Query query;
    private final Plan plan;
    private final boolean skimmed;
    private final AmountField window;
    private final AmountField part;
    private final AmountField absorbed;
    private final AmountField limewater;
    private final Choice replaced;
    private final AmountField algae;
    private final Choice algaeNow;

    PhLevers(Levers.Query query, Plan plan, double water, WaterStudy study, UnitSystem units) {
        this.query = query;
        this.plan = plan;
        skimmed = OwnSurface.hasSkimmer(plan);
        window = read(
                Asked.of("window", "A window brings the room to", Measure.SHARE_OF_AIR, units, 200e-6, 0.01),
                new Known(AIRED, "ppm", "usual of an aired room, common practice"));
        part = read(
                Asked.of("skimmer_part", "Exchange through the skimmer’s air", Measure.SHARE, units, 0, 1),
                new Known(GasExchange.skimmerPart(), "%", "what a skimmer adds to a moved surface, from memory"));
        absorbed = read(
                Asked.of("absorbed", "CO₂ after an absorber", Measure.SHARE_OF_AIR, units, 0, 0.01),
                new Known(ABSORBED, "ppm", "usual of a fresh one, from memory"));
        limewater = read(
                new Asked("limewater", "Saturated limewater", FieldUnits.WATER_A_DAY, units, 0, 1e-3),
                limewater(water, study));
        replaced = Choice.read(
                query,
                "in_place_of",
                "in place of as much",
                OwnDosing.of(plan, Salt.SODIUM_BICARBONATE).isEmpty()
                                && OwnDosing.of(plan, Salt.SODIUM_CARBONATE).isPresent()
                        ? "carbonate"
                        : "bicarbonate",
                List.of("bicarbonate", "bicarbonate", "carbonate", "carbonate"));
        double harvest = OwnSurface.harvest(plan);
        boolean atNight = algaeAtNight(plan);
        algae = read(
                new Asked(
                        "algae",
                        "Algae lit at night, taken out a week",
                        FieldUnits.of(One.of("g", 1000 * WEEK), One.of("oz", WEEK / OUNCE)),
                        units,
                        0,
                        1e-3),
                algae(harvest, atNight));
        algaeNow = Choice.read(
                query,
                "algae_now",
                "Are they there?",
                harvest > 0 && !atNight ? "day" : "none",
                List.of("none", "not yet", "day", "lit by day"));
    }

    List<AmountField> fields() {
        return skimmed ? List.of(window, part, absorbed, limewater, algae) : List.of(window, limewater, algae);
    }

    List<Choice> choices() {
        return List.of(replaced, algaeNow);
    }

    /** The levers, once every field has its value; limewater is left out where it has none. */
    List<Lever> levers() {
        List<Lever> levers = new ArrayList<>();
        levers.add(new Lever.Window(window.value()));
        if (skimmed) {
            levers.add(new Lever.SkimmerAir(part.value(), OutdoorAir.SHARE));
            levers.add(new Lever.SkimmerAir(part.value(), absorbed.value()));
        }
        if (limewater.value() > 0) {
            levers.add(new Lever.LimewaterInstead(
                    limewater.value(),
                    Choice.is(replaced, "carbonate") ? Lever.Replaced.CARBONATE : Lever.Replaced.BICARBONATE,
                    plan.room().temperature().in("degC")));
        }
        if (algae.value() > 0) {
            levers.add(new Lever.AlgaeAtNight(algae.value(), DAY / 2, Choice.is(algaeNow, "day")));
        }
        levers.add(new Lever.MoreAlkalinity(Alkalinity.fromGermanDegrees(1)));
        return List.copyOf(levers);
    }

    private AmountField read(Asked asked, @Nullable Known known) {
        return AmountField.read(query, asked, known, "left out where it stays empty");
    }

    /** As much as brings the alkalinity that the plan doses without limewater, else all that is used. */
    private @Nullable Known limewater(double water, WaterStudy study) {
        double strength = Limewater.alkalinity(
                Limewater.saturated(plan.room().temperature().in("degC")));
        double dosed = OwnDosing.mineralsPerDay(plan).entrySet().stream()
                .filter(dose -> dose.getKey() != Salt.CALCIUM_HYDROXIDE)
                .mapToDouble(dose -> dose.getValue() * dose.getKey().alkalinity())
                .sum();
        if (dosed > 0) {
            return new Known(dosed / strength / DAY, "", "from the plan: as much alkalinity as it doses otherwise");
        }
        for (DailyUse use : OwnDosing.uses(plan, study)) {
            if (use.supply() == Supply.ALKALINITY && use.value() > 0) {
                String from = use.basis() == Basis.YOUR_LOG ? "from your log: " : "from the plan: ";
                return new Known(use.value() * water / strength / DAY, "", from + "all alkalinity that is used");
            }
        }
        return null;
    }

    private static Known algae(double harvest, boolean atNight) {
        if (harvest == 0) {
            return new Known(EXAMPLE_OF_ALGAE, "", "an example: the plan harvests none");
        }
        return new Known(
                harvest,
                "",
                atNight
                        ? "as much again as the plan harvests, whose algae are lit at night already"
                        : "from the plan: its harvests");
    }

    /** Whether the lamp over the algae burns, by its middle, nearer to midnight than to noon of the display's lights. */
    private static boolean algaeAtNight(Plan plan) {
        List<Light> lamps = UsualDay.overAlgae(plan);
        List<Light> lights = UsualDay.overDisplay(plan);
        if (lamps.isEmpty() || lights.isEmpty()) {
            return false;
        }
        double apart = middle(lamps.get(0)) - middle(lights.get(0));
        return Math.abs((apart % 24 + 36) % 24 - 12) > 6;
    }

    /** Hour of the day; NaN where the plan does not say. */
    private static double middle(Light light) {
        LocalTime starts = light.starts();
        return starts == null
                ? Double.NaN
                : starts.toSecondOfDay() / 3600.0 + light.daily().in("s") / 7200;
    }
}
