package org.tidewright.store.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;

/** What whoever keeps journals must do with single lines, whatever it keeps them in. */
abstract class JournalContract extends JournalCase {
    private Draft fed(String at) {
        return draft(OffsetDateTime.parse(at), FED, "");
    }

    @ParameterizedTest
    @MethodSource("events")
    void everyEventComesBackAsItWasWritten(Event event) {
        Draft draft = draft(NOON, event, "by hand");
        Line written = journal.write(REEF, draft);
        assertThat(written.id()).isEqualTo(draft.id());
        assertThat(written.revision()).isEqualTo(1);
        assertThat(written.at()).isEqualTo(NOON);
        assertThat(written.event()).isEqualTo(event);
        assertThat(written.remark()).isEqualTo("by hand");
        assertThat(written.struck()).isFalse();
        assertThat(journal.lines(REEF, Span.EVER, Set.of(Kind.of(event)))).containsExactly(written);
        assertThat(journal.history(REEF, draft.id())).containsExactly(written);
        assertThat(journal.everything(REEF)).containsExactly(written);
    }

    @Test
    void everyKindOfEventIsAmongThoseTried() {
        assertThat(events().stream().map(Kind::of)).containsAll(ALL);
    }

    @Test
    void zeroBelowZeroIsKeptAsZero() {
        Draft draft = draft(NOON, new Event.LeverMoved("room temperature", "degC", -0.0, -0.0), "");
        assertThat(journal.write(REEF, draft).event())
                .isEqualTo(new Event.LeverMoved("room temperature", "degC", 0.0, 0.0));
    }

