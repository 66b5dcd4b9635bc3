package org.tidewright.husbandry.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;

class TargetRangeTest {
    private static final double DEGREE = WaterQuantity.ALKALINITY.units().get(0).toHeld(1);

    private static TargetRange alkalinity(Plan plan) {
        return TargetRange.of(plan, WaterQuantity.ALKALINITY).orElseThrow();
    }

    @Test
    void withoutTargetsCommonPracticeForTheMostDemandingAnimalsHolds() {
        Plan plan = TestPlans.example(
                "harbour-room", "  alkalinity_from: 7.4 dKH\n  alkalinity_to: 8.6 dKH\n", "  calcium_from: 410 mg/L\n");
        assertThat(Keeping.of(plan)).isEqualTo(Keeping.SMALL_POLYPS);
        TargetRange range = alkalinity(plan);
        assertThat(range.basis()).isEqualTo(Basis.COMMON_PRACTICE);
        assertThat(range.least() / DEGREE).isCloseTo(7, within(1e-9));
        assertThat(range.most() / DEGREE).isCloseTo(9.5, within(1e-9));
    }

    @Test
    void aStatedEndIsYoursAndTheOtherEndStaysCustomary() {
        Plan plan = TestPlans.workedTank("stand: {", "targets: {alkalinity_from: 7.8 dKH}\nstand: {");
        TargetRange range = alkalinity(plan);
        assertThat(range.basis()).isEqualTo(Basis.YOUR_PLAN);
        assertThat(range.least() / DEGREE).isCloseTo(7.8, within(1e-9));
        assertThat(range.most()).isGreaterThan(range.least());
    }

    @Test
    void theAimIsTheWaterAsItIsKeptWhereThatLiesWithin() {
        Plan plan = TestPlans.example("harbour-room");
        // The plan keeps its water at 8.0 dKH, its targets reach from 7.4 to 8.6.
        assertThat(alkalinity(plan).aim(plan) / DEGREE).isCloseTo(8.0, within(1e-9));
    }

    @Test
    void theAimIsTheMiddleWhereThePlanSaysNothing() {
        Plan plan = TestPlans.example("harbour-room");
        TargetRange ph = TargetRange.of(plan, WaterQuantity.PH).orElseThrow();
        assertThat(ph.aim(plan)).isCloseTo((8.0 + 8.45) / 2, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(WaterQuantity.class)
    void everyRangeHasRoomAndCanBeMeant(WaterQuantity quantity) {
        TargetRange.of(TestPlans.example("harbour-room"), quantity).ifPresent(range -> {
            assertThat(range.least()).isLessThan(range.most()).isGreaterThanOrEqualTo(quantity.least());
            assertThat(range.most()).isLessThanOrEqualTo(quantity.most());
        });
    }
}
