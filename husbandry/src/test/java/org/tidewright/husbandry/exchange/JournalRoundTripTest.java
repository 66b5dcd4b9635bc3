package org.tidewright.husbandry.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.testkit.SeededCases;

/** What goes out comes back the same, whatever it is. */
class JournalRoundTripTest {
    private static final String SYSTEM = "an invented tank, =\"1\"";

    @Test
    void everyJournalComesBackFromJsonAsItWas() {
        SeededCases.check(150, draw -> {
            MemoryRecords before = new RandomJournal(draw).records();
            MemoryRecords after = new MemoryRecords();
            Restoring.Done done = done(CopyFiles.restoreJson(CopyFiles.json(before.as(SYSTEM)), after.as(SYSTEM)));
            assertThat(RandomJournal.content(after)).isEqualTo(RandomJournal.content(before));
            assertThat(done.system()).isEqualTo(SYSTEM);
            assertThat(done.newLines()).isEqualTo(before.everything("").size());
            assertThat(pictures(after)).isEqualTo(pictures(before));
        });
    }

    /** Those that lines speak of, byte for byte. */
    private static Map<String, String> pictures(MemoryRecords records) {
        Map<String, String> pictures = new TreeMap<>();
        for (Line line : records.everything("")) {
            if (line.event() instanceof Event.Observation seen && seen.photo() != null) {
                records.find("", seen.photo())
                        .ifPresent(photo -> pictures.put(
                                String.valueOf(seen.photo()), photo.mediaType() + Arrays.toString(photo.bytes())));
            }
        }
        return pictures;
    }

    @Test
    void everyJournalComesBackFromCsvAsItWas() {
        SeededCases.check(150, draw -> {
            MemoryRecords before = new RandomJournal(draw).records();
            MemoryRecords after = new MemoryRecords();
            Restoring.Done done = done(JournalCsv.restore(CopyFiles.csv(before.as(SYSTEM)), after.as(SYSTEM)));
            assertThat(RandomJournal.content(after)).isEqualTo(RandomJournal.content(before));
            assertThat(done.system()).isEqualTo(SYSTEM);
        });
    }

    @Test
    void randomJournalsHoldEveryKindAndStruckLines() {
        List<Kind> kinds = new ArrayList<>();
        List<Boolean> struck = new ArrayList<>();
        SeededCases.check(
                20,
                draw -> new RandomJournal(draw).records().everything("").forEach(line -> {
                    kinds.add(Kind.of(line.event()));
                    struck.add(line.struck());
                }));
        assertThat(kinds).contains(Kind.values());
        assertThat(struck).contains(true, false);
    }

    @Test
    void aSecondCopyOfWhatCameBackIsTheSameToTheByte() {
        SeededCases.check(50, draw -> {
            MemoryRecords before = new RandomJournal(draw).records();
            MemoryRecords after = new MemoryRecords();
            String json = CopyFiles.json(before.as(SYSTEM));
            CopyFiles.restoreJson(json, after.as(SYSTEM));
            assertThat(CopyFiles.json(after.as(SYSTEM))).isEqualTo(json);
            CopyFiles first = CopyFiles.csv(before.as(SYSTEM));
            CopyFiles second = CopyFiles.csv(after.as(SYSTEM));
            assertThat(second.names()).containsExactlyElementsOf(first.names());
            first.names().forEach(file -> assertThat(second.text(file)).isEqualTo(first.text(file)));
        });
    }

    @Test
    void readingACopyASecondTimeAddsNothing() {
        SeededCases.check(50, draw -> {
            MemoryRecords before = new RandomJournal(draw).records();
            MemoryRecords after = new MemoryRecords();
            String json = CopyFiles.json(before.as(SYSTEM));
            CopyFiles.restoreJson(json, after.as(SYSTEM));
            assertThat(done(CopyFiles.restoreJson(json, after.as(SYSTEM))).newLines())
                    .isZero();
            assertThat(done(JournalCsv.restore(CopyFiles.csv(before.as(SYSTEM)), after.as(SYSTEM)))
                            .newLines())
                    .isZero();
            assertThat(RandomJournal.content(after)).isEqualTo(RandomJournal.content(before));
        });
    }

    @Test
    void twoYearsOfMinutesComeBackThoughTheyPassInParts() throws IOException {
        MemoryRecords before = new MemoryRecords();
        Probe probe = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
        List<Value> values = new ArrayList<>();
        Instant start = Instant.parse("2024-01-01T00:00:00Z");
        for (int i = 0; i < 200_000; i++) {
            values.add(new Value(start.plusSeconds(300L * i), 25 + Math.sin(i) / 7));
        }
        before.append(SYSTEM, probe, values);
        MemoryRecords fromJson = new MemoryRecords();
        CopyFiles.restoreJson(CopyFiles.json(before.as(SYSTEM)), fromJson.as(SYSTEM));
        assertThat(fromJson.values(SYSTEM, probe, Span.EVER)).isEqualTo(values);
        assertThat(fromJson.calls()).isEqualTo(200_000 / CopyReader.BLOCK + 1);
        MemoryRecords fromCsv = new MemoryRecords();
        JournalCsv.restore(CopyFiles.csv(before.as(SYSTEM)), fromCsv.as(SYSTEM));
        assertThat(fromCsv.values(SYSTEM, probe, Span.EVER)).isEqualTo(values);
    }

    @Test
    void halfACharacterBecomesTheReplacementCharacter() {
        assertThat(JournalFormat.wellFormed("a\uD83Db\uDC20")).isEqualTo("a\uFFFDb\uFFFD");
        assertThat(JournalFormat.wellFormed("\uD83D\uDC20")).isEqualTo("\uD83D\uDC20");
    }

    static Restoring.Done done(Restoring restoring) {
        assertThat(restoring).isInstanceOf(Restoring.Done.class);
        return (Restoring.Done) restoring;
    }
}
