package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.livestock.Isolation.Room;
import org.tidewright.husbandry.quarantine.FallowSpan;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.plan.model.UnitSystem;

/** Today is 1 November 2026. */
class QuarantineRuleTest {
    private static List<Finding> judge(String name, Isolation isolation) {
        return SettingsByHand.judge(
                new QuarantineRule(), SettingsByHand.animals(name, 1), SettingsByHand.isolated(isolation), null);
    }

    private static Finding room(Room... rooms) {
        List<Finding> findings = judge("Gramma loreto", new Isolation(List.of(rooms), List.of()));
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static String becomes(Finding finding) {
        return Objects.requireNonNull(finding.becomes()).text(UnitSystem.METRIC);
    }

    @Test
    void anEmptyDryTankHolds() {
        assertThat(room(new Room("box", 30, false, null)).call()).isEqualTo(Call.YES);
    }

    @Test
    void aTakenOrWetOneWaitsUntilTheFirstIsFree() {
        Finding taken = room(
                new Room("box", 30, true, LocalDate.of(2026, 12, 25)),
                new Room("tub", 30, false, LocalDate.of(2026, 11, 3)));
        assertThat(taken.call()).isEqualTo(Call.NOT_YET);
        assertThat(becomes(taken)).isEqualTo("Buy it after 3 November, when tub is empty and dry.");
    }

    @Test
    void oneOfTwoThatIsFreeIsEnough() {
        assertThat(room(new Room("box", 30, true, LocalDate.of(2026, 12, 25)), new Room("tub", 30, false, null))
                        .call())
                .isEqualTo(Call.YES);
    }

    @Test
    void withoutAQuarantineTankItIsToBeWatchedElsewhere() {
        assertThat(room().call()).isEqualTo(Call.MIND);
    }

    @Test
    void noFishComesIntoADisplayThatWaitsForAParasiteToDie() {
        FallowState fallow = new FallowState(
                Parasite.WHITE_SPOT, LocalDate.of(2026, 10, 1), List.of(), FallowSpan.of(Parasite.WHITE_SPOT, 25));
        List<Finding> findings =
                judge("Gramma loreto", new Isolation(List.of(new Room("box", 30, false, null)), List.of(fallow)));
        assertThat(findings)
                .filteredOn(each -> each.rule().equals("fallow"))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.call()).isEqualTo(Call.NOT_YET);
                    assertThat(becomes(each)).contains("it may wait in quarantine");
                });
    }

    @Test
    void ofOtherAnimalsAndWhereNothingIsKnownNothingIsSaid() {
        assertThat(judge("Lysmata amboinensis", new Isolation(List.of(), List.of())))
                .isEmpty();
        assertThat(SettingsByHand.judge(
                        new QuarantineRule(),
                        SettingsByHand.animals("Gramma loreto", 1),
                        SettingsByHand.setting(List.of(), new Experience(List.of(), List.of()), null, null),
                        null))
                .isEmpty();
    }

    /** White spot is waited for 76 days: from 1 August they were over on 16 October, though no line of the log ended them. */
    @Test
    void aFallowWhoseDaysAreOverHoldsNobodyUp() {
        FallowState over = new FallowState(
                Parasite.WHITE_SPOT, LocalDate.of(2026, 8, 1), List.of(), FallowSpan.of(Parasite.WHITE_SPOT, 25));
        assertThat(judge("Gramma loreto", new Isolation(List.of(new Room("box", 30, false, null)), List.of(over))))
                .extracting(Finding::call)
                .containsExactly(Call.YES);
    }
}
