package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.exchange.MemoryRecords;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/** Invented probes of the harbour room, whose temperature keepers of such corals hold from 25 to 27 °C. */
class ProbeStudyTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final Instant NOW = Instant.parse("2026-03-10T18:20:00Z");
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");

    /** Bias of the probe and of the digital thermometer, from the table of methods. */
    private static final double BIAS = 0.3;

    /** A probe that spoke every so many minutes, by hours before now. */
    private static List<ProbeHours> probe(int days, int minutes, DoubleUnaryOperator shown) {
        MemoryRecords records = new MemoryRecords();
        List<Value> values = new ArrayList<>();
        for (int minute = days * 1440; minute >= 0; minute -= minutes) {
            values.add(new Value(NOW.minusSeconds(60L * minute), shown.applyAsDouble(-minute / 60.0)));
        }
        records.append("room", SUMP, values);
        return ProbeHours.of(records, "room", NOW);
    }

    private static double swinging(double hour) {
        return 25.9 + 0.3 * Math.sin(2 * Math.PI * hour / 24);
    }

    private static QuantityStudy study(List<Line> lines, List<ProbeHours> probes) {
        return WaterStudy.of(PLAN, lines, probes, NOW, BERLIN)
                .of(WaterQuantity.TEMPERATURE)
                .orElseThrow();
    }

    private static String lead(QuantityStudy study) {
        return study.advice().lead().text(UnitSystem.METRIC);
    }

    private static Line read(int daysAgo, double degrees) {
        OffsetDateTime at =
                NOW.atOffset(ZoneOffset.ofHours(1)).minusDays(daysAgo).withHour(8);
        Event reading = new Event.Reading(
                WaterQuantity.TEMPERATURE,
                degrees,
                WaterQuantity.TEMPERATURE.units().get(0),
                "digital_thermometer");
        return new Line(UUID.randomUUID(), 1, at, reading, "", false, at.toInstant());
    }

    @Test
    void aProbeAloneTellsTheLevelAsSurelyAsItsBias() {
        QuantityStudy study = study(List.of(), probe(100, 10, ProbeStudyTest::swinging));
        assertThat(study.now().value()).isCloseTo(swinging(0), within(0.1));
        assertThat(study.now().standardError()).isCloseTo(BIAS, within(0.03));
        assertThat(study.course().readings()).isEmpty();
        assertThat(lead(study)).startsWith("Leave it as it is: temperature stands at 25.9\u00a0±\u00a00.3\u00a0°C");
        assertThat(study.state()).isEqualTo("steady; read by its probe");
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.NONE);
    }

    @Test
    void manyDaysOfAProbeDoNotAverageItsBiasAway() {
        double few =
                study(List.of(), probe(10, 60, ProbeStudyTest::swinging)).now().standardError();
        double many =
                study(List.of(), probe(400, 60, ProbeStudyTest::swinging)).now().standardError();
        assertThat(many).isCloseTo(few, within(0.02)).isGreaterThan(0.95 * BIAS);
    }

    @Test
    void aProbeAndAThermometerWithTheSameBiasMeetHalfWay() {
        List<Line> lines = new ArrayList<>();
        for (int day = 63; day > 0; day -= 7) {
            lines.add(read(day, 25.3));
        }
        QuantityStudy study = study(lines, probe(100, 60, hour -> 25.9));
        assertThat(study.now().value()).isCloseTo(25.6, within(0.1));
        // Two of 0.3 that say nothing of each other: 0.3 / √2.
        assertThat(study.now().standardError()).isCloseTo(0.212, within(0.02));
        assertThat(study.course().readings()).hasSize(9);
        // Compared on 3 March; common practice is to do that monthly.
        assertThat(study.nextTest()).isBetween(NOW.plusSeconds(22 * 86_400), NOW.plusSeconds(24 * 86_400));
    }

    @Test
    void theShareOfTheTimeInRangeComesFromTheHoursOfTheProbe() {
        // Exactly half of the hours at 26 °C, half at 30 °C, far from both ends whatever the probe is off by.
        QuantityStudy study =
                study(List.of(), probe(100, 60, hour -> Math.floorMod((long) Math.floor(hour), 2) == 0 ? 26 : 30));
        assertThat(study.stability()).extracting(Stability::days).containsExactly(30, 90);
        assertThat(study.stability()).allSatisfy(stability -> {
            assertThat(stability.probed()).isTrue();
            assertThat(stability.inRange().value()).isCloseTo(0.5, within(0.01));
            assertThat(stability.variation()).isCloseTo(2, within(0.01));
        });
    }

    @Test
    void waterThatWarmsUpFromHourToHourIsBelievedWhereManyValuesSayIt() {
        QuantityStudy study = study(List.of(), probe(100, 1, hour -> swinging(hour) + Math.max(0, 1.2 * (hour + 4))));
        assertThat(study.now().value()).isGreaterThan(29);
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.DECIDE);
        assertThat(lead(study)).startsWith("Cool the water slowly");
    }

    @Test
    void aLoneValueThatFitsToNoOtherAsksToLookAtTheWaterAndAtTheProbe() {
        QuantityStudy study = study(List.of(), probe(100, 60, hour -> hour > -0.5 ? 31 : swinging(hour)));
        assertThat(study.now().value()).isCloseTo(25.9, within(0.4));
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.HANDS);
        assertThat(lead(study)).startsWith("Look at the water and at the probe “sump” now: it last showed 31");
    }

    @Test
    void aProbeThatWentSilentIsToBeSeenTo() {
        List<ProbeHours> probes = probe(100, 60, ProbeStudyTest::swinging).stream()
                .map(each -> new ProbeHours(
                        each.probe(), each.hours().subList(0, each.hours().size() - 120)))
                .toList();
        QuantityStudy study = study(List.of(), probes);
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.TEST);
        assertThat(lead(study))
                .startsWith("See to the probe “sump”, or test temperature today: it has said nothing for 5 days");
    }

    @Test
    void whatCannotBeMeantAtAllIsLeftOut() {
        List<ProbeHours> broken = probe(30, 60, hour -> -127);
        assertThat(WaterStudy.of(PLAN, List.of(), broken, NOW, BERLIN).quantities())
                .isEmpty();
    }

    @Test
    void fewHoursAreCountedHoweverMuchAProbeSays() {
        List<ProbeHours> probes = probe(730, 10, ProbeStudyTest::swinging);
        // Four hours of each of 90 days and of every seventh of 640 before; the last one twice.
        assertThat(ProbeReadings.of(probes.get(0), NOW, BERLIN)).hasSizeBetween(4 * (90 + 90), 4 * (92 + 93) + 2);
    }

    @Test
    void hoursAreCountedAtTheSameTimesWhenTheClockIsPutForward() {
        Instant monday = Instant.parse("2026-03-30T12:30:00Z");
        MemoryRecords records = new MemoryRecords();
        List<Value> values = new ArrayList<>();
        for (int hour = 0; hour < 7 * 24; hour++) {
            values.add(new Value(monday.minusSeconds(3600L * hour), 25.5));
        }
        records.append("room", SUMP, values);
        ProbeHours hours = ProbeHours.of(records, "room", monday).get(0);
        List<Line> lines = ProbeReadings.of(hours, monday, BERLIN);
        assertThat(lines).isSortedAccordingTo((a, b) -> a.at().compareTo(b.at()));
        // The clock went forward on 29 March 2026 at 01:00 UTC: no hour is lost or doubled.
        assertThat(lines.stream()
                        .map(line -> line.at().toInstant())
                        .filter(at -> !at.isBefore(Instant.parse("2026-03-29T00:00:00Z"))
                                && at.isBefore(Instant.parse("2026-03-30T00:00:00Z"))))
                .containsExactly(
                        Instant.parse("2026-03-29T00:30:00Z"),
                        Instant.parse("2026-03-29T06:30:00Z"),
                        Instant.parse("2026-03-29T12:30:00Z"),
                        Instant.parse("2026-03-29T18:30:00Z"));
        assertThat(lines)
                .extracting(line -> line.at().getOffset().getTotalSeconds())
                .contains(3600, 7200);
    }

    @Test
    void aPartOfACourseKeepsItsLevelsAtItsEndsAndTheDoseThatStood() {
        List<Line> lines = new ArrayList<>();
        for (int day = 500; day > 0; day -= 5) {
            lines.add(read(day, 25 + 0.001 * day));
        }
        QuantityCourse whole = study(lines, List.of()).course();
        Instant from = NOW.minusSeconds(450L * 86_400 + 4000);
        Instant to = NOW.minusSeconds(440L * 86_400);
        QuantityCourse part = whole.within(from, to);
        assertThat(part.readings()).hasSize(2);
        assertThat(part.past().get(0).at()).isEqualTo(from);
        assertThat(part.past().get(part.past().size() - 1).at()).isEqualTo(to);
        assertThat(part.ahead()).isEmpty();
        assertThat(part.past())
                .allSatisfy(point -> assertThat(point.level().value()).isCloseTo(25.445, within(0.3)));
        // Five hundred days: one a day for 400, one each fourth before.
        assertThat(whole.past()).hasSizeBetween(400 + 24, 400 + 28);
        assertThat(whole.within(Span.EVER.from(), Span.EVER.to()).past()).isEqualTo(whole.past());
    }
}
