package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.solution.Recipe.Tools;
import org.tidewright.husbandry.solution.Strength.Measured;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.SeededCases;

/** What the keeper reads. */
class SolutionReportTest {
    private static final double DAY = 86_400;
    private static final Solution BICARBONATE = Solution.ofMass(Salt.SODIUM_BICARBONATE, 80);
    private static final Solution CARBONATE = Solution.ofMass(Salt.SODIUM_CARBONATE, 150);

    private static Recipe recipe(Solution wanted, double volume) {
        Map<Salt, SoldSalt> shelf = new EnumMap<>(Salt.class);
        for (Salt salt : Salt.values()) {
            shelf.put(salt, SoldSalt.usual(salt));
        }
        return Recipe.toMake(wanted, volume, shelf, Tools.KITCHEN);
    }

    private static SolutionReport report(Solution wanted, double volume, double room) {
        return SolutionReport.of(recipe(wanted, volume), 0.2, room);
    }

    private static String text(Sentence sentence) {
        return sentence.text(UnitSystem.METRIC).replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private static String text(List<Sentence> sentences) {
        return sentences.stream().map(SolutionReportTest::text).collect(Collectors.joining("\n"));
    }

    /** 80 g of pure salt, 80.8 g at 99 %; 0.952 meq/mL; 0.0134 dKH of a millilitre in 200 L (0.952/200 2.8039). */
    @Test
    void theLeadSaysWhatToWeighAndHowStrongItGets() {
        SolutionReport report = report(BICARBONATE, 1e-3, 20);
        assertThat(text(report.lead()))
                .isEqualTo("Weigh 80.8 g of sodium bicarbonate and fill up to 1 000 mL with pure water: it then holds"
                        + " 0.95 ± 0.01 meq/mL of alkalinity.");
        assertThat(text(report.remarks()))
                .contains("0.0134 ± 0.0002 dKH of alkalinity for each millilitre in 200 L")
                .contains("Keep it from the cold: below about 10 ± 1 °C crystals fall");
        assertThat(text(report.steps())).contains("it cools by 4.4 ± 0.4 K").contains("do not heat it");
    }

    @Test
    void aColdRoomIsAnAlarm() {
        assertThat(text(report(CARBONATE, 1e-3, 17).remarks())).contains("Keep it warm or make it weaker");
        assertThat(text(report(CARBONATE, 1e-3, 20).remarks())).contains("Keep it from the cold");
        assertThat(text(report(StandardSolutions.calciumMatching(CARBONATE, 0), 1e-3, 17)
                        .remarks()))
                .contains("it stays clear down to 0 °C");
    }

    /** Crystals from 80 g/L of bicarbonate at 9.9 °C: at 5 °C it holds about 7.0 % or 73 g/L, of which nine tenths. */
    @Test
    void theColdestPlaceItStandsInDecides() {
        Recipe recipe = recipe(BICARBONATE, 1e-3);
        assertThat(text(SolutionReport.of(recipe, new Surroundings(0.2, 20, 12, 0, List.of()))
                        .remarks()))
                .contains("Keep it from the cold: below about 10 ± 1 °C");
        String cold = text(SolutionReport.of(recipe, new Surroundings(0.2, 20, 5, 0, List.of()))
                .remarks());
        assertThat(cold)
                .contains("Keep it warm or make it weaker: where it stands it may get 5 °C")
                .containsPattern("6[567]\\.?\\d? g/L stays clear there");
    }

    /**
     * 2 L at 100 mL a day: 20 days. 0.3 mol/(m³ d) ± 10 % of 200 L are 60 meq a day; of 0.9523 meq/mL 63.0 mL, its doubt
     * √(10² + 1.2²) % or 6 mL, and 2 L last 31.7 days.
     */
    @Test
    void howLongItLastsIsToldForThePlanAndForTheUse() {
        DailyUse use = new DailyUse(Supply.ALKALINITY, 0.3, 0.03, Basis.YOUR_LOG, "estimated");
        Surroundings around = new Surroundings(0.2, 20, 15, 100e-6, List.of(use));
        SolutionReport report = SolutionReport.of(recipe(BICARBONATE, 2e-3), around);
        assertThat(text(report.remarks()))
                .contains("It lasts 20 days at the plan’s 100 mL a day.")
                .contains("alkalinity the system uses, 0.84 ± 0.08 dKH/d, dose 63 ± 6 mL a day: it lasts 31.7 days");
        everyLetterHasItsSource(report);
        DailyUse none = new DailyUse(Supply.ALKALINITY, -0.1, 0.03, Basis.YOUR_LOG, "estimated");
        assertThat(text(SolutionReport.of(recipe(BICARBONATE, 2e-3), new Surroundings(0.2, 20, 15, 0, List.of(none)))
                        .remarks()))
                .doesNotContain("lasts");
    }

    @Test
    void aPairIsLetteredAsOne() {
        List<SolutionReport> pair = SolutionReport.ofPair(
                recipe(BICARBONATE, 1e-3),
                recipe(StandardSolutions.calciumMatching(BICARBONATE, 0.02), 1e-3),
                Surroundings.of(0.2, 20));
        List<String> letters = pair.get(1).sources().stream().map(Source::key).toList();
        assertThat(letters).doesNotHaveDuplicates();
        pair.forEach(report -> everyLetterHasItsSource(report, letters));
        assertThat(text(pair.get(1).remarks())).startsWith("Dose as much of it as of the alkaline bottle");
    }

    @Test
    void aSaltThatFeedsFiresSaysSo() {
        assertThat(text(report(Solution.of(Salt.SODIUM_NITRATE, 100), 1e-3, 20).cautions()))
                .startsWith("Keep sodium nitrate dry, locked up and away from all that burns");
    }

    /** At 20 °C 92.6 g/L, as 99 % 93.6 g/L; nine tenths of it 84.2 g/L. */
    @Test
    void whatDoesNotDissolveIsRefusedWithWhatDoes() {
        SolutionReport report = report(Solution.ofMass(Salt.SODIUM_BICARBONATE, 120), 1e-3, 20);
        assertThat(text(report.lead()))
                .isEqualTo(
                        "Make it weaker: at 20 °C water holds no more than 93.6 g/L of this salt, as weighed, and this asks"
                                + " for 121 g/L. 84.2 g/L leaves a little room.");
        assertThat(report.steps()).isEmpty();
        assertThat(report.figures()).isEmpty();
    }

    @Test
    void whatFallsOutIsRefused() {
        Solution calcium = StandardSolutions.calciumMatching(BICARBONATE, 0);
        assertThat(text(report(BICARBONATE.and(calcium), 1e-3, 20).lead()))
                .contains("one bottle")
                .contains("chalk");
        assertThat(text(report(calcium.and(Solution.of(Salt.MAGNESIUM_SULFATE, 100)), 1e-3, 20)
                        .lead()))
                .contains("gypsum");
        assertThat(text(report(BICARBONATE.and(Solution.of(Salt.MAGNESIUM_CHLORIDE, 100)), 1e-3, 20)
                        .lead()))
                .contains("magnesium");
    }

    @Test
    void hotMixingIsSlowedDownAndLeftOpen() {
        String hot = text(report(Solution.ofMass(Salt.CALCIUM_CHLORIDE_ANHYDROUS, 400), 1e-3, 20)
                .steps());
        assertThat(hot)
                .contains("Pour the water first")
                .contains("can boil and spit")
                .contains("Set the vessel in cold water")
                .contains("79 ± 8 K, to 99 ± 8 °C")
                .contains("lid off");
        String warm = text(report(CARBONATE, 1e-3, 20).steps());
        assertThat(warm).contains("lid off").doesNotContain("cold water");
        String lime = text(report(StandardSolutions.limewater(25), 10e-3, 20).steps());
        assertThat(lime).doesNotContain("lid off").contains("Pour the water first, 8 L");
    }

    @Test
    void causticsAskForGogglesAndGloves() {
        for (Solution caustic : List.of(
                CARBONATE, StandardSolutions.alkaline(Salt.SODIUM_HYDROXIDE, 1000), StandardSolutions.limewater(25))) {
            assertThat(text(report(caustic, 1e-3, 20).cautions()))
                    .startsWith("Wear goggles and gloves")
                    .contains("see a doctor");
        }
        assertThat(text(report(BICARBONATE, 1e-3, 20).cautions())).doesNotContain("goggles");
        assertThat(text(report(StandardSolutions.limewater(25), 10e-3, 20).cautions()))
                .contains("never quicklime")
                .contains("clear part only");
    }

    @Test
    void everyRecipeDefersToTheLabelAndKeepsThePartsApart() {
        SeededCases.check(100, draw -> {
            Solution solution = draw.oneOf(
                    BICARBONATE,
                    CARBONATE,
                    StandardSolutions.calciumMatching(CARBONATE, draw.between(0, 0.1)),
                    StandardSolutions.magnesium(draw.between(100, 2000)),
                    StandardSolutions.limewater(draw.between(5, 35)),
                    Solution.of(Salt.POTASSIUM_CHLORIDE, draw.between(1, 2000)));
            SolutionReport report = report(solution, draw.between(1e-3, 0.1), draw.between(5, 35));
            String cautions = text(report.cautions());
            assertThat(cautions).contains("safety data sheet").contains("comes before this page");
            if (solution.total(Salt::alkalinity) > 0 || solution.total(Salt::calcium) > 0) {
                assertThat(cautions).contains("Never pour alkalinity and calcium solutions together");
            }
            if (solution.total(Salt::sulfate) > 0) {
                assertThat(cautions).contains("gypsum");
            }
            everyLetterHasItsSource(report);
        });
    }

    private static void everyLetterHasItsSource(SolutionReport report) {
        everyLetterHasItsSource(
                report, report.sources().stream().map(Source::key).toList());
    }

    private static void everyLetterHasItsSource(SolutionReport report, List<String> letters) {
        Stream.of(List.of(report.lead()), report.steps(), report.remarks(), report.cautions())
                .flatMap(List::stream)
                .flatMap(sentence -> sentence.parts().stream())
                .forEach(part -> {
                    if (part instanceof Sentence.Part.Sounding figure
                            && !figure.source().isEmpty()) {
                        assertThat(letters).contains(figure.source());
                    } else if (part instanceof Sentence.Part.Reference reference) {
                        assertThat(letters).contains(reference.source());
                    }
                });
        assertThat(report.figures()).allSatisfy(told -> assertThat(letters).contains(told.source()));
    }

    /** 1.2 meq/mL ± 5 %: a mL in 200 L is 0.0168 dKH. */
    @Test
    void aLabelIsTakenAtItsWordUntilTested() {
        Strength label = Strength.fromLabel(Supply.ALKALINITY, 1.2, 1, 1e-3);
        SolutionReport report = SolutionReport.of(label, false, 0.2);
        assertThat(text(report.lead()))
                .isEqualTo("Count on 1.20 ± 0.06 meq/mL of alkalinity in this bottle: a millilitre raises 200 L by"
                        + " 0.0168 ± 0.0008 dKH.");
        assertThat(text(report.remarks())).startsWith("Dose once, test before and after");
        everyLetterHasItsSource(report);
    }

    @Test
    void aPoorTestAsksForABetterOne() {
        Measured exact = new Measured(1, 0);
        Strength poor = Strength.fromRise(Supply.CALCIUM, new Measured(1, 0.3), exact, exact);
        Strength good = Strength.fromRise(Supply.CALCIUM, new Measured(1, 0.1), exact, exact);
        assertThat(text(SolutionReport.of(poor, true, 0.2).remarks())).startsWith("Test again");
        assertThat(text(SolutionReport.of(good, true, 0.2).remarks())).doesNotContain("Test again");
        everyLetterHasItsSource(SolutionReport.of(good, true, 0.2));
    }

    private static SolutionReport residue(double alkalinityPerDay, double changed) {
        Residue perDay = Residue.of(
                Map.of(Salt.SODIUM_BICARBONATE, alkalinityPerDay, Salt.CALCIUM_CHLORIDE, alkalinityPerDay / 2), 0);
        return SolutionReport.of(new ResidueCourse(perDay.times(1 / DAY), 0.2, 35, 25, changed, 7 * DAY));
    }

    /** 0.8 dKH a day in 200 L: 1.167 g/L in the end, 1.14 of salinity; 118.9 mL a day. */
    @Test
    void saltFromTheDosesIsToldWithWhatToDo() {
        SolutionReport weekly = residue(0.05706, 0.1);
        assertThat(text(weekly.lead()))
                .startsWith("Measure the salinity before each water change")
                .contains("1.2 g/L")
                .contains("1.14 higher");
        assertThat(text(weekly.remarks()))
                .contains("table salt, 3.3 g a day")
                .contains("97 % of potassium")
                .contains("2.8 g of potassium chloride")
                .contains("119 mL of tank water for fresh water");
        // 0.1167 g/L a week are 0.1135 of salinity: 11.35 % of 200 L each week leave a plateau of one.
        assertThat(text(weekly.remarks())).contains("To hold it within 1, change 22.7 L every 7 days");
        assertThat(text(residue(0.4, 0.1).remarks())).contains("No usual water change holds it within 1");
        SolutionReport never = residue(0.05706, 0);
        assertThat(text(never.lead()))
                .startsWith("Take water out for fresh water")
                .contains("rise by 5.9");
        assertThat(text(residue(0.01, 0.1).remarks())).doesNotContain("To hold it");
        assertThat(text(residue(0.01, 0.1).lead())).startsWith("Leave the water changes as they are");
        everyLetterHasItsSource(weekly);
        everyLetterHasItsSource(never);
    }

    @Test
    void theDoubtOfTheDosesIsThatOfTheSaltTheyLeave() {
        Residue perDay = Residue.of(Map.of(Salt.SODIUM_BICARBONATE, 0.05706, Salt.CALCIUM_CHLORIDE, 0.02853), 0);
        ResidueCourse course = new ResidueCourse(perDay.times(1 / DAY), 0.2, 35, 25, 0.1, 7 * DAY);
        assertThat(text(SolutionReport.of(course, 0.1).lead())).contains("1.2 ± 0.1 g/L", "1.1 ± 0.1 higher");
    }

    /** 0.8 dKH a day are 0.2853 mol/m³ of charge, for each two of which a mole of calcium goes: 0.1427 40.078 = 5.72 mg/L. */
    @Test
    void alkalinityWithoutCalciumAsksForIt() {
        Residue alone = Residue.of(Map.of(Salt.SODIUM_BICARBONATE, 0.05706), 0);
        SolutionReport report = SolutionReport.of(new ResidueCourse(alone.times(1 / DAY), 0.2, 35, 25, 0.1, 7 * DAY));
        assertThat(text(report.lead())).startsWith("Dose calcium too:").contains("take 5.72 mg/L/d more calcium");
        SolutionReport never = SolutionReport.of(new ResidueCourse(alone.times(1 / DAY), 0.2, 35, 25, 0, 7 * DAY));
        assertThat(text(never.remarks())).contains("0 % of calcium").doesNotContain("\u2212");
        everyLetterHasItsSource(report);
    }

    @Test
    void limewaterMayGoOn() {
        Residue lime = Residue.of(Map.of(Salt.CALCIUM_HYDROXIDE, 1e-6), 0);
        SolutionReport report = SolutionReport.of(new ResidueCourse(lime, 0.2, 35, 25, 0, 7 * DAY));
        assertThat(text(report.lead()))
                .isEqualTo("Dose on: these leave no salt behind, for calcification takes all that they" + " bring.");
        assertThat(report.remarks()).isEmpty();
    }

    @Test
    void refusesARoomInFahrenheit() {
        assertThatThrownBy(() -> report(BICARBONATE, 1e-3, 68)).hasMessageContaining("fahrenheit");
    }
}
