package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.CALCIUM;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;
import static org.tidewright.plan.method.WaterQuantity.SALINITY;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;

/** What is read of plans and journals, against amounts worked by hand. */
class JournalInputsTest {
    private static final OffsetDateTime START = OffsetDateTime.of(2025, 3, 3, 18, 30, 0, 0, ZoneOffset.ofHours(1));
    private static final double DEGREE = TestInputs.one(ALKALINITY);
    private static final double BICARBONATE = 84.007e-3;

    private final Plan plan = TestPlans.example("harbour-room");
    private final double volume = SystemWater.volume(plan);
    private final List<Line> lines = new ArrayList<>();

    private void write(double daysAfterMidnight, Event event) {
        OffsetDateTime at = START.toLocalDate()
                .atStartOfDay()
                .atOffset(START.getOffset())
                .plusSeconds(Math.round(daysAfterMidnight * 86_400));
        lines.add(new Line(new UUID(1, lines.size()), 1, at, event, "", false, at.toInstant()));
    }

    private void read(double day, double degrees, @Nullable String method) {
        write(day, new Event.Reading(ALKALINITY, degrees, ALKALINITY.units().get(0), method));
    }

    private Inputs inputs() {
        lines.sort(Comparator.comparing(line -> line.at().toInstant()));
        return Inputs.of(plan, lines, Span.EVER);
    }

