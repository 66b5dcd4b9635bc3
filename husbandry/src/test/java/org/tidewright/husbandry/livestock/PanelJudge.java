package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidewright.plan.model.Cover;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.Species;

/** Puts a case of the panel before the rules. */
final class PanelJudge {
    /** The panel's tanks are held where the keeper likes between these. */
    private static final double COOLEST = 23;

    private static final double WARMEST = 26;

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    private PanelJudge() {}

    /**
     * What came of a case.
     *
     * @param reasons the rules that found the verdict
     */
    record Outcome(Panel.Case judged, Verdict verdict, Set<String> reasons) {
        boolean agrees() {
            return verdict.call().verdict().equals(judged.expected());
        }

        /** Whether one of the reasons is one of those expected. */
        boolean isForTheReason() {
            return judged.expected().equals("yes") || judged.families().stream().anyMatch(reasons::contains);
        }
    }

    /** Names of the cases that were judged otherwise than expected. */
    static List<String> differing(List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> !outcome.agrees())
                .map(outcome -> outcome.judged().name())
                .toList();
    }

    /** Names of those judged as expected, for none of the reasons expected. */
    static List<String> forAnotherReason(List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> outcome.agrees() && !outcome.isForTheReason())
                .map(outcome -> outcome.judged().name())
                .toList();
    }

    static List<Outcome> judge(List<Panel.Case> cases) {
        return cases.stream().map(PanelJudge::judge).toList();
    }

    private static Outcome judge(Panel.Case judged) {
        Set<Home.Given> foods = judged.foods().stream()
                .map(food -> Home.Given.valueOf(food.toUpperCase(Locale.ROOT)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Home.Given.class)));
        Home home = new Home(
                judged.length(),
                judged.width(),
                judged.height(),
                judged.water(),
                switch (judged.lid()) {
                    case "lid" -> Cover.LID;
                    case "mesh" -> Cover.NET;
                    default -> Cover.OPEN;
                },
                judged.sand(),
                judged.rock(),
                COOLEST,
                WARMEST,
                judged.age(),
                judged.alkalinityDeviation().isPresent()
                        ? judged.alkalinityDeviation().getAsDouble()
                        : null,
                foods,
                foods.contains(Home.Given.MANY_SMALL) ? 3 : 1.5);
        List<Animals> residents =
                judged.residents().stream().map(PanelJudge::animals).toList();
        Verdict verdict = Verdict.of(animals(judged.candidate()), Setting.of(TODAY, home, residents), null);
        Set<String> reasons = verdict.findings().stream()
                .filter(finding -> finding.call() == verdict.call())
                .map(Finding::rule)
                .collect(Collectors.toSet());
        return new Outcome(judged, verdict, reasons);
    }

    private static Animals animals(Panel.Animals told) {
        Species species = Catalogue.ofProgram()
                .find(told.name())
                .orElseThrow(() -> new AssertionError("the catalogue does not hold " + told.name()));
        return new Animals(species, told.count(), told.length().orElse(0));
    }
}
