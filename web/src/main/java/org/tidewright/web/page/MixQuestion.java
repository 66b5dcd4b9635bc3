package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.solution.DailyUse;
import org.tidewright.husbandry.solution.Mix;
import org.tidewright.husbandry.solution.OwnDosing;
import org.tidewright.husbandry.solution.Recipe;
import org.tidewright.husbandry.solution.Recipe.Tools;
import org.tidewright.husbandry.solution.SoldSalt;
import org.tidewright.husbandry.solution.Solution;
import org.tidewright.husbandry.solution.SolutionReport;
import org.tidewright.husbandry.solution.Supply;
import org.tidewright.husbandry.solution.Surroundings;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;
import org.tidewright.web.page.FieldUnits.One;

/** What to weigh for a solution. */
final class MixQuestion {
    private static final double DAY = 86_400;
    private static final double LITRE = 1e-3;
    private static final double GALLON = 3.785411784e-3;
    private static final double PER_CENT = 100;

    /** What a label says of purity is off by so much, as a share; from memory. */
    private static final double OF_A_LABEL = 0.005;

    private MixQuestion() {}

    static SolutionsPage answered(Levers.Query query, SolutionsPage.Around around) {
        Plan plan = around.view().plan();
        Mix usual = planned(plan);
        String asked = query.get("for");
        Mix mix = usual;
        boolean unknown = asked != null && !asked.isBlank();
        for (Mix each : Mix.values()) {
            if (SolutionsPage.key(each).equals(asked)) {
                mix = each;
                unknown = false;
            }
        }
        Optional<Dosing> own = OwnDosing.of(plan, mix.salt());
        AmountField strength = AmountField.read(query, strength(mix, around.units()), strength(mix, own, plan), "");
        AmountField volume = AmountField.read(
                query,
                Asked.of("volume", "How much", Measure.VOLUME, around.units(), 1e-5, 1),
                own.map(Dosing::container)
                        .map(container -> new Known(container.in("m^3"), "", "from the plan: its container"))
                        .orElse(new Known(around.units() == UnitSystem.US ? GALLON : LITRE, "", "usual")),
                "");
        AmountField coldest = AmountField.read(
                query,
                Asked.of("coldest", "Coldest it stands", Measure.TEMPERATURE, around.units(), 0, 35),
                coldest(plan),
                "");
        AmountField room = AmountField.read(
                query,
                Asked.of("room", "Room it is mixed in", Measure.TEMPERATURE, around.units(), 5, 35),
                new Known(
                        Math.max(5, Math.min(35, plan.room().temperature().in("degC"))), "", "from the plan: its room"),
                "");
        AmountField water = AmountField.read(
                query,
                Asked.of("water", "Water it is dosed to", Measure.VOLUME, around.units(), 1e-3, 1000),
                new Known(around.view().entry().water(), "", "from the plan: all in circulation"),
                "");
        AmountField share = around.magnesiumShare(query);
        List<AmountField> first = new ArrayList<>();
        if (mix != Mix.LIMEWATER) {
            first.add(strength);
        }
        first.add(volume);
        first.add(coldest);
        List<AmountField> more = new ArrayList<>(List.of(room, water));
        if (mix.isPair()) {
            more.add(share);
        }
        Map<Salt, AmountField> purities = purities(query, mix, around.units());
        more.addAll(purities.values());
        Select what =
                new Select("for", "To dose", groups(mix), unknown && asked != null ? Select.none(asked, keys()) : "");
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part("What to mix", false, List.of(what), List.of(), first),
                QuestionForm.Part.folded("Room, water, purity of the salts", more)));
        String inTheWay = form.inTheWay();
        if (inTheWay != null) {
            return SolutionsPage.unanswered(around, "mix", form, inTheWay, true);
        }
        Surroundings surroundings = new Surroundings(
                water.value(),
                room.value(),
                coldest.value(),
                own.map(dosing -> DAY * dosing.perDay().in("m^3/s")).orElse(0.0),
                uses(mix, OwnDosing.uses(plan, around.study())));
        Map<Salt, SoldSalt> shelf = shelf(purities);
        List<Recipe> recipes = mix
                .bottles(mix == Mix.LIMEWATER ? 1 : strength.value(), mix.isPair() ? share.value() : 0, room.value())
                .stream()
                .map(solution -> Recipe.toMake(solution, volume.value(), shelf, Tools.KITCHEN))
                .toList();
        return recipes.size() == 1
                ? SolutionsPage.answered(
                        around,
                        "mix",
                        form,
                        List.of(SolutionReport.of(recipes.get(0), surroundings)),
                        List.of(""),
                        List.of(),
                        null)
                : SolutionsPage.answered(
                        around,
                        "mix",
                        form,
                        SolutionReport.ofPair(recipes.get(0), recipes.get(1), surroundings),
                        List.of("The alkaline bottle", "The calcium bottle"),
                        List.of(),
                        null);
    }

    /** Only of what it is mixed for: what else is in a bottle comes along. */
    private static List<DailyUse> uses(Mix mix, List<DailyUse> all) {
        return all.stream()
                .filter(use -> use.supply() == mix.supply() || (mix.isPair() && use.supply() == Supply.CALCIUM))
                .toList();
    }

    /** What the plan doses first of what can be mixed; bicarbonate where it doses none. */
    private static Mix planned(Plan plan) {
        for (Dosing dosing : plan.dosing()) {
            for (Mix mix : Mix.values()) {
                if (!mix.isPair() && mix.salt() == dosing.salt()) {
                    return mix;
                }
            }
        }
        return Mix.BICARBONATE;
    }

    private static Known strength(Mix mix, Optional<Dosing> own, Plan plan) {
        if (own.isPresent() && mix.isOneSalt() && mix != Mix.LIMEWATER) {
            Solution planned = OwnDosing.solution(plan, own.get());
            return new Known(
                    planned.total(mix.supply()::of),
                    "g/L of salt",
                    "from the plan: " + own.get().name());
        }
        return new Known(mix.usual(), mix.isOneSalt() ? "g/L of salt" : "mg/mL", "usual, common practice");
    }

    /** In the trade's units of strength; of a mass of salt too where one salt makes it. */
    private static Asked strength(Mix mix, UnitSystem system) {
        List<One> units = new ArrayList<>();
        Supply supply = mix.supply();
        double perHundredLitres = 1e-6 / 0.1;
        double perTenGallons = 1e-6 / (10 * GALLON);
        if (mix.isOneSalt()) {
            units.add(One.of("g/L of salt", mix.salt().molarMass() / supply.of(mix.salt()), "g/L", "g_per_l"));
        }
        if (supply == Supply.ALKALINITY) {
            units.add(One.of("meq/mL", 1e-3, "meq_per_ml"));
            units.add(One.of("dKH in 100 L per mL", perHundredLitres / Alkalinity.GERMAN_DEGREE, "dkh_in_100_l"));
            units.add(One.of("dKH in 10 gal per mL", perTenGallons / Alkalinity.GERMAN_DEGREE, "dkh_in_10_gal"));
        } else {
            units.add(One.of("mg/mL", supply.told(1), "mg_per_ml"));
            units.add(One.of("mg/L in 100 L per mL", 1000 * supply.told(1) * perHundredLitres, "mg_per_l_in_100_l"));
            units.add(One.of("mg/L in 10 gal per mL", 1000 * supply.told(1) * perTenGallons, "mg_per_l_in_10_gal"));
        }
        if (system == UnitSystem.US) {
            One gallons = units.remove(units.size() - 1);
            units.add(units.size() - 1, gallons);
        }
        double most = mix.strength(1200);
        return new Asked(
                SolutionsPage.key(mix) + "_strength",
                mix.isPair() ? "Strength of the alkaline part" : "Strength",
                FieldUnits.of(units),
                system,
                most / 1e6,
                most);
    }

    private static Known coldest(Plan plan) {
        if (plan.room().coldest() != null && plan.room().coldest().in("degC") >= 0) {
            return new Known(
                    Math.min(35, plan.room().coldest().in("degC")), "", "from the plan: its room at the coldest");
        }
        double room = plan.room().temperature().in("degC");
        return new Known(Math.max(0, Math.min(35, room - 5)), "", "5 K below the plan’s room, common practice");
    }

    /** A field for each salt, in the order in which they are weighed. */
    private static Map<Salt, AmountField> purities(Levers.Query query, Mix mix, UnitSystem reader) {
        Map<Salt, AmountField> fields = new LinkedHashMap<>();
        for (Solution bottle : mix.bottles(mix.usual(), mix.isPair() ? 0.02 : 0, 20)) {
            for (Salt salt : bottle.content().keySet()) {
                SoldSalt usual = SoldSalt.usual(salt);
                boolean dry = salt == Salt.CALCIUM_CHLORIDE;
                double scale = dry ? salt.dryMolarMass() / salt.molarMass() : 1;
                String name = "purity_" + SolutionsPage.key(salt);
                fields.put(
                        salt,
                        AmountField.read(
                                query,
                                new Asked(
                                        name,
                                        dry
                                                ? "CaCl₂ in the " + usual.words()
                                                : capital(usual.words()) + " in what is sold as it",
                                        FieldUnits.of(List.of(One.of("%", PER_CENT * scale))),
                                        reader,
                                        0.3,
                                        2.1),
                                new Known(
                                        usual.purity(),
                                        "%",
                                        "usual, ±\u00a0" + trimmed(PER_CENT * scale * usual.standardError())
                                                + "\u00a0%, common practice"),
                                ""));
            }
        }
        return fields;
    }

    private static String trimmed(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }

    private static Map<Salt, SoldSalt> shelf(Map<Salt, AmountField> purities) {
        Map<Salt, SoldSalt> shelf = new EnumMap<>(Salt.class);
        purities.forEach((salt, field) -> shelf.put(
                salt, field.known() != null ? SoldSalt.usual(salt) : new SoldSalt(salt, field.value(), OF_A_LABEL)));
        return shelf;
    }

    private static List<Select.Group> groups(Mix chosen) {
        Map<String, List<Choice.Option>> groups = new LinkedHashMap<>();
        for (Mix mix : Mix.values()) {
            groups.computeIfAbsent(capital(mix.purpose()), none -> new ArrayList<>())
                    .add(new Choice.Option(SolutionsPage.key(mix), mix.words(), mix == chosen));
        }
        return groups.entrySet().stream()
                .map(group -> new Select.Group(group.getKey(), List.copyOf(group.getValue())))
                .toList();
    }

    private static List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (Mix mix : Mix.values()) {
            keys.add(SolutionsPage.key(mix));
        }
        return keys;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
