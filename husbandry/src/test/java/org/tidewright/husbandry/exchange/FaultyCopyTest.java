package org.tidewright.husbandry.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.WaterQuantity;

/** What is wrong with a copy is said where it stands, and nothing of it is kept. */
class FaultyCopyTest {
    private static final String READING =
            "{\"id\": \"00000000-0000-0000-0000-000000000001\", \"revision\": 1, \"at\": \"2026-02-28T18:30:00+01:00\", "
                    + "\"kind\": \"reading\", \"quantity\": \"alkalinity\", \"written\": 8.1, \"unit\": \"dkh\", "
                    + "\"written_at\": \"2026-03-01T00:00:00Z\"}";

    private static String journal(String lines) {
        return "{\"format\": \"tidewright-journal\", \"version\": 1, \"system\": \"x\",\n\"lines\": [\n" + lines
                + "\n],\n\"probes\": [], \"photos\": []}";
    }

    @Test
    void theSmallestJournalIsSound() throws IOException {
        MemoryRecords into = new MemoryRecords();
        assertThat(JournalRoundTripTest.done(CopyFiles.restoreJson(journal(READING), into.as("x"))))
                .isEqualTo(new Restoring.Done("x", 1, 1, 0, 0));
    }

    /** Column by column: what is changed into what, and the words that must tell it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "unit"                    | "unti"                     | lines[0].unti: found the unknown name “unti”; expected one of: | Did you mean “unit”?
            "alkalinity"              | "alkalinty"                | lines[0].quantity: found the text “alkalinty”; expected one of: temperature, | Did you mean “alkalinity”?
            "dkh"                     | "dhk"                      | lines[0].unit: found the text “dhk”; expected one of: dkh, meq_per_l, mg_per_l_caco3 | Did you mean “dkh”?
            8.1                       | 840                        | lines[0]: found a line that cannot be meant (alkalinity of 840.0 dKH cannot be meant) | expected one that can
            8.1                       | "8.1"                      | lines[0].written: found the text “8.1”; expected a number | 8.1
            8.1                       | 1e999                      | lines[0].written: found “1e999” | no larger than any number
            8.1                       | null                       | lines[0].written: found nothing | a number
            8.1                       | [8.1]                      | lines[0].written: found a list or an object | a number
            "kind": "reading",        |                            | lines[0]: found no “kind”; expected one of: reading, | dose
            "revision": 1             | "revision": 0              | lines[0].revision: found “0”; expected 1 for a line | first written
            "revision": 1             | "revision": 2              | lines[0]: found revision 2 of the line | expected revision 1
            "revision": 1             | "revision": 1.5            | lines[0].revision: found “1.5” | whole number
            18:30:00+01:00            | 18:30:00                   | lines[0].at: found the text “2026-02-28T18:30:00” | 2026-03-01T08:30:00+01:00
            2026-02-28                | 2026-02-29                 | lines[0].at: found the text “2026-02-29 | expected a time
            -000000000001             | -1                         | lines[0].id: found the text “00000000-0000-0000-0000-1” | expected an id
            "kind": "reading"         | "kind": "reading", "kind": "dose" | lines[0].kind: found “kind” a second time | once
            "format": "tidewright-journal" | "format": "other"     | format: found the text “other” | another kind of file
            "version": 1              | "version": 3               | version: found “3”; expected version 1 to 2 | A newer program wrote this file
            "probes": [], "photos"    | "probs": [], "photos"      | probs: found the unknown name “probs” | Did you mean “probes”?
            "probes": [],             |                            | found no “probes”; expected a list | empty where there are none
            "photos": []}             | "photos": []               | found what is no JSON | cut short
            """)
    void aFaultIsToldWhereItStandsWithWhatWasMeant(String was, String is, String words, String mend)
            throws IOException {
        String sound = journal(READING);
        assertThat(sound).contains(was);
        String broken = sound.replace(was, is == null ? "" : is);
        MemoryRecords into = new MemoryRecords();
        List<Fault> faults = faulty(CopyFiles.restoreJson(broken, into.as("x"))).faults();
        assertThat(faults.get(0).sentence()).contains(words, mend);
        assertThat(faults.get(0).line()).isPositive();
        assertThat(into.calls()).isZero();
    }

    @Test
    void everyFaultIsToldOfManyLinesAndItsLineAndColumn() throws IOException {
        String lines = String.join(",\n", READING.replace("8.1", "840"), READING, READING.replace("dkh", "dhk"));
        List<Fault> faults = faulty(CopyFiles.restoreJson(journal(lines), new MemoryRecords().as("x")))
                .faults();
        assertThat(faults).extracting(Fault::line).containsExactly(3, 5);
        assertThat(faults.get(1).column()).isEqualTo(READING.indexOf("\"dkh\"") + 1);
        assertThat(faults.get(1).where()).isEqualTo("lines[2].unit");
    }

    @Test
    void ofANewerFormatOnlyItsVersionIsTold() throws IOException {
        String newer = journal(READING.replace("unit", "unti")).replace("\"version\": 1", "\"version\": 7");
        assertThat(faulty(CopyFiles.restoreJson(newer, new MemoryRecords().as("x")))
                        .faults())
                .singleElement()
                .extracting(Fault::sentence)
                .asString()
                .contains("found “7”; expected version 1 to 2");
    }

    @Test
    void soItIsWhereItsVersionStandsLast() throws IOException {
        String newer = journal(READING.replace("unit", "unti"))
                .replace("\"version\": 1, ", "")
                .replace("\"photos\": []", "\"photos\": [], \"version\": 7");
        Restoring.Faulty faulty = faulty(CopyFiles.restoreJson(newer, new MemoryRecords().as("x")));
        assertThat(faulty.count()).isEqualTo(1);
        assertThat(faulty.faults().get(0).where()).isEqualTo("version");
    }

    @Test
    void theCountGoesOnWhereTheListEnds() throws IOException {
        String bad = READING.replace("8.1", "840");
        String lines = String.join(",\n", Collections.nCopies(300, bad));
        Restoring.Faulty faulty = faulty(CopyFiles.restoreJson(journal(lines), new MemoryRecords().as("x")));
        assertThat(faulty.faults()).hasSize(100);
        assertThat(faulty.count()).isEqualTo(300);
    }

    @Test
    void aLineThatIsHereWithAnotherContentIsRefusedBeforeAnythingIsKept() throws IOException {
        MemoryRecords into = new MemoryRecords();
        CopyFiles.restoreJson(journal(READING), into.as("x"));
        int calls = into.calls();
        Fault fault = faulty(CopyFiles.restoreJson(journal(READING.replace("8.1", "8.2")), into.as("x")))
                .faults()
                .get(0);
        assertThat(fault.sentence()).contains("lines[0]", "under the same revision", "another system");
        assertThat(into.calls()).isEqualTo(calls);
    }

    @Test
    void aProbesOtherValueForATimeIsRefusedBeforeAnythingIsKept() throws IOException {
        MemoryRecords from = new MemoryRecords();
        Probe probe = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
        Instant at = Instant.parse("2026-02-28T00:00:00Z");
        from.append("x", probe, List.of(new Value(at, 25.0)));
        MemoryRecords into = new MemoryRecords();
        into.append("x", probe, List.of(new Value(at, 25.5)));
        Fault fault = faulty(CopyFiles.restoreJson(CopyFiles.json(from.as("x")), into.as("x")))
                .faults()
                .get(0);
        assertThat(fault.sentence()).contains("found 25.0 at 2026-02-28T00:00:00Z", "expected 25.5", "sump");
        assertThat(into.calls()).isEqualTo(1);
    }

    @Test
    void valuesOfAProbeMustSayTheirUnit() throws IOException {
        String probe =
                "\"probes\": [{\"quantity\": \"temperature\", \"method\": \"probe\", \"place\": \"\", \"values_f\": []}]";
        String broken = journal(READING).replace("\"probes\": []", probe);
        assertThat(faulty(CopyFiles.restoreJson(broken, new MemoryRecords().as("x")))
                        .faults()
                        .get(0)
                        .sentence())
                .contains("probes[0].values_f: found “values_f”; expected a list “values_c”");
    }

    /** Column by column: the file, what is changed into what, and the words that must tell it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            readings.csv | 8.1            | 8,1         | found 12 cells; expected 11, as in the header
            readings.csv | 8.1            | "8,1"       | readings.csv, written: found “8,1”; expected a number with a decimal point
            readings.csv | written,       | writen,     | readings.csv: found no column “written”; expected the columns entry,id,revision
            readings.csv | ,remark        | ,remarks    | Did you mean “remarks”?
            readings.csv | false          | no          | readings.csv, struck: found “no”; expected true or false
            feedings.csv | 13,0000        | 5,0000      | feedings.csv: found a second entry 5
            manifest.csv | tidewright-journal,2 | tidewright-journal,3 | A newer program wrote these files
            manifest.csv | readings.csv,1 | readings.csv,2 | readings.csv: found 1 rows; expected 2, as manifest.csv says
            manifest.csv | readings.csv   | reading.csv | Did you mean “readings.csv”?
            probes.csv   | 25.1,c         | 25.1,f      | probes.csv, unit: found “f”; expected c
            probes.csv   | temperature    | temprature  | Did you mean “temperature”?
            """)
    void aFaultInCsvIsToldByFileAndColumn(String file, String was, String is, String words) throws IOException {
        CopyFiles files = example();
        assertThat(files.text(file)).contains(was);
        files.put(file, files.text(file).replace(was, is));
        MemoryRecords into = new MemoryRecords();
        assertThat(faulty(JournalCsv.restore(files, into.as("x")))
                        .faults()
                        .get(0)
                        .sentence())
                .contains(words);
        assertThat(into.calls()).isZero();
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        CopyFiles files = example();
        files.remove("doses.csv");
        assertThat(faulty(JournalCsv.restore(files, new MemoryRecords().as("x")))
                        .faults())
                .extracting(Fault::sentence)
                .containsExactly("doses.csv: found no such file; expected all files that were written together.");
    }

    @Test
    void rowsMayBeTakenOutWhereTheManifestSaysNoNumber() throws IOException {
        CopyFiles files = example();
        files.put("doses.csv", files.text("doses.csv").lines().findFirst().orElseThrow() + "\n");
        files.put("manifest.csv", files.text("manifest.csv").replace("doses.csv,1", "doses.csv,"));
        assertThat(JournalRoundTripTest.done(JournalCsv.restore(files, new MemoryRecords().as("x")))
                        .lines())
                .isEqualTo(12);
    }

    /** The published example, file by file. */
    private static CopyFiles example() throws IOException {
        CopyFiles files = new CopyFiles();
        try (InputStream in = FaultyCopyTest.class.getResourceAsStream("/exchange/journal-csv.txt")) {
            String all = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String part : all.split("(?m)^== ", -1)) {
                if (!part.isEmpty()) {
                    int end = part.indexOf('\n');
                    files.put(part.substring(0, end), part.substring(end + 1));
                }
            }
        }
        return files;
    }

    @Test
    void aDiskThatCannotBeReadIsNoFaultOfTheCopy() {
        JournalJson.Source broken = () -> new FilterInputStream(InputStream.nullInputStream()) {
            @Override
            public int read(byte[] bytes, int from, int length) throws IOException {
                throw new IOException("the disk is gone");
            }
        };
        assertThatThrownBy(() -> JournalJson.restore(broken, new MemoryRecords().as("x")))
                .isInstanceOf(IOException.class)
                .hasMessage("the disk is gone");
    }

    @Test
    void bytesThatAreNoTextAreToldAsSuch() throws IOException {
        byte[] bytes = journal(READING).replace("dkh", "d\u00e4h").getBytes(StandardCharsets.ISO_8859_1);
        Restoring restoring = JournalJson.restore(() -> new ByteArrayInputStream(bytes), new MemoryRecords().as("x"));
        assertThat(faulty(restoring).faults().get(0).found()).contains("UTF-8");
    }

    private static Restoring.Faulty faulty(Restoring restoring) {
        assertThat(restoring).isInstanceOf(Restoring.Faulty.class);
        return (Restoring.Faulty) restoring;
    }
}
