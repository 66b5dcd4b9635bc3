package org.tidewright.husbandry.newtank;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.NewTank;
import org.tidewright.twin.forecast.NewTank.Seed;
import org.tidewright.twin.forecast.Quantity;

/** Tells a new tank's weeks. */
public final class NewTankWords {
    private static final String NITROGEN = "\u00a0mg/L";

    private NewTankWords() {}

    /** A seed within a sentence. */
    public static String seed(Seed seed) {
        return switch (seed) {
            case NONE -> "unseeded";
            case SOME -> "seeded";
            case RIPE -> "with live rock";
        };
    }

    /** {@code day 25}, or what stands for never. */
    public static String day(double day) {
        return Double.isFinite(day) ? "day\u00a0" + whole(day) : "not within " + NewTankStudy.DAYS + " days";
    }

    static String whole(double day) {
        return FigureText.number(Math.ceil(day - 1e-9), 0);
    }

    /** Ammonia or nitrite, as nitrogen. */
    public static String amount(double value) {
        return FigureText.number(value, value < 0.995 ? 2 : 1) + NITROGEN;
    }

    /** Free ammonia, as nitrogen. */
    public static String free(double value) {
        if (value < 0.001) {
            return "under\u00a00.001" + NITROGEN;
        }
        return FigureText.number(value, value < 0.0995 ? 3 : 2) + NITROGEN;
    }

    private static String grams(double mass) {
        double grams = 1000 * mass;
        return FigureText.number(grams, grams < 0.995 ? 2 : grams < 9.95 ? 1 : 0) + "\u00a0g";
    }

    static String lead(NewTankStudy study) {
        return study.order().withFish() ? leadWithFish(study) : leadFishless(study);
    }

    private static String leadFishless(NewTankStudy study) {
        double ready = study.beginning().ready();
        double clear = Peak.fallsBelow(study.beginning().course(), Quantity.NITRITE, NewTank.CLEAR);
        String test = FigureText.number(study.order().testDose(), 0) + "\u00a0mg/L of ammonia nitrogen";
        if (Double.isInfinite(ready)) {
            String why = Double.isInfinite(clear)
                    ? "nitrite has not come down once by then"
                    : "nitrite is clear on " + day(clear) + ", but a dose of " + test + " still takes more than a day";
            String way = study.order().testDose() > 1
                    ? " Test with 1\u00a0mg/L: it is more than the food of most tanks gives in a day."
                    : study.order().seed() == Seed.NONE ? " Seed it, or keep it warmer." : " Keep it warmer.";
            return "Add no animal within " + NewTankStudy.DAYS + " days: " + why + "." + way;
        }
        return "Add the first animals on " + day(ready) + ", not before: only then does the water clear " + test
                + " within a day, twice running. Nitrite reads clear on " + day(clear)
                + " for the first time, and that is too early.";
    }

    private static String leadWithFish(NewTankStudy study) {
        Peak free = Peak.of(study.beginning().course(), Quantity.FREE_AMMONIA);
        Peak nitrite = Peak.of(study.beginning().course(), Quantity.NITRITE);
        String clear = Double.isFinite(study.beginning().ready())
                ? "both stay clear from " + day(study.beginning().ready())
                : "both are not clear within " + NewTankStudy.DAYS + " days";
        return switch (Stocking.verdict(free.value(), nitrite.value())) {
            case HARM ->
                "Do not begin with a fish: its own ammonia would harm it, " + free(free.value()) + " of it free on "
                        + day(free.day()) + ". Ammonium chloride feeds the same bacteria with no animal in the water.";
            case WATCH ->
                "Better begin without a fish: free ammonia reaches " + free(free.value()) + " and nitrite "
                        + amount(nitrite.value()) + " on " + day(nitrite.day()) + "; " + clear + ".";
            case CALM ->
                "One fish may begin it: free ammonia stays under " + free(Math.max(0.001, free.value()))
                        + " and nitrite under " + amount(Math.max(0.01, nitrite.value()))
                        + ". Wait with the next one: " + clear + ".";
        };
    }

    static String range(NewTankStudy study) {
        return "No two tanks are alike: if the bacteria grow a third slower, " + late(study.slow())
                + "; if they grow two fifths faster, " + late(study.quick())
                + ". These are two more runs of the twin, not the bounds of what may be: growth is known to a factor of two,"
                + " and how soon bacteria feel low ammonia and nitrite far worse. The test on the water decides, not the"
                + " calendar.";
    }

    private static String late(double day) {
        return Double.isFinite(day)
                ? "it is ready on " + day(day)
                : "it is not ready within " + NewTankStudy.DAYS + " days";
    }

