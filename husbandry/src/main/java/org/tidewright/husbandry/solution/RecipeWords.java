package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.solution.Recipe.Weighing;
import org.tidewright.husbandry.solution.Solubility.ClearRange;
import org.tidewright.husbandry.solution.SolutionReport.Told;
import org.tidewright.plan.model.Salt;

/** Tells a recipe. */
final class RecipeWords {
    private static final double MILLILITRE = 1e-6;

    /** Share of saturation to make instead of a solution that is too strong, so that a cold night does no harm. */
    private static final double EASE = 0.9;

    private final Recipe recipe;
    private final Solution solution;
    private final Surroundings around;
    private final double water;
    private final double room;
    private final SolutionSources sources;

    RecipeWords(Recipe recipe, Surroundings around, SolutionSources sources) {
        this.recipe = recipe;
        this.solution = recipe.solution();
        this.around = around;
        this.water = around.water();
        this.room = around.room();
        this.sources = sources;
    }

    SolutionReport report() {
        boolean canBeMade = solution.clashes().isEmpty() && Solubility.shareOfSaturation(solution, room) <= 1 + 1e-9;
        Sentence lead = lead(canBeMade);
        List<Sentence> steps = canBeMade ? MixingWords.steps(recipe, room, sources) : List.of();
        List<Sentence> remarks = canBeMade ? remarks() : List.of();
        List<Told> figures = canBeMade ? figures() : List.of();
        List<Sentence> cautions = MixingWords.cautions(recipe, sources);
        return new SolutionReport(lead, steps, remarks, figures, cautions, sources.all());
    }

    private Sentence lead(boolean canBeMade) {
        if (!solution.clashes().isEmpty()) {
            return clash(solution.clashes().iterator().next());
        } else if (!canBeMade) {
            return tooStrong();
        }
        List<Object> pieces = new ArrayList<>();
        pieces.add("Weigh ");
        for (int i = 0; i < recipe.weighings().size(); i++) {
            Weighing weighing = recipe.weighings().get(i);
            pieces.add(i == 0 ? "" : i == recipe.weighings().size() - 1 ? " and " : ", ");
            pieces.add(Sentence.figure(Figure.exact(Measure.SMALL_MASS, weighing.mass()), sources.masses()));
            pieces.add(" of " + weighing.sold().words());
        }
        pieces.add(" and fill up to ");
        pieces.add(MixingWords.volume(recipe.volume()));
        pieces.add(" with pure water");
        List<Strength> strengths = strengths();
        for (int i = 0; i < strengths.size(); i++) {
            Strength strength = strengths.get(i);
            pieces.add(i == 0 ? ": it then holds " : " and ");
            pieces.add(Sentence.figure(strength.figure(), sources.purity()));
            pieces.add(" of " + strength.supply().words());
        }
        pieces.add(".");
        return Sentence.of(pieces.toArray());
    }

    private static Sentence clash(Solution.Clash clash) {
        return switch (clash) {
            case CALCIUM_WITH_ALKALINITY ->
                Sentence.of(
                        Sentence.alarm("Do not put these into one bottle:"),
                        " calcium and alkalinity turn to chalk as soon as they meet, and neither is left to dose.");
            case MAGNESIUM_WITH_ALKALINITY ->
                Sentence.of(
                        Sentence.alarm("Do not put these into one bottle:"),
                        " magnesium falls out as carbonate or hydroxide where there is alkalinity.");
            case CALCIUM_WITH_SULFATE ->
                Sentence.of(
                        Sentence.alarm("Do not put these into one bottle:"),
                        " calcium and sulfate fall out as gypsum. Give the sulfate in a bottle of its own.");
        };
    }

    private Sentence tooStrong() {
        Solution most = Solubility.strongest(solution, room);
        return Sentence.of(
                Sentence.alarm("Make it weaker:"),
                " at ",
                Figure.exact(Measure.TEMPERATURE, room),
                " water holds no more than ",
                Sentence.figure(soldStrength(most), solubilitySource()),
                solution.content().size() > 1 ? " of these salts together" : " of this salt",
                ", as weighed, and this asks for ",
                soldStrength(solution),
                ". ",
                soldStrength(most.times(EASE)),
                " leaves a little room.");
    }

