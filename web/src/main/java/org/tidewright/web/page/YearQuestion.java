package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.solution.DailyUse;
import org.tidewright.husbandry.solution.OwnDosing;
import org.tidewright.husbandry.solution.Residue;
import org.tidewright.husbandry.solution.ResidueCourse;
import org.tidewright.husbandry.solution.SolutionReport;
import org.tidewright.husbandry.solution.Strength;
import org.tidewright.husbandry.solution.Supply;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;
import org.tidewright.web.page.FieldUnits.One;

/** What a year of doses leaves behind in the water. */
final class YearQuestion {
    private static final double DAY = 86_400;
    private static final double WEEK = 7 * DAY;
    private static final double PER_CENT = 100;
    private static final List<MajorIon> SHOWN =
            List.of(MajorIon.SODIUM, MajorIon.CHLORIDE, MajorIon.SULFATE, MajorIon.CALCIUM);

    /** Which salts bring what is used. */
    private enum Doses {
        PLANNED("as the plan doses"),
        PAIR("two matched parts"),
        ALKALINE("sodium bicarbonate alone"),
        LIMEWATER("limewater alone");

        private final String words;

        Doses(String words) {
            this.words = words;
        }

        /** What of each salt for so much alkalinity. */
        private Map<Salt, Double> of(double alkalinity, double magnesiumShare, Map<Salt, Double> planned) {
            return switch (this) {
                case PLANNED -> planned;
                case PAIR ->
                    Map.of(
                            Salt.SODIUM_BICARBONATE, alkalinity,
                            Salt.CALCIUM_CHLORIDE, (1 - magnesiumShare) * alkalinity / 2,
                            Salt.MAGNESIUM_CHLORIDE, magnesiumShare * alkalinity / 2);
                case ALKALINE -> Map.of(Salt.SODIUM_BICARBONATE, alkalinity);
                case LIMEWATER -> Map.of(Salt.CALCIUM_HYDROXIDE, alkalinity / 2);
            };
        }
    }

    private YearQuestion() {}

    /** The tank, as its fields have it. */
    private record Tank(
            double water, double salinity, double temperature, double changed, double period, double magnesiumShare) {
        ResidueCourse course(Map<Salt, Double> perDay) {
            Residue residue = Residue.of(perDay, magnesiumShare).times(1 / DAY);
            return new ResidueCourse(residue, water, salinity, temperature, changed / water, period);
        }
    }