    static String dosing(NewTankStudy study) {
        if (study.order().withFish()) {
            return "";
        }
        int doses = study.beginning().doses().size();
        return "Dissolve " + grams(study.firstDose())
                + " of ammonium chloride for the first dose, which brings the water to "
                + FigureText.number(NewTank.FIRST_DOSE, 0) + "\u00a0mg/L, and " + grams(study.laterDose())
                + " for each after it, on a day that shows neither ammonia nor nitrite; " + doses
                + (doses == 1 ? " dose" : " doses") + " in all. Each milligram per litre costs 0.4\u00a0dKH: "
                + grams(study.beginning().bicarbonate())
                + " of sodium bicarbonate, given as the alkalinity falls, hold it where the plan has it.";
    }

    static String stocking(NewTankStudy study) {
        Stocking once = study.stocking(true, false);
        Stocking staged = study.stocking(false, false);
        Stocking ripe = study.stocking(true, true);
        if (once == null || staged == null) {
            return "";
        }
        String count = study.order().fish() == 1 ? "fish" : study.order().fish() + " fish";
        String first;
        if (once.verdict() == Stocking.Verdict.CALM) {
            first = "Bring them one a fortnight all the same: the twin stays calm with all " + count
                    + " at once, free ammonia at " + free(once.freeAmmonia().value())
                    + " at most, but it knows no quarrels and no parasites.";
        } else if (staged.verdict() == Stocking.Verdict.HARM) {
            first = "Bring no fish into it yet: even one a fortnight takes free ammonia to "
                    + free(staged.freeAmmonia().value()) + ", all " + count + " at once to "
                    + free(once.freeAmmonia().value()) + ".";
        } else {
            first = "Bring them one a fortnight, not all at once: free ammonia reaches "
                    + free(staged.freeAmmonia().value()) + " in place of "
                    + free(once.freeAmmonia().value())
                    + ", and nitrite " + amount(staged.nitrite().value()) + " in place of "
                    + amount(once.nitrite().value()) + ".";
        }
        return first + ripe(ripe);
    }

    private static String ripe(@Nullable Stocking ripe) {
        return ripe == null
                ? ""
                : " After the ready test all at once gives "
                        + free(ripe.freeAmmonia().value()) + ".";
    }

    static List<String> cautions(NewTankOrder order) {
        List<String> cautions = new ArrayList<>();
        if (!order.withFish()) {
            cautions.add("Ammonium chloride is for water without animals. Weigh it, dissolve it, pour it into the"
                    + " current, measure an hour later, and stop at 4\u00a0mg/L: more holds the bacteria back. It irritates"
                    + " eyes; never mix it with bleach or lye.");
        }
        cautions.add("Never add an animal because nitrite reads clear once. A dose cleared within a day, twice, is the"
                + " test; then change water until nitrate suits the animals, and match temperature and salinity.");
        if (order.withFish()) {
            cautions.add("A fish that gasps or clamps its fins cannot wait for a curve: change a third of the water at"
                    + " once, and ask a veterinarian who knows fish.");
        }
        return cautions;
    }

    static List<Source> sources() {
        Sources sources = new Sources();
        sources.key(
                "Growth of the two kinds of nitrifiers, 0.50 and 0.38 a day at 25 °C, and what holds them back",
                Basis.FROM_MEMORY,
                "slower than the pure cultures of Helder and De Vries 1983, as attached cells are");
        sources.key(
                "What rock, sand and panes can come to oxidise",
                Basis.PUBLISHED,
                "Li et al. 2017 for rock, Nijhof and Bovendeur 1990 for films; within a factor of three");
        sources.key(
                "Bacteria at the start: two in a thousand of a milligram per litre and day unseeded, 20 times as many"
                        + " seeded, 200 times with live rock",
                Basis.FROM_MEMORY,
                "an estimate; it moves the days by a week, not by a month");
        sources.key(
                "Ready test and days beside the computed ones",
                Basis.COMMON_PRACTICE,
                "1–2 mg/L of ammonia nitrogen cleared to under 0.1 mg/L of ammonia and nitrite in 24 h, on two days"
                        + " running; 4–8 weeks unseeded at 25–27 °C");
        sources.key(
                "Free ammonia to watch from 0.02 and harmful from 0.03 mg/L of nitrogen",
                Basis.PUBLISHED,
                "under the 0.050 mg/L that a silverside bears for good (Miller, Poucher and Cardin 1990)");
        sources.key("Free share of ammonia at a pH and a temperature", Basis.PUBLISHED, "Clegg and Whitfield 1995");
        sources.key(
                "Two equivalents of alkalinity for a nitrogen of ammonium chloride",
                Basis.PUBLISHED,
                "Wolf-Gladrow et al. 2007");
        sources.key("Food, 2 % of a fish's mass a day", Basis.COMMON_PRACTICE, "1–4 %, as dry pellets");
        return sources.all();
    }
}
