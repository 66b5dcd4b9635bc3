package org.tidewright.plan.rule;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Quarantine;
import org.tidewright.plan.model.Rock;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class QuarantineRulesTest {
    private static PlanReading box(String from, String to) {
        String text = Examples.text("quarantine-box");
        assertThat(text).contains(from);
        return PlanText.read(text.replace(from, to));
    }

    private static Plan sound(String from, String to) {
        return ((PlanReading.Sound) box(from, to)).plan();
    }

    private static void refuses(String from, String to, String... told) {
        assertThat(box(from, to))
                .isInstanceOfSatisfying(
                        PlanReading.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .singleElement()
                                .satisfies(fault -> assertThat(fault.toString()).contains(told)));
    }

    @Test
    void daysThatAreLeftOutAreThoseOfCommonPractice() {
        Quarantine quarantine = requireNonNull(sound(
                        "  watch: 30 d # without a sign; a sign begins the count anew\n  dry: 3 d # between two batches\n",
                        "")
                .quarantine());
        assertThat(quarantine.serves()).isEqualTo("Harbour room");
        assertThat(quarantine.watchDays()).isEqualTo(30);
        assertThat(quarantine.dryDays()).isEqualTo(3);
        assertThat(requireNonNull(sound("watch: 30 d", "watch: 1080 h").quarantine())
                        .watchDays())
                .isEqualTo(45);
        assertThat(requireNonNull(sound("dry: 3 d", "dry: 0 d").quarantine()).dryDays())
                .isZero();
    }

    @Test
    void aTankThatServesItselfIsRefused() {
        refuses("serves: Harbour room", "serves: quarantine box", "quarantine.serves", "this system itself");
    }

    @Test
    void partsOfDaysAndTooFewDaysAreRefused() {
        refuses("watch: 30 d", "watch: 30.5 d", "quarantine.watch", "whole number of days");
        refuses("dry: 3 d", "dry: 6 h", "quarantine.dry", "whole number of days");
        refuses("watch: 30 d", "watch: 7 d", "quarantine.watch", "14 to 180 d");
    }

    @Test
    void aSpongeIsLiveWhereThePlanDoesNotSay() {
        Plan plan = sound("{foam: 0.6 L, state: live}", "{foam: 0.6 L}");
        assertThat(requireNonNull(plan.airPumps().get(0).sponge()).stateOrLive())
                .isEqualTo(Rock.State.LIVE);
    }
}