    static SolutionsPage answered(Levers.Query query, SolutionsPage.Around around) {
        Plan plan = around.view().plan();
        Map<Salt, Double> planned = OwnDosing.mineralsPerDay(plan);
        List<Doses> offered = new ArrayList<>(List.of(Doses.values()));
        if (planned.isEmpty()) {
            offered.remove(Doses.PLANNED);
        }
        Doses doses = offered.get(0);
        String asked = query.get("doses");
        boolean unknown = asked != null && !asked.isBlank();
        for (Doses each : offered) {
            if (SolutionsPage.key(each).equals(asked)) {
                doses = each;
                unknown = false;
            }
        }
        Doses chosen = doses;
        Select what = Select.of(
                "doses",
                "Dosed",
                offered.stream()
                        .map(each -> new Choice.Option(SolutionsPage.key(each), each.words, each == chosen))
                        .toList(),
                unknown && asked != null
                        ? Select.none(
                                asked, offered.stream().map(SolutionsPage::key).toList())
                        : "");
        double water = around.view().entry().water();
        DailyUse known = use(plan, around, planned, water);
        AmountField use = AmountField.read(
                query,
                new Asked(
                        "use",
                        "Alkalinity used a day",
                        FieldUnits.of(List.of(
                                One.of("dKH/d", 1 / Alkalinity.GERMAN_DEGREE, "dkh_per_d"),
                                One.of("meq/L/d", 1, "meq_per_l_d"))),
                        around.units(),
                        0,
                        5),
                known == null
                        ? null
                        : new Known(
                                known.value(),
                                "dKH/d",
                                (known.basis() == Basis.YOUR_LOG ? "from your log: " : "from the plan: ")
                                        + known.from()),
                "as your tests tell");
        Optional<OwnDosing.Changes> own = OwnDosing.changes(plan);
        AmountField change = AmountField.read(
                query,
                Asked.of("change", "Water changed each time", Measure.VOLUME, around.units(), 0, 1000),
                new Known(
                        own.map(OwnDosing.Changes::volume).orElse(0.0),
                        "",
                        own.isPresent() ? "from the plan" : "the plan changes none"),
                "");
        AmountField every = AmountField.read(
                query,
                new Asked("every", "Changed every", FieldUnits.DAYS, around.units(), DAY, 365 * DAY),
                new Known(
                        own.map(OwnDosing.Changes::period).orElse(WEEK),
                        "d",
                        own.isPresent() ? "from the plan" : "usual"),
                "");
        AmountField volume = AmountField.read(
                query,
                Asked.of("water", "Water of the system", Measure.VOLUME, around.units(), 1e-3, 1000),
                new Known(water, "", "from the plan: all in circulation"),
                "");
        AmountField salinity = AmountField.read(
                query,
                Asked.of("salinity", "Salinity", Measure.SALINITY, around.units(), 5, 42),
                new Known(plan.water().salinity().in("1"), "", "from the plan"),
                "");
        AmountField temperature = AmountField.read(
                query,
                Asked.of("temperature", "Temperature", Measure.TEMPERATURE, around.units(), 10, 35),
                new Known(plan.water().temperature().in("degC"), "", "from the plan"),
                "");
        AmountField share = around.magnesiumShare(query);
        if (change.isGiven() && volume.isGiven() && change.value() > volume.value()) {
            change = change.refused("Found more than the system holds; expected up to all of its water.");
        }
        List<AmountField> first = new ArrayList<>();
        if (chosen != Doses.PLANNED) {
            first.add(use);
        }
        first.addAll(List.of(change, every));
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part("A year of doses", false, List.of(what), List.of(), first),
                QuestionForm.Part.folded("Water, salinity, skeletons", List.of(volume, salinity, temperature, share))));
        String inTheWay = form.inTheWay();
        if (inTheWay != null) {
            return SolutionsPage.unanswered(around, "year", form, inTheWay, true);
        } else if (chosen != Doses.PLANNED && !use.isGiven()) {
            return SolutionsPage.unanswered(
                    around, "year", form, "Type how much alkalinity is used a day: what stays follows from it.", false);
        }
        Tank tank = new Tank(
                volume.value(), salinity.value(), temperature.value(), change.value(), every.value(), share.value());
        double perDay = use.isGiven() ? use.value() * tank.water() : Double.NaN;
        Map<Salt, Double> dosed = chosen.of(perDay, tank.magnesiumShare(), planned);
        double doubt = chosen == Doses.PLANNED
                ? Strength.LABEL_ERROR
                : known != null && use.known() != null ? known.relativeError() : 0;
        return SolutionsPage.answered(
                around,
                "year",
                form,
                List.of(SolutionReport.of(tank.course(dosed), doubt)),
                List.of(""),
                chosen == Doses.PLANNED ? List.of(told(plan)) : List.of(),
                table(offered, chosen, perDay, planned, tank));
    }

    /** Of the log, else of the plan: what it states, or else what it doses. */
    private static @Nullable DailyUse use(
            Plan plan, SolutionsPage.Around around, Map<Salt, Double> planned, double water) {
        for (DailyUse use : OwnDosing.uses(plan, around.study())) {
            if (use.supply() == Supply.ALKALINITY && use.value() > 0) {
                return use;
            }
        }
        double dosed = planned.entrySet().stream()
                .mapToDouble(dose -> dose.getValue() * dose.getKey().alkalinity())
                .sum();
        return dosed > 0
                ? new DailyUse(
                        Supply.ALKALINITY,
                        dosed / water,
                        Strength.LABEL_ERROR * dosed / water,
                        Basis.YOUR_PLAN,
                        "as much as it doses")
                : null;
    }

    /** What the plan doses, in its own words and units. */
    private static Markup told(Plan plan) {
        List<String> counted = new ArrayList<>();
        List<String> eaten = new ArrayList<>();
        for (Dosing dosing : plan.dosing()) {
            Salt salt = dosing.salt();
            if (salt.ammonia() + salt.nitrate() + salt.phosphate() + salt.organicCarbon() > 0) {
                eaten.add(dosing.name());
                continue;
            }
            counted.add(unbroken(dosing.perDay()) + " of " + dosing.name()
                    + (dosing.strength() != null
                            ? " at " + unbroken(dosing.strength())
                            : dosing.saturation() != null
                                    ? " at " + unbroken(dosing.saturation()) + " of saturation"
                                    : ""));
        }
        return Markup.words(
                "Counted from the plan, good to ±\u00a05\u00a0% (common practice): " + String.join(", ", counted)
                        + "."
                        + (eaten.isEmpty() ? "" : " Not counted, for it is eaten: " + String.join(", ", eaten) + "."));
    }

    private static String unbroken(Amount amount) {
        return amount.toString().replace(' ', '\u00a0');
    }

    private static SolutionsPage.Table table(
            List<Doses> offered, Doses chosen, double perDay, Map<Salt, Double> planned, Tank tank) {
        List<SolutionsPage.Row> rows = new ArrayList<>();
        for (Doses each : offered) {
            if (each != Doses.PLANNED && Double.isNaN(perDay)) {
                continue;
            }
            ResidueCourse course = tank.course(each.of(perDay, tank.magnesiumShare(), planned));
            ResidueCourse never = new Tank(
                            tank.water(), tank.salinity(), tank.temperature(), 0, tank.period(), tank.magnesiumShare())
                    .course(each.of(perDay, tank.magnesiumShare(), planned));
            List<String> figures = new ArrayList<>();
            figures.add(signed(never.creep(ResidueCourse.YEAR)));
            figures.add(tank.changed() > 0 ? signed(course.creepPlateau()) : "–");
            for (MajorIon ion : SHOWN) {
                figures.add(FigureText.number(PER_CENT * Math.max(0, course.shareOfSea(ion, ResidueCourse.YEAR)), 1)
                        + "\u00a0%");
            }
            String words = each.words.substring(0, 1).toUpperCase(Locale.ROOT) + each.words.substring(1);
            rows.add(new SolutionsPage.Row(words, figures, each == chosen));
        }
        return new SolutionsPage.Table(
                "What each choice leaves",
                List.of(
                        "Dosed",
                        "A year without changes",
                        "With these changes",
                        "Sodium",
                        "Chloride",
                        "Sulfate",
                        "Calcium"),
                rows,
                "Salinity risen if nobody brings it back; then each ion over the sea’s own after a year with these changes,"
                        + " brought back by fresh water. Every row but the plan’s is for the same use of alkalinity;"
                        + " bicarbonate, carbonate and lye leave the same.");
    }

    private static String signed(double creep) {
        String told = FigureText.number(creep, 2);
        return creep > 0 && !told.equals("0.00") ? "+" + told : told;
    }
}
