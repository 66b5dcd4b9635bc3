package org.tidewright.husbandry.mixing;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.carbonate.Alkalinity;

/** Of the example plans, with invented logs. */
class KnownSystemTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
    private static final double DAY = 86_400;

    private final List<Line> lines = new ArrayList<>();

    private void alkalinity(int day, double degrees) {
        OffsetDateTime at = FIRST.plusDays(day);
        Event reading = new Event.Reading(
                WaterQuantity.ALKALINITY,
                degrees,
                WaterQuantity.ALKALINITY.units().get(0),
                "endpoint_titration");
        lines.add(new Line(UUID.randomUUID(), 1, at, reading, "", false, at.toInstant()));
    }

    private KnownSystem known(String example, int day) {
        Plan plan = TestPlans.example(example);
        WaterStudy study = WaterStudy.of(plan, lines, FIRST.plusDays(day).toInstant(), BERLIN);
        return KnownSystem.of(plan, study, 0.5, BERLIN);
    }

    private static Given level(KnownSystem known, WaterQuantity quantity) {
        return requireNonNull(known.levels().get(quantity));
    }

    @Test
    void withoutALogThePlanTells() {
        KnownSystem known = known("harbour-room", 0);
        Given alkalinity = level(known, WaterQuantity.ALKALINITY);
        assertThat(alkalinity.origin()).isEqualTo(new Origin(Basis.YOUR_PLAN, ""));
        assertThat(Alkalinity.toGermanDegrees(alkalinity.value())).isCloseTo(8.0, within(1e-9));
        assertThat(Alkalinity.toGermanDegrees(alkalinity.standardError())).isCloseTo(0.3, within(1e-9));
        assertThat(known.rates()).isEmpty();
        assertThat(known.keeping()).isEqualTo(Keeping.SMALL_POLYPS);
        assertThat(requireNonNull(known.change()).value()).isCloseTo(0.045, within(1e-12));
        assertThat(requireNonNull(known.every()).value()).isEqualTo(7 * DAY);
        assertThat(requireNonNull(known.reservoir()).value()).isCloseTo(0.012, within(1e-12));
        assertThat(requireNonNull(known.newWater().get(WaterQuantity.TEMPERATURE))
                        .value())
                .isEqualTo(24);
    }

    @Test
    void whatWasReadComesBeforeThePlanWithItsDoubtAndItsDay() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, day % 8 == 0 ? 7.6 : 7.7);
        }
        KnownSystem known = known("harbour-room", 57);
        Given alkalinity = level(known, WaterQuantity.ALKALINITY);
        // 5 January and 56 days are 2 March.
        assertThat(alkalinity.origin()).isEqualTo(new Origin(Basis.YOUR_LOG, "2 March"));
        assertThat(Alkalinity.toGermanDegrees(alkalinity.value())).isCloseTo(7.65, within(0.15));
        assertThat(alkalinity.standardError()).isPositive();
        // What stays while the plan's doses go on rises by nothing.
        Given rate = requireNonNull(known.rates().get(WaterQuantity.ALKALINITY));
        assertThat(Alkalinity.toGermanDegrees(rate.value() * DAY)).isCloseTo(0, within(0.05));
        assertThat(rate.origin().detail()).isEqualTo("use and doses as they stand, 2 March");
        assertThat(level(known, WaterQuantity.CALCIUM).origin().basis()).isEqualTo(Basis.YOUR_PLAN);
    }

    @Test
    void aReadingOfLastYearIsToldWithItsYear() {
        alkalinity(-20, 8);
        assertThat(level(known("harbour-room", 1), WaterQuantity.ALKALINITY)
                        .origin()
                        .detail())
                .isEqualTo("16 December 2025");
    }

    @Test
    void targetsSayWhoseTheyAre() {
        KnownSystem known = known("window-nano", 0);
        assertThat(requireNonNull(known.targets().get(WaterQuantity.NITRATE)).origin())
                .isEqualTo(new Origin(Basis.YOUR_PLAN, "as the water is kept"));
        assertThat(requireNonNull(known.targets().get(WaterQuantity.SALINITY))
                        .origin()
                        .detail())
                .startsWith("the middle of where keepers hold it");
    }

    /** The plan of the nano tells nothing of nitrate in its new water. */
    @Test
    void whatNobodyToldIsAbsent() {
        assertThat(known("window-nano", 0).newWater()).doesNotContainKey(WaterQuantity.NITRATE);
    }
}
