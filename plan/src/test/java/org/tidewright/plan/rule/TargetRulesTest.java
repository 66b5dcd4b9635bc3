package org.tidewright.plan.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

class TargetRulesTest {
    private static PlanReading harbourRoom(String from, String to) {
        return PlanText.read(Examples.text("harbour-room").replace(from, to));
    }

    @Test
    void targetsThatEndBelowWhereTheyBeginAreRefused() {
        assertThat(harbourRoom("alkalinity_to: 8.6 dKH", "alkalinity_to: 7.0 dKH"))
                .isInstanceOfSatisfying(
                        PlanReading.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .singleElement()
                                .satisfies(fault ->
                                        assertThat(fault.toString()).contains("alkalinity_from", "7.4 dKH", "7 dKH")));
    }

    @Test
    void oneEndAloneIsEnough() {
        assertThat(harbourRoom("  alkalinity_to: 8.6 dKH\n", "")).isInstanceOf(PlanReading.Sound.class);
    }
}