    private static Solution solution(Inputs inputs, String name) {
        return inputs.solutions().stream()
                .filter(solution -> solution.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void timeIsCountedFromTheMidnightBeforeTheFirstLineOnTheKeepersClock() {
        read(0.75, 8, null);
        read(4.25, 8, null);
        Inputs inputs = inputs();
        assertThat(inputs.origin()).isEqualTo("2025-03-02T23:00:00Z");
        assertThat(inputs.readings().get(0).time()).isCloseTo(0.75, within(1e-9));
        assertThat(inputs.until()).isCloseTo(4.25, within(1e-9));
        assertThat(inputs.at(0.75)).isEqualTo("2025-03-03T17:00:00Z");
        assertThat(inputs.time(inputs.at(3.5))).isCloseTo(3.5, within(1e-9));
    }

    /** 100 mL of 80 g/L a day in six pulses: 8 g, 95.23 mmol, into the water of the system. */
    @Test
    void aPlannedSolutionBringsWhatItsSaltDoes() {
        read(0.5, 8, null);
        Solution bicarbonate = solution(inputs(), "bicarbonate");
        double aDay = bicarbonate.amount(0, 1) * bicarbonate.effectOn(ALKALINITY);
        assertThat(aDay).isCloseTo(8e-3 / BICARBONATE / volume, withinPercentage(0.01));
        assertThat(bicarbonate.effectOn(CALCIUM)).isZero();
        // Pulses at 2, 6, 10, 14, 18 and 22 o'clock: two of the six are in by eight.
        assertThat(bicarbonate.amount(3, 3 + 8 / 24.0)).isCloseTo(100e-6 / 3, withinPercentage(1e-6));
    }

    /** 2 L a day at 0.9 of saturation: 1.8 L × 41 meq/L or so, and half as many moles of calcium. */
    @Test
    void limewaterBringsCalciumAndAlkalinityInBalance() {
        read(0.5, 8, null);
        Solution limewater = solution(inputs(), "limewater");
        double alkalinity = limewater.amount(0, 1) * limewater.effectOn(ALKALINITY);
        assertThat(alkalinity * volume).isCloseTo(1.8e-3 * 41.5, withinPercentage(3));
        assertThat(limewater.effectOn(CALCIUM) / 40.078e-3)
                .isCloseTo(limewater.effectOn(ALKALINITY) / 2, withinPercentage(0.01));
    }

    /** The acid takes alkalinity that its bacteria give back within hours. */
    @Test
    void vinegarBringsNothing() {
        read(0.5, 8, null);
        assertThat(solution(inputs(), "vinegar").effectOn(ALKALINITY)).isZero();
    }

    @Test
    void aLeverMovedSetsTheDoseFromThenOnAndTheFirstSaysHowItStood() {
        read(0.5, 8, null);
        write(10, new Event.LeverMoved("bicarbonate dose", "m^3/s", 50e-6 / 86_400, 150e-6 / 86_400));
        write(20, new Event.LeverMoved("bicarbonate dose", "m^3/s", null, 200e-6 / 86_400));
        read(30, 8, null);
        Solution bicarbonate = solution(inputs(), "bicarbonate");
        assertThat(bicarbonate.amount(4, 5)).isCloseTo(50e-6, within(1e-12));
        assertThat(bicarbonate.amount(14, 15)).isCloseTo(150e-6, within(1e-12));
        assertThat(bicarbonate.amount(24, 25)).isCloseTo(200e-6, within(1e-12));
        assertThat(bicarbonate.amount(18, 22)).isCloseTo(2 * 150e-6 + 2 * 200e-6, within(1e-12));
        assertThat(bicarbonate.dosed(0, 26).amount(25, 30)).isCloseTo(200e-6, within(1e-12));
    }

    @Test
    void aDoseByHandComesOnTopOfTheProgramme() {
        read(0.5, 8, null);
        write(5.5, new Event.Dose("bicarbonate", null, null, 30e-6));
        // 10 g of the dry salt: 119.0 mmol.
        write(6.5, new Event.Dose("baking soda", Salt.SODIUM_BICARBONATE, 10e-3, null));
        read(9, 8, null);
        Inputs inputs = inputs();
        assertThat(solution(inputs, "bicarbonate").amount(5, 6)).isCloseTo(130e-6, within(1e-12));
        Solution dry = solution(inputs, "sodium_bicarbonate");
        assertThat(dry.amount(6, 7) * dry.effectOn(ALKALINITY) * volume).isCloseTo(0.1190, within(5e-5));
        assertThat(inputs.notes()).isEmpty();
    }

    @Test
    void aDoseThatNobodyDescribedIsNamedAndNotCounted() {
        read(0.5, 8, null);
        write(5, new Event.Dose("booster", null, null, 30e-6));
        Inputs inputs = inputs();
        assertThat(inputs.notes()).hasSize(1);
        assertThat(inputs.notes().get(0)).contains("“booster”").contains("not counted");
    }

    @Test
    void theJournalsWaterChangesCountAndThePlansGoOnAfterItsEnd() {
        read(0.5, 8, null);
        write(3.5, new Event.WaterChanged(0.060, Map.of(ALKALINITY, 9 * DEGREE)));
        write(9.5, new Event.WaterChanged(0.045, Map.of()));
        read(12, 8, null);
        Inputs inputs = inputs();
        List<Renewal> made = inputs.renewals().stream()
                .filter(renewal -> renewal.time() <= inputs.until())
                .toList();
        assertThat(made).hasSize(2);
        assertThat(made.get(0).share()).isCloseTo(0.060 / volume, within(1e-12));
        assertThat(known(made.get(0), ALKALINITY).value() / DEGREE).isCloseTo(9, within(1e-8));
        assertThat(known(made.get(1), ALKALINITY).value() / DEGREE)
                .isCloseTo(8.2, within(1e-8)); // the plan's new water
        assertThat(known(made.get(1), NITRATE).value()).isCloseTo(0.2e-3, within(1e-12));
        // The plan changes 45 L every seven days.
        Renewal next = inputs.renewals().get(2);
        assertThat(next.time()).isCloseTo(16.5, within(1e-9));
        assertThat(next.share()).isCloseTo(0.045 / volume, within(1e-12));
    }

    private static Known known(Renewal renewal, org.tidewright.plan.method.WaterQuantity quantity) {
        Known known = renewal.newWater().get(quantity);
        assertThat(known).isNotNull();
        return java.util.Objects.requireNonNull(known);
    }

    /** Nobody said on which days they fell: a seventh of it each day, seven of which make the whole. */
    @Test
    void withoutAnyInTheJournalThePlansWaterChangesAreSpreadOverTheirInterval() {
        read(0.5, 8, null);
        read(29, 8, null);
        Inputs inputs = inputs();
        List<Renewal> week = inputs.renewals().stream()
                .filter(renewal -> renewal.time() > 7 && renewal.time() <= 14)
                .toList();
        assertThat(week).hasSize(7);
        double left = week.stream().mapToDouble(renewal -> 1 - renewal.share()).reduce(1, (one, other) -> one * other);
        assertThat(1 - left).isCloseTo(0.045 / volume, within(1e-9));
    }

    @Test
    void waterChangesThatWereStoppedByTheirLeverAreNotMade() {
        read(0.5, 8, null);
        write(10, new Event.LeverMoved("water changes", "1", null, 0));
        read(29, 8, null);
        assertThat(inputs().renewals()).allMatch(renewal -> renewal.time() < 10);
    }

    @Test
    void animalsAndOtherLeversUnsettleTheUseButDosesAndWaterChangesDoNot() {
        read(0.5, 8, null);
        write(2, new Event.AnimalMoved("a coral", 1, Event.Move.ARRIVED, null));
        write(3, new Event.LeverMoved("light bar hours", "s", null, 36_000));
        write(4, new Event.LeverMoved("bicarbonate dose", "m^3/s", null, 1e-9));
        write(5, new Event.LeverMoved("water changes", "1", null, 1));
        assertThat(inputs().upsets()).extracting(Inputs.Upset::what).containsExactly("a coral", "light bar hours");
    }

    @Test
    void aReadingByNobodyKnowsWhatCountsAsByTheCoarsestMethod() {
        read(0.5, 8, "syringe_titration");
        read(2, 8, null);
        read(3, 8, "tasting");
        Inputs inputs = inputs();
        assertThat(inputs.readings())
                .extracting(reading -> reading.method().key())
                .containsExactly("syringe_titration", "drop_titration", "drop_titration");
        assertThat(inputs.notes()).hasSize(1);
        assertThat(inputs.notes().get(0)).contains("“tasting”");
    }

    @Test
    void struckLinesAndReadingsOutsideTheSpanAreNotCounted() {
        read(0.5, 8, null);
        read(5, 8, null);
        read(9, 8, null);
        Line last = lines.get(2);
        lines.set(2, new Line(last.id(), 2, last.at(), last.event(), "", true, last.writtenAt()));
        assertThat(inputs().readings()).hasSize(2);
        Span later = new Span(lines.get(1).at().toInstant(), Span.EVER.to());
        assertThat(Inputs.of(plan, lines, later).readings()).hasSize(1);
    }

    /** Stated: 1.0 ± 0.2 dKH a day, no better known than to a quarter. Level as stated, within a degree. */
    @Test
    void thePlanSaysWhatIsExpected() {
        read(0.5, 8, null);
        Inputs inputs = inputs();
        assertThat(inputs.use(ALKALINITY).value() / DEGREE).isCloseTo(1.0, within(1e-8));
        assertThat(inputs.use(ALKALINITY).standardError() / DEGREE).isCloseTo(0.25, within(1e-8));
        assertThat(inputs.level(ALKALINITY) / DEGREE).isCloseTo(8.0, within(1e-8));
        assertThat(inputs.level(SALINITY)).isCloseTo(35, within(1e-12));
        // 10 % of corals' lime is coralline: 0.9 × 0.005 + 0.1 × 0.15.
        assertThat(inputs.magnesiumShare()).isCloseTo(0.0195, within(1e-12));
        // Weekly 45 L take 8 - 0.2 mg/L of nitrate along, which is made again.
        assertThat(inputs.use(NITRATE).value() * 1e3).isCloseTo(-7.8 * 0.045 / volume / 7, withinPercentage(6));
    }

    @Test
    void aPlanThatStatesNoUseExpectsWhatItsDosesMakeUpFor() {
        Plan nano = TestPlans.example("window-nano");
        read(0.5, 8, null);
        Inputs inputs = Inputs.of(nano, lines, Span.EVER);
        double dosed = 3e-6 * 80 / BICARBONATE / SystemWater.volume(nano);
        double renewed = 0.012 / SystemWater.volume(nano) / 7 * (8.5 - 7.5) * DEGREE;
        assertThat(inputs.use(ALKALINITY).value()).isCloseTo(dosed + renewed, withinPercentage(5));
    }

    /** The reservoir holds limewater of 35 %; what evaporates is reckoned, and no more than it holds in three days. */
    @Test
    void limewaterInTheTopOffCountsByWhatEvaporates() {
        Plan parlor = TestPlans.example("fifty-five-gallon");
        read(0.5, 8, null);
        Solution topOff = solution(Inputs.of(parlor, lines, Span.EVER), "limewater in the top-off");
        double litres = topOff.amount(0, 1) * 1e3;
        assertThat(litres).isBetween(0.2, 1.5 * 3.785 / 3 + 1e-9);
        assertThat(topOff.strengthError()).isGreaterThan(0.2);
    }

    @Test
    void anEmptyJournalGivesNothingToEstimate() {
        Inputs inputs = Inputs.of(plan, List.of(), Span.EVER);
        assertThat(Estimates.of(inputs).all()).isEmpty();
    }
}