    @Test
    void whatCannotBeKeptAsItIsIsRefusedAndNothingOfItKept() {
        List<Draft> unkeepable = List.of(
                draft(NOON, FED, "half a \uD83D"),
                draft(NOON, FED, "\uDC20 the other half"),
                draft(NOON, FED, "nothing \0"),
                draft(NOON, new Event.Fed("half a \uD83D", 0.001), ""),
                draft(NOON, new Event.LeverMoved("feed", "1", Double.NaN, 1), ""),
                draft(NOON, new Event.WaterChanged(0.04, Map.of(WaterQuantity.PH, Double.NaN)), ""));
        for (Draft draft : unkeepable) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> journal.write(REEF, draft))
                    .withMessageContaining("cannot be kept");
        }
        assertThat(journal.everything(REEF)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-05-03T12:00:00.123456789+02:00",
                "2026-05-03T12:00:00.000000001Z",
                "1969-12-31T23:59:59.999999999-05:00",
                "2028-02-29T23:30:00-11:00",
                "0001-01-01T00:00:00+18:00",
                "9998-12-31T23:59:59.999999999-18:00",
                "1925-06-01T12:00:00+00:19:32"
            })
    void aTimeComesBackToTheNanosecondWithItsOffset(String at) {
        Line line = journal.write(REEF, fed(at));
        assertThat(line.at()).isEqualTo(OffsetDateTime.parse(at));
        assertThat(line.at().getOffset()).isEqualTo(OffsetDateTime.parse(at).getOffset());
        assertThat(journal.lines(REEF, Span.EVER, ALL)).containsExactly(line);
    }

    @Test
    void aTimeThatNoSpanCouldFindAgainIsRefused() {
        for (OffsetDateTime at : List.of(
                OffsetDateTime.MIN,
                OffsetDateTime.MAX,
                OffsetDateTime.parse("-0001-12-31T23:59:59Z"),
                OffsetDateTime.parse("9999-12-31T00:00:00Z"))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> journal.write(REEF, draft(at, FED, "")))
                    .withMessageContaining("times go from 0000-01-01T00:00:00Z up to 9999-12-31T00:00:00Z");
        }
    }

    @Test
    void anHourThatTheClocksShowTwiceIsKeptAsTwo() {
        Line again = journal.write(REEF, fed("2026-10-25T02:30:00+01:00"));
        Line first = journal.write(REEF, fed("2026-10-25T02:30:00+02:00"));
        assertThat(journal.lines(REEF, Span.EVER, ALL)).containsExactly(first, again);
        assertThat(first.at().toLocalDateTime()).isEqualTo(again.at().toLocalDateTime());
    }

    @Test
    void whatIsSentTwiceIsKeptOnceAsItWasFirst() {
        Draft draft = draft(NOON, FED, "first");
        Line line = journal.write(REEF, draft);
        Draft changed = new Draft(draft.id(), NOON.plusDays(1), new Event.WorkDone("looked", null), "second");
        assertThat(journal.write(REEF, draft)).isEqualTo(line);
        assertThat(journal.write(REEF, changed)).isEqualTo(line);
        assertThat(journal.everything(REEF)).containsExactly(line);
    }

    @Test
    void anAnimalThatMovesStandsInBothLogsOrInNone() {
        Draft left = draft(NOON, new Event.AnimalMoved("wrasse", 1, Event.Move.LEFT, null), "");
        Draft arrived = draft(NOON, new Event.AnimalMoved("wrasse", 1, Event.Move.ARRIVED, null), "");
        Draft unkeepable = draft(NOON, new Event.AnimalMoved("wra\0sse", 1, Event.Move.ARRIVED, null), "");
        Map<String, List<Draft>> half = new LinkedHashMap<>();
        half.put("box", List.of(left));
        half.put(REEF, List.of(unkeepable));
        assertThatIllegalArgumentException().isThrownBy(() -> journal.writeTogether(half));
        assertThat(journal.everything("box")).isEmpty();
        assertThat(journal.everything(REEF)).isEmpty();
        Map<String, List<Draft>> whole = Map.of("box", List.of(left), REEF, List.of(arrived));
        assertThat(journal.writeTogether(whole)).isEqualTo(2);
        assertThat(journal.writeTogether(whole)).isZero();
        assertThat(ids(journal.everything("box"))).containsExactly(left.id());
        assertThat(ids(journal.everything(REEF))).containsExactly(arrived.id());
    }

    @Test
    void whatIsSentAgainAfterACorrectionIsAnsweredWithTheCorrection() {
        Draft draft = draft(NOON, FED, "first");
        journal.write(REEF, draft);
        Line corrected = journal.correct(REEF, 1, new Draft(draft.id(), NOON, FED, "corrected"))
                .orElseThrow();
        assertThat(journal.write(REEF, draft)).isEqualTo(corrected);
        Line struck = journal.strike(REEF, draft.id(), 2).orElseThrow();
        assertThat(journal.write(REEF, draft)).isEqualTo(struck);
        assertThat(journal.everything(REEF)).hasSize(3);
    }

    @Test
    void aCorrectionStandsAndWhatItCorrectedStaysInTheHistory() {
        Draft draft = draft(NOON, FED, "first");
        Line first = journal.write(REEF, draft);
        Draft other = new Draft(draft.id(), NOON.minusHours(3), new Event.WorkDone("looked", null), "no feeding");
        Line second = journal.correct(REEF, 1, other).orElseThrow();
        assertThat(second.revision()).isEqualTo(2);
        assertThat(second.at()).isEqualTo(other.at());
        assertThat(second.event()).isEqualTo(other.event());
        assertThat(second.writtenAt()).isAfter(first.writtenAt());
        assertThat(journal.lines(REEF, Span.EVER, ALL)).containsExactly(second);
        assertThat(journal.lines(REEF, Span.EVER, Set.of(Kind.FEEDING))).isEmpty();
        assertThat(journal.history(REEF, draft.id())).containsExactly(first, second);
        assertThat(journal.everything(REEF)).containsExactly(first, second);
    }

    @Test
    void aCorrectionOfWhatSomebodyElseCorrectedIsRefused() {
        Draft draft = draft(NOON, FED, "first");
        journal.write(REEF, draft);
        Line second = journal.correct(REEF, 1, new Draft(draft.id(), NOON, FED, "mine"))
                .orElseThrow();
        assertThat(journal.correct(REEF, 1, new Draft(draft.id(), NOON, FED, "theirs")))
                .isEmpty();
        assertThat(journal.strike(REEF, draft.id(), 1)).isEmpty();
        assertThat(journal.correct(REEF, 3, new Draft(draft.id(), NOON, FED, "of what is to come")))
                .isEmpty();
        assertThat(journal.lines(REEF, Span.EVER, ALL)).containsExactly(second);
        assertThat(journal.everything(REEF)).hasSize(2);
    }

    @Test
    void aLineThatIsNotThereIsNeitherCorrectedNorStruck() {
        UUID nobody = UUID.randomUUID();
        assertThat(journal.correct(REEF, 1, new Draft(nobody, NOON, FED, ""))).isEmpty();
        assertThat(journal.correct(REEF, 0, new Draft(nobody, NOON, FED, ""))).isEmpty();
        assertThat(journal.strike(REEF, nobody, 1)).isEmpty();
        assertThat(journal.history(REEF, nobody)).isEmpty();
        assertThat(journal.everything(REEF)).isEmpty();
    }

    @Test
    void aStruckLineStandsNoMoreAndStaysInTheHistory() {
        Draft draft = draft(NOON, new Event.WaterChanged(0.04, Map.of(WaterQuantity.PH, 8.2)), "by mistake");
        Line first = journal.write(REEF, draft);
        Line struck = journal.strike(REEF, draft.id(), 1).orElseThrow();
        assertThat(struck)
                .isEqualTo(new Line(draft.id(), 2, NOON, draft.event(), "by mistake", true, struck.writtenAt()));
        assertThat(journal.lines(REEF, Span.EVER, ALL)).isEmpty();
        assertThat(journal.history(REEF, draft.id())).containsExactly(first, struck);
    }

    @Test
    void aLineStruckTwiceIsStruckOnce() {
        Draft draft = draft(NOON, FED, "");
        journal.write(REEF, draft);
        Line struck = journal.strike(REEF, draft.id(), 1).orElseThrow();
        assertThat(journal.strike(REEF, draft.id(), 2)).contains(struck);
        assertThat(journal.history(REEF, draft.id())).hasSize(2);
    }

    @Test
    void aCorrectionBringsAStruckLineBack() {
        Draft draft = draft(NOON, FED, "");
        journal.write(REEF, draft);
        journal.strike(REEF, draft.id(), 1);
        Line back = journal.correct(REEF, 2, draft).orElseThrow();
        assertThat(back.revision()).isEqualTo(3);
        assertThat(back.struck()).isFalse();
        assertThat(journal.lines(REEF, Span.EVER, ALL)).containsExactly(back);
    }

    @Test
    void aSpanHoldsItsBeginningAndNotItsEnd() {
        Line first = journal.write(REEF, fed("2026-05-03T12:00:00.000000001Z"));
        Line second = journal.write(REEF, fed("2026-05-03T12:00:00.000000002Z"));
        journal.write(REEF, fed("2026-05-03T12:00:00.000000003Z"));
        assertThat(journal.lines(
                        REEF, new Span(first.at().toInstant(), Instant.parse("2026-05-03T12:00:00.000000003Z")), ALL))
                .containsExactly(first, second);
        assertThat(journal.lines(
                        REEF, new Span(first.at().toInstant(), first.at().toInstant()), ALL))
                .isEmpty();
    }

    @Test
    void aSpanBeyondAllTimeFindsEverything() {
        Line line = journal.write(REEF, fed("2026-05-03T12:00:00Z"));
        assertThat(journal.lines(REEF, new Span(Instant.MIN, Instant.MAX), ALL)).containsExactly(line);
    }

    @Test
    void onlyTheKindsAskedForAreGiven() {
        for (Event event : events()) {
            journal.write(REEF, draft(NOON, event, ""));
        }
        for (Kind kind : Kind.values()) {
            assertThat(journal.lines(REEF, Span.EVER, Set.of(kind)).stream().map(line -> Kind.of(line.event())))
                    .hasSize((int) events().stream()
                            .filter(event -> Kind.of(event) == kind)
                            .count())
                    .containsOnly(kind);
        }
        assertThat(journal.lines(REEF, Span.EVER, Set.of(Kind.DOSE, Kind.LEVER)))
                .hasSize(5);
        assertThat(journal.lines(REEF, Span.EVER, Set.of())).isEmpty();
    }

    @Test
    void linesComeInTheOrderOfTimeWhateverTheirKindAndOffset() {
        List<Line> written = new ArrayList<>();
        int hour = 0;
        for (Event event : events()) {
            OffsetDateTime at =
                    NOON.plusHours(hour++ * 7L % events().size()).withOffsetSameInstant(ZoneOffset.ofHours(hour % 12));
            written.add(journal.write(REEF, draft(at, event, "")));
        }
        written.sort((one, other) -> one.at().toInstant().compareTo(other.at().toInstant()));
        assertThat(journal.lines(REEF, Span.EVER, ALL)).isEqualTo(written);
    }

    @Test
    void linesOfOneTimeKeepTheOrderInWhichTheyWereFirstWritten() {
        List<Draft> drafts = new ArrayList<>();
        for (Event event : events()) {
            drafts.add(draft(NOON, event, ""));
        }
        journal.writeAll(REEF, drafts, done -> {});
        journal.correct(REEF, 1, drafts.get(0));
        journal.correct(REEF, 1, new Draft(drafts.get(3).id(), NOON, FED, "of another kind now"));
        assertThat(ids(journal.lines(REEF, Span.EVER, ALL)))
                .isEqualTo(drafts.stream().map(Draft::id).toList());
    }

    @Test
    void systemsKnowNothingOfEachOther() {
        Draft draft = draft(NOON, FED, "here");
        Line here = journal.write(REEF, draft);
        Line there = journal.write("nano", new Draft(draft.id(), NOON, FED, "there"));
        assertThat(there.remark()).isEqualTo("there");
        assertThat(journal.correct("nobody's", 1, draft)).isEmpty();
        journal.strike(REEF, draft.id(), 1);
        assertThat(journal.lines(REEF, Span.EVER, ALL)).isEmpty();
        assertThat(journal.lines("nano", Span.EVER, ALL)).containsExactly(there);
        assertThat(journal.everything("nano")).containsExactly(there);
        assertThat(journal.history(REEF, draft.id())).hasSize(2).startsWith(here);
        assertThat(journal.everything("nobody's")).isEmpty();
    }

    @Test
    void theLastLineBeforeATimeIsTheNewestThatStandsAndIsOfAKindThatIsAskedFor() {
        Line meal = journal.write(REEF, draft(NOON, FED, ""));
        Line later = journal.write(REEF, draft(NOON.plusHours(1), FED, ""));
        Line seen = journal.write(REEF, draft(NOON.plusHours(2), new Event.Observation("calm", null), ""));
        assertThat(journal.lastBefore(REEF, NOON.plusDays(1).toInstant(), ALL)).contains(seen);
        assertThat(journal.lastBefore(REEF, NOON.plusDays(1).toInstant(), EnumSet.of(Kind.FEEDING)))
                .contains(later);
        assertThat(journal.lastBefore(REEF, later.at().toInstant(), EnumSet.of(Kind.FEEDING)))
                .contains(meal);
        journal.strike(REEF, meal.id(), 1);
        assertThat(journal.lastBefore(REEF, later.at().toInstant(), ALL)).isEmpty();
        assertThat(journal.lastBefore("nobody's", NOON.plusDays(1).toInstant(), ALL))
                .isEmpty();
        assertThat(journal.lastBefore(REEF, NOON.plusDays(1).toInstant(), EnumSet.noneOf(Kind.class)))
                .isEmpty();
    }
}
