package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Salt;

/** How a solution is mixed, and what to mind: the act first, then the reason. */
final class MixingWords {
    /** Warming from which a vessel is set in cold water; common practice. */
    private static final double HOT = 15;

    /** Warming or cooling that a hand notices. */
    private static final double NOTICED = 2;

    private static final double FIRST_POURED = 0.8;
    private static final double LITRES_FROM = 2e-3;

    private MixingWords() {}

    /** A volume in millilitres, or in litres from two of them up. */
    static Figure volume(double volume) {
        return Figure.exact(measure(volume), volume);
    }

    static Figure volume(double volume, double standardError) {
        return Figure.about(measure(volume), volume, standardError);
    }

    private static Measure measure(double volume) {
        return volume < LITRES_FROM ? Measure.DOSE : Measure.VOLUME;
    }

    static List<Sentence> steps(Recipe recipe, double room, SolutionSources sources) {
        Solution solution = recipe.solution();
        double warming = HeatOfSolution.warming(solution, room);
        double water = recipe.water(room) / 1000;
        List<Sentence> steps = new ArrayList<>();
        steps.add(Sentence.of(
                "Pour the water first, ",
                volume(FIRST_POURED * water),
                " of pure water into a clean vessel",
                warming > NOTICED ? " that bears heat" : "",
                ", then stir the ",
                recipe.weighings().size() > 1 ? "salts" : "salt",
                " into it spoon by spoon: water poured onto the solid cakes it",
                warming > HOT ? ", and can boil and spit where it wets it." : "."));
        if (warming > HOT) {
            steps.add(Sentence.of(
                    "Set the vessel in cold water and wait between portions: all of it at once would warm it by ",
                    Sentence.figure(warmingFigure(warming), sources.heat()),
                    ", to ",
                    Figure.about(Measure.TEMPERATURE, room + warming, HeatOfSolution.ERROR * warming),
                    "."));
        }
        if (warming > NOTICED) {
            steps.add(Sentence.of(
                    "Let it cool with the lid off before it goes into its bottle: it warms by ",
                    Sentence.figure(warmingFigure(warming), sources.heat()),
                    ", and a bottle closed warm is sucked flat."));
        } else if (warming < -NOTICED) {
            steps.add(Sentence.of(
                    "Give it time to come back to room temperature: it cools by ",
                    Sentence.figure(warmingFigure(-warming), sources.heat()),
                    " and dissolves more slowly for it."));
        }
        if (solution.content().containsKey(Salt.SODIUM_BICARBONATE)) {
            steps.add(Sentence.of(
                    "Stir it cold, do not heat it: warm bicarbonate gives off carbon dioxide, which turns it"
                            + " towards carbonate and presses on a closed lid."));
        }
        steps.add(Sentence.of(
                "Fill up to ",
                volume(recipe.volume()),
                " when all is dissolved and at room temperature, about ",
                Sentence.figure(volume(water), sources.density()),
                " of water in all: the strength counts the finished volume, not the water poured."));
        steps.add(Sentence.of("Write content, strength and date on the bottle: two clear solutions look alike."));
        return steps;
    }

    private static Figure warmingFigure(double warming) {
        return Figure.about(Measure.TEMPERATURE_DIFFERENCE, warming, HeatOfSolution.ERROR * warming);
    }

    static List<Sentence> cautions(Recipe recipe, SolutionSources sources) {
        Solution solution = recipe.solution();
        List<Sentence> cautions = new ArrayList<>();
        boolean lye = solution.content().containsKey(Salt.SODIUM_HYDROXIDE);
        boolean lime = solution.content().containsKey(Salt.CALCIUM_HYDROXIDE);
        if (lye || lime || solution.content().containsKey(Salt.SODIUM_CARBONATE)) {
            cautions.add(Sentence.of(
                    "Wear goggles and gloves, and breathe no dust of it: ",
                    lye ? "lye blinds and burns" : lime ? "lime burns eyes and skin" : "it burns eyes",
                    ". Rinse an eye under running water for fifteen minutes and see a doctor at once."));
        }
        if (lye) {
            cautions.add(
                    Sentence.of("Use plastic that is made for lye, never aluminium, and keep acids and bleach away: it"
                            + " eats the metal and gives off hydrogen."));
        }
        if (lime) {
            cautions.add(Sentence.of(
                    "Take calcium hydroxide that says so on its label, never quicklime (calcium oxide): that"
                            + " boils when water touches it."));
            cautions.add(Sentence.of(
                    "Let it settle, dose the clear part only and keep the lid on: grains of lime raise the pH"
                            + " where they land, and air turns the solution to chalk."));
        }
        if (solution.content().containsKey(Salt.CALCIUM_CHLORIDE_ANHYDROUS)) {
            cautions.add(Sentence.of("Wear goggles: dry calcium chloride turns hot on anything wet, an eye too."));
        }
        if (solution.content().containsKey(Salt.SODIUM_NITRATE)) {
            cautions.add(Sentence.of("Keep sodium nitrate dry, locked up and away from all that burns, and from acids:"
                    + " it feeds a fire."));
        }
        boolean alkaline = solution.total(Salt::alkalinity) > 0;
        boolean calcium = !lime && solution.total(Salt::calcium) > 0;
        if (alkaline || calcium) {
            cautions.add(Sentence.of(
                    "Never pour alkalinity and calcium solutions together, not even leftovers: they turn to chalk at once."
                            + " Dose them at different places, fifteen minutes apart",
                    new Sentence.Part.Reference(sources.apart()),
                    "."));
        }
        if (calcium || solution.total(Salt::sulfate) > 0) {
            cautions.add(Sentence.of(
                    "Keep sulfate out of the calcium solution: gypsum falls, and takes the calcium with it."));
        }
        cautions.add(
                Sentence.of("Read the label and the safety data sheet of each salt before you open it, and keep all of"
                        + " them from children: what stands there comes before this page."));
        return cautions;
    }
}
