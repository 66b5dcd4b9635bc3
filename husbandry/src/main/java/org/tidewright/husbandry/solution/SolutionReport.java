package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * All that is told of a solution.
 *
 * @param lead what to do, then why
 * @param steps how it is mixed, in their order; empty where nothing is mixed
 * @param remarks what else there is to know
 * @param figures the numbers to show beside the words
 * @param cautions what to mind, where hands and eyes are at work; the most pressing first
 * @param sources every source the figures refer to
 */
public record SolutionReport(
        Sentence lead,
        List<Sentence> steps,
        List<Sentence> remarks,
        List<Told> figures,
        List<Sentence> cautions,
        List<Source> sources) {
    private static final Sentence TOGETHER =
            Sentence.of("Dose as much of it as of the alkaline bottle: it brings what skeletons take along with that"
                    + " alkalinity, so that neither runs away from the other.");

    /**
     * A number with its name.
     *
     * @param source key of its source
     */
    public record Told(String name, Figure figure, String source) {}

    public SolutionReport {
        steps = List.copyOf(steps);
        remarks = List.copyOf(remarks);
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
    }

    /**
     * Of a recipe: how to mix it, how strong it is, where it may stand.
     *
     * @param water volume of the system it is dosed to
     * @param room temperature of the room it is mixed and kept in, 5 to 35 degC
     */
    public static SolutionReport of(Recipe recipe, @Unit("m^3") double water, @Unit("degC") double room) {
        return of(recipe, Surroundings.of(water, room));
    }

    /** Of a recipe, with all that is known of where it goes. */
    public static SolutionReport of(Recipe recipe, Surroundings around) {
        return new RecipeWords(recipe, around, new SolutionSources()).report();
    }

    /** Of two parts that match each other, lettered as one: the second has all the sources. */
    public static List<SolutionReport> ofPair(Recipe one, Recipe other, Surroundings around) {
        SolutionSources sources = new SolutionSources();
        SolutionReport first = new RecipeWords(one, around, sources).report();
        SolutionReport second = new RecipeWords(other, around, sources).report();
        return first.steps().isEmpty() || second.steps().isEmpty()
                ? List.of(first, second)
                : List.of(first, second.withRemark(TOGETHER));
    }

    private SolutionReport withRemark(Sentence first) {
        List<Sentence> all = new ArrayList<>(remarks);
        all.add(0, first);
        return new SolutionReport(lead, steps, all, figures, cautions, sources);
    }

    /**
     * Of a bottle already there.
     *
     * @param tested whether its strength comes from a test of one's own and not from its label
     * @param water volume of the system it is dosed to
     */
    public static SolutionReport of(Strength strength, boolean tested, @Unit("m^3") double water) {
        return BottleWords.report(strength, tested, water);
    }

    /** Of what a year of doses leaves behind. */
    public static SolutionReport of(ResidueCourse course) {
        return of(course, 0);
    }

    /**
     * Of what a year of doses leaves behind.
     *
     * @param doubt standard error of all doses together, as a share of them
     */
    public static SolutionReport of(ResidueCourse course, @Unit("1") double doubt) {
        return new ResidueWords(course, Bounds.notNegative(doubt, "1", "doubt of the doses")).report();
    }
}
