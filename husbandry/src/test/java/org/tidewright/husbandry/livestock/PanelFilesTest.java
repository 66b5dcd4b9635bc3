package org.tidewright.husbandry.livestock;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.livestock.Panel.Animals;
import org.tidewright.husbandry.livestock.Panel.Case;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.ReferenceTable;

/**
 * The two files are well formed and of one make; what the cases say is not looked at here. A failure names a case and shows
 * nothing more of it, so that the half held apart stays unseen.
 */
class PanelFilesTest {
    private static final ReferenceTable TUNING = Panel.tuning();
    private static final ReferenceTable HELD_APART = Panel.heldApart();
    private static final List<Case> TUNED_ON = Panel.cases(TUNING);
    private static final List<Case> KEPT_BACK = Panel.cases(HELD_APART);

    @Test
    void bothFilesHaveTheColumnsInTheirOrder() {
        assertThat(TUNING.columns()).isEqualTo(Panel.COLUMNS);
        assertThat(HELD_APART.columns()).isEqualTo(Panel.COLUMNS);
    }

    @Test
    void theHeadingsDifferOnlyInTheUse() {
        assertThat(heading(HELD_APART, "use")).startsWith("HELD APART");
        assertThat(TUNING.heading())
                .filteredOn(line -> !line.startsWith("use:"))
                .isEqualTo(HELD_APART.heading().stream()
                        .filter(line -> !line.startsWith("use:"))
                        .toList());
    }

    @Test
    void noTwoCasesShareAName() {
        assertThat(all().map(Case::name)).doesNotHaveDuplicates();
    }

    @Test
    void everyCaseLiesWhereItsCoinFell() {
        String seed = heading(TUNING, "seed").split(",", -1)[0];
        assertThat(seed).startsWith("coin ");
        TUNED_ON.forEach(
                one -> assertThat(Panel.coin(seed, one.name())).as(one.name()).isZero());
        KEPT_BACK.forEach(
                one -> assertThat(Panel.coin(seed, one.name())).as(one.name()).isOne());
    }

    @Test
    void thereAreEnoughCasesOfEveryVerdict() {
        assertThat(count(all(), "no")).isGreaterThanOrEqualTo(45);
        assertThat(count(all(), "not_yet")).isGreaterThanOrEqualTo(20);
        assertThat(count(all(), "yes")).isGreaterThanOrEqualTo(25);
    }

    @Test
    void eachHalfHoldsTwoFifthsOfEveryVerdict() {
        for (String verdict : Panel.VERDICTS) {
            double share = (double) count(TUNED_ON.stream(), verdict) / count(all(), verdict);
            assertThat(share).as(verdict).isBetween(0.4, 0.6);
        }
    }

    @Test
    void eachHalfHoldsEveryFamily() {
        assertThat(families(TUNED_ON).keySet()).containsExactlyInAnyOrderElementsOf(Panel.FAMILIES);
        assertThat(families(KEPT_BACK).keySet()).containsExactlyInAnyOrderElementsOf(Panel.FAMILIES);
        families(all().toList())
                .forEach((family, cases) -> assertThat(cases).as(family).isGreaterThanOrEqualTo(4));
    }

    @Test
    void whateverIsNoPlainYesHasItsReasonsOnceEach() {
        all().forEach(one -> {
            assertThat(one.families()).as(one.name()).doesNotHaveDuplicates();
            if (!one.expected().equals("yes")) {
                assertThat(one.families()).as(one.name()).isNotEmpty();
            }
            assertThat(one.because()).as(one.name()).endsWith(".");
        });
    }

    @Test
    void theWaterFitsTheDisplay() {
        all().forEach(one -> {
            double display = one.length() * one.width() * one.height();
            assertThat(one.water() / display).as(one.name()).isBetween(0.8, 1.4);
            assertThat(one.sand()).as(one.name()).isLessThan(one.height() / 3);
        });
    }

    @Test
    void aKindHasItsLengthAlwaysOrNever() {
        Map<String, Boolean> measured = new HashMap<>();
        all().flatMap(one -> Stream.concat(one.residents().stream(), Stream.of(one.candidate())))
                .forEach(animals -> assertThat(measured.computeIfAbsent(animals.name(), first -> hasLength(animals)))
                        .as(animals.name())
                        .isEqualTo(hasLength(animals)));
        assertThat(measured).containsValues(true, false);
    }

    @Test
    void aSourceOtherThanCommonPracticeIsNamedWithItsYear() {
        all().forEach(one -> {
            if (one.basis() == Basis.COMMON_PRACTICE) {
                assertThat(one.source()).as(one.name()).startsWith("common practice");
            } else {
                assertThat(one.source()).as(one.name()).matches("[A-Z].*\\b(19|20)\\d\\d\\b.*");
            }
        });
    }

    @Test
    void readsAnimalsWithAndWithoutALength() {
        assertThat(Panel.animals("here", "2 Amphiprion ocellaris 6.5 cm").length())
                .hasValue(6.5e-2);
        assertThat(Panel.animals("here", "10 Trochus sp."))
                .extracting(Animals::count, Animals::name)
                .containsExactly(10, "Trochus sp.");
    }

    @Test
    void refusesWhatIsMisspeltAndSaysWhatItExpects() {
        for (String faulty :
                List.of("Gramma loreto 7 cm", "0 Gramma loreto 7 cm", "1 gramma loreto", "1 Gramma loreto 7")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Panel.animals("here", faulty))
                    .withMessageContaining("here: found '" + faulty + "', expected a count");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Panel.word("there", "maybe", Panel.VERDICTS))
                .withMessage("there: found 'maybe', expected one of [yes, not_yet, no]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Panel.basis("there", "computed"))
                .withMessageContaining("expected one of [published, common practice, from memory]");
    }

    private static Stream<Case> all() {
        return Stream.concat(TUNED_ON.stream(), KEPT_BACK.stream());
    }

    private static long count(Stream<Case> cases, String verdict) {
        return cases.filter(one -> one.expected().equals(verdict)).count();
    }

    private static Map<String, Long> families(List<Case> cases) {
        return cases.stream().flatMap(one -> one.families().stream()).collect(groupingBy(family -> family, counting()));
    }

    private static boolean hasLength(Animals animals) {
        return animals.length().isPresent();
    }

    private static String heading(ReferenceTable table, String word) {
        return table.heading().stream()
                .filter(line -> line.startsWith(word + ": "))
                .map(line -> line.substring(word.length() + 2))
                .findFirst()
                .orElseThrow(() -> new AssertionError(table + " has no line '" + word + ": ...' in its heading"));
    }
}
