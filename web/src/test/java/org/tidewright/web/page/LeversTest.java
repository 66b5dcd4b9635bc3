package org.tidewright.web.page;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;

class LeversTest {
    private static final OutageOrder USUAL = new OutageOrder(24, Outdoors.constant(0), true, true);
    private static final Plan HARBOUR = ((PlanReading.Sound) PlanText.read(Examples.text("harbour-room"))).plan();
    private static final Plan NANO = ((PlanReading.Sound) PlanText.read(Examples.text("window-nano"))).plan();

    private static Levers read(Map<String, String> query, Plan plan, UnitSystem units) {
        return Levers.read(query::get, USUAL, plan, units);
    }

    @Test
    void withoutAQueryTheUsualOrderIsRehearsed() {
        Levers levers = read(Map.of(), HARBOUR, UnitSystem.METRIC);
        assertThat(levers.order().hours()).isEqualTo(24);
        assertThat(levers.order().airHolesClear()).isTrue();
        assertThat(levers.order().backupUsed()).isTrue();
        assertThat(levers.hours()).isEqualTo("24");
        assertThat(levers.outdoor()).isEqualTo("0");
    }

    @Test
    void fahrenheitIsReadAsFahrenheit() {
        Levers levers = read(Map.of("outdoor_f", "14"), HARBOUR, UnitSystem.US);
        assertThat(levers.order().outdoors().temperature()[0]).isCloseTo(-10, offset(1e-9));
        assertThat(levers.outdoorName()).isEqualTo("outdoor_f");
        assertThat(read(Map.of(), HARBOUR, UnitSystem.US).outdoor()).isEqualTo("32");
    }

    @Test
    void whatCannotBeIsShownAsTypedWithTheReason() {
        Levers levers = read(Map.of("hours", "9999", "outdoor_c", "warm"), HARBOUR, UnitSystem.METRIC);
        assertThat(levers.hours()).isEqualTo("9999");
        assertThat(levers.hoursFault()).contains("168");
        assertThat(levers.outdoor()).isEmpty();
        assertThat(levers.outdoorFault()).contains("−40");
        assertThat(levers.order().hours()).isEqualTo(24);
        assertThat(read(Map.of("hours", "NaN"), HARBOUR, UnitSystem.METRIC).hoursFault())
                .isNotNull();
    }

    @Test
    void aChoiceThatIsNotOfferedIsNamed() {
        Levers levers = read(Map.of("hole", "foo", "backup", "yes"), HARBOUR, UnitSystem.METRIC);
        assertThat(requireNonNull(levers.airHole()).fault()).contains("“foo” is none of clear, blocked");
        assertThat(requireNonNull(levers.backup()).fault()).isNull();
        assertThat(levers.order().airHolesClear()).isTrue();
    }

    @Test
    void aPlanWithoutAirHoleOrBackupHasNoSuchLever() {
        Levers levers = read(Map.of("hole", "blocked", "backup", "yes"), NANO, UnitSystem.METRIC);
        assertThat(levers.airHole()).isNull();
        assertThat(levers.backup()).isNull();
        assertThat(levers.order().airHolesClear()).isTrue();
        assertThat(levers.order().backupUsed()).isFalse();
        assertThat(read(Map.of("hole", "blocked"), HARBOUR, UnitSystem.METRIC)
                        .order()
                        .airHolesClear())
                .isFalse();
    }
}