    /** Mass of the salts as they are weighed, in a volume of a solution that holds them in the recipe's proportion. */
    private Figure soldStrength(Solution scaled) {
        double weighed = recipe.weighings().stream().mapToDouble(Weighing::mass).sum() / recipe.volume();
        return Figure.exact(Measure.SALT_STRENGTH, weighed * scaled.dryMass() / solution.dryMass());
    }

    private String solubilitySource() {
        return isLimewater() ? sources.limewater() : sources.solubility();
    }

    private boolean isLimewater() {
        return solution.content().containsKey(Salt.CALCIUM_HYDROXIDE);
    }

    private List<Strength> strengths() {
        List<Strength> strengths = new ArrayList<>();
        for (Supply supply : Supply.values()) {
            Strength strength = recipe.strength(supply);
            if (strength.value() > 0) {
                strengths.add(strength);
            }
        }
        return strengths;
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        for (Strength strength : strengths()) {
            remarks.add(Sentence.of(
                    "Count on ",
                    strength.riseFigure(MILLILITRE, water),
                    " of " + strength.supply().words() + " for each millilitre in ",
                    MixingWords.volume(water),
                    ", once it is mixed in."));
        }
        remarks.add(clearness());
        remarks.addAll(new LastingWords(recipe, around, sources).remarks());
        return remarks;
    }

    private Sentence clearness() {
        if (isLimewater()) {
            return Sentence.of(
                    "Weigh a fifth more than this and let the rest lie on the ground: what the air takes is then made good."
                            + " Cold water holds more lime than warm, so it gets weaker as it warms",
                    new Sentence.Part.Reference(sources.limewater()),
                    ".");
        }
        Optional<ClearRange> clear = Solubility.clear(solution);
        double coldest = clear.map(ClearRange::coldest).orElse(Solubility.WARMEST);
        if (coldest <= Solubility.COLDEST) {
            return Sentence.of(
                    "Keep it where you like, as long as it does not freeze: it stays clear down to ",
                    Sentence.figure(Figure.exact(Measure.TEMPERATURE, Solubility.COLDEST), sources.solubility()),
                    ".");
        }
        Figure crystals = Figure.about(Measure.TEMPERATURE, coldest, 1);
        if (around.coldest() < coldest) {
            return Sentence.of(
                    Sentence.alarm("Keep it warm or make it weaker:"),
                    " where it stands it may get ",
                    Figure.exact(Measure.TEMPERATURE, around.coldest()),
                    ", and below about ",
                    Sentence.figure(crystals, sources.solubility()),
                    " crystals fall, so that what stands over them is weaker than the label says. ",
                    soldStrength(
                            Solubility.strongest(solution, around.coldest()).times(EASE)),
                    " stays clear there.");
        }
        return Sentence.of(
                "Keep it from the cold: below about ",
                Sentence.figure(crystals, sources.solubility()),
                " crystals fall, and what stands over them is weaker than the label says. Warm and stir it before you dose"
                        + " from it again.");
    }

    private List<Told> figures() {
        List<Told> figures = new ArrayList<>();
        for (Weighing weighing : recipe.weighings()) {
            figures.add(new Told(
                    weighing.sold().words(), Figure.exact(Measure.SMALL_MASS, weighing.mass()), sources.masses()));
        }
        for (Strength strength : strengths()) {
            figures.add(new Told(strength.supply().words() + " in the bottle", strength.figure(), sources.purity()));
            figures.add(new Told(
                    strength.supply().words() + " from a millilitre",
                    strength.riseFigure(MILLILITRE, water),
                    sources.purity()));
        }
        figures.add(new Told(
                "share of saturation",
                Figure.exact(Measure.SHARE, Solubility.shareOfSaturation(solution, room)),
                solubilitySource()));
        if (!isLimewater()) {
            figures.add(new Told(
                    "share of saturation where it stands coldest",
                    Figure.exact(Measure.SHARE, Solubility.shareOfSaturation(solution, around.coldest())),
                    solubilitySource()));
        }
        double warming = HeatOfSolution.warming(solution, room);
        figures.add(new Told(
                "warming while it is mixed",
                Figure.about(Measure.TEMPERATURE_DIFFERENCE, warming, HeatOfSolution.ERROR * Math.abs(warming)),
                sources.heat()));
        return figures;
    }
}
