package org.tidewright.husbandry.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;

/** An invented tank, written down as the pages on the formats show it. */
class ExampleCopyTest {
    private static MemoryRecords example() {
        MemoryRecords records = new MemoryRecords();
        WaterQuantity alkalinity = WaterQuantity.ALKALINITY;
        Event[] events = {
            new Event.Reading(alkalinity, 8.1, alkalinity.units().get(0), "syringe_titration"),
            new Event.MethodChecked(
                    alkalinity, "syringe_titration", alkalinity.units().get(0), 8.3, 8, 0.1),
            new Event.Dose("bicarbonate", Salt.SODIUM_BICARBONATE, 0.004, 5e-5),
            new Event.WaterChanged(0.02, Map.of(WaterQuantity.SALINITY, 35.0, alkalinity, 2.9)),
            new Event.Fed("mysis", 0.002),
            new Event.AnimalMoved("clownfish", 2, Event.Move.ARRIVED, null),
            new Event.WorkDone("wiped the glass", Duration.ofMinutes(10)),
            new Event.Observation("first coralline spots", records.keep("", new Photo("image/jpeg", new byte[] {1, 2
            }))),
            new Event.LeverMoved("return", "m^3/s", null, 3e-4),
            new Event.AnimalsChecked("clownfish", Event.Appetite.SOME, 90, Set.of(Sign.DUSTY_FILM, Sign.CLAMPED_FINS)),
            new Event.Treated("an invented medicine", Event.Word.VETERINARIAN, 0.04, "for a week"),
            new Event.Fallow(Parasite.VELVET, Event.Turn.BEGAN),
        };
        for (int i = 0; i < events.length; i++) {
            records.write(
                    "",
                    new Draft(
                            new UUID(0, i + 1),
                            OffsetDateTime.parse("2026-02-28T18:30:00+01:00").plusMinutes(i),
                            events[i],
                            i == 0 ? "=after the dose?" : ""));
        }
        records.strike("", new UUID(0, 5), 1);
        Instant at = Instant.parse("2026-02-28T00:00:00Z");
        records.append(
                "",
                new Probe(WaterQuantity.TEMPERATURE, "probe", "sump"),
                List.of(new Value(at, 25.1), new Value(at.plusSeconds(60), 25.15)));
        return records;
    }

    /** The file was looked over by eye; that it moves means that the format did. */
    @Test
    void theJsonOfTheExampleStandsAsItWasPublished() throws IOException {
        assertThat(CopyFiles.json(example().as("Window nano"))).isEqualTo(resource("journal.json"));
    }

    @Test
    void theCsvOfTheExampleStandsAsItWasPublished() throws IOException {
        CopyFiles files = CopyFiles.csv(example().as("Window nano"));
        StringBuilder all = new StringBuilder();
        files.names()
                .forEach(file -> all.append("== ").append(file).append('\n').append(files.text(file)));
        assertThat(all.toString()).isEqualTo(resource("journal-csv.txt"));
    }

    @Test
    void thePublishedJsonReadsBack() throws IOException {
        MemoryRecords read = new MemoryRecords();
        JournalRoundTripTest.done(CopyFiles.restoreJson(resource("journal.json"), read.as("elsewhere")));
        assertThat(RandomJournal.content(read)).isEqualTo(RandomJournal.content(example()));
    }

    /** Written before animals were checked, treated and kept out: without those lines, in CSV without their files. */
    @Test
    void copiesOfTheFirstVersionReadBack() throws IOException {
        MemoryRecords json = new MemoryRecords();
        JournalRoundTripTest.done(CopyFiles.restoreJson(resource("journal-version-1.json"), json.as("elsewhere")));
        CopyFiles files = new CopyFiles();
        for (String file : resource("journal-csv-version-1.txt").split("(?m)^== ", -1)) {
            if (!file.isEmpty()) {
                int end = file.indexOf('\n');
                files.put(file.substring(0, end), file.substring(end + 1));
            }
        }
        assertThat(files.names()).doesNotContain("fallows.csv").contains("levers.csv");
        MemoryRecords csv = new MemoryRecords();
        JournalRoundTripTest.done(JournalCsv.restore(files, csv.as("elsewhere")));
        assertThat(csv.everything("")).isEqualTo(json.everything("")).hasSize(10);
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(ExampleCopyTest.class.getResourceAsStream("/exchange/" + name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
