package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.tidewright.husbandry.spreadsheet.Sheets.SYSTEM;
import static org.tidewright.husbandry.spreadsheet.Sheets.saved;
import static org.tidewright.husbandry.spreadsheet.Sheets.taken;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.WaterQuantity;

class SpreadsheetTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    static Stream<Arguments> uselessFiles() {
        return Stream.of(
                arguments("", "the file is empty"),
                arguments("PK\u0003\u0004xyz", "this is a spreadsheet itself"),
                arguments("a\u0000b,c", "bytes that are no text"),
                arguments("just words\nand more", "no line has more than one cell"),
                arguments("name,KH\nme,8.1", "no column holds dates"),
                arguments("a,\"b\"c\n", "this is no CSV"));
    }

    @ParameterizedTest
    @MethodSource("uselessFiles")
    void aFileThatGivesNothingIsRefusedInOneSentence(String text, String words) {
        assertThatThrownBy(() -> saved(text).proposal(ZONE))
                .isInstanceOf(UnusableSheet.class)
                .hasMessageContaining(words);
    }

    @Test
    void aQuoteThatIsNeverClosedIsToldByItsLine() {
        String text = "date,KH,note\n2023-06-05,8.1,\"open\n" + "2023-06-06,8.2,\n".repeat(300);
        assertThatThrownBy(() -> saved(text).proposal(ZONE))
                .isInstanceOf(UnusableSheet.class)
                .hasMessageContaining("line 2: a quotation mark is opened and not closed");
    }

    @Test
    void aDateThatIsWrittenOnceForSeveralRowsIsCarriedDownWhenTheKeeperSaysSo() throws Exception {
        Spreadsheet sheet = saved("date,time,KH\n2023-06-05,08:00,8.1\n,20:00,7.9\n2023-06-06,08:00,8.0\n");
        Mapping mapping = sheet.proposal(ZONE).mapping();
        assertThat(sheet.preview(mapping, SYSTEM).bad()).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.sentence()).contains("found no date; expected one in column 1", "carried down");
        });
        String carried = MappingText.write(mapping).replace("date: column 1", "date: column 1, carried down");
        Mapping changed = ((MappingReading.Read) MappingText.read(carried)).mapping();
        assertThat(taken(sheet.drafts(changed, SYSTEM, rows -> {})).drafts())
                .extracting(draft -> draft.at().toString())
                .containsExactly("2023-06-05T08:00+01:00", "2023-06-05T20:00+01:00", "2023-06-06T08:00+01:00");
    }

    @Test
    void aUnitInTheCellGoesBeforeThatOfTheColumnAndAForeignOneIsRefused() throws Exception {
        Spreadsheet sheet =
                saved("date,Alk\n2023-06-05,8.1 dKH\n2023-06-06,2.9 meq/L\n2023-06-07,8.0\n2023-06-08,8 mV\n");
        Mapping mapping = sheet.proposal(ZONE).mapping().confirmed();
        Preview preview = sheet.preview(mapping, SYSTEM);
        assertThat(preview.bad())
                .extracting(Fault::sentence)
                .singleElement()
                .asString()
                .contains("Alk: found “mV” as the unit of alkalinity; expected one of: dKH, meq/L, mg/L CaCO3");
        List<Draft> drafts = taken(sheet.drafts(mapping.leavingBadCellsOut(), SYSTEM, rows -> {}))
                .drafts();
        assertThat(drafts)
                .extracting(draft -> ((Event.Reading) draft.event()).unit().key())
                .containsExactly("dkh", "meq_per_l", "dkh");
        // 2.9 meq/L are 8.13 dKH, so that the greatest of the column is that one.
        assertThat(preview.series().get(0).most()).isBetween(8.13, 8.14);
    }

    @Test
    void theFirstRowsAndTheDifferentTextsOfAColumnAreShownAsTheyStand() throws Exception {
        Spreadsheet sheet =
                saved("my log\ndate,tank,KH\n2023-06-05, Left ,8.1\n2023-06-06,right\n2023-06-07,left,8.2\n");
        Proposal proposal = sheet.proposal(ZONE);
        Layout layout = proposal.mapping().layout();
        assertThat(sheet.firstRows(layout, 2))
                .containsExactly(List.of("2023-06-05", "Left", "8.1"), List.of("2023-06-06", "right"));
        assertThat(sheet.texts(layout, 2, 60)).containsExactly("Left", "right");
        assertThat(sheet.texts(layout, 2, 1)).containsExactly("Left");
    }

    @Test
    void whatWasFoundOutAboutAColumnIsToldByItsNumber() throws Exception {
        Proposal proposal = saved("date,KH,,,,,,,,,,Ca\n2023-06-05,8.1,,,,,,,,,,420\n2023-06-06,8.2,,,,,,,,,,425\n")
                .proposal(ZONE);
        assertThat(proposal.ofColumn(1).orElseThrow().words()).isEqualTo("date");
        assertThat(proposal.ofColumn(12).orElseThrow().words()).isEqualTo("calcium in mg/L");
        assertThat(proposal.ofColumn(3)).isEmpty();
        assertThat(proposal.about("decimal").orElseThrow().sure()).isTrue();
        Proposal named = saved("date,test,value\n2023-06-05,Mg,1350\n2023-06-06,Ca,420\n2023-06-07,Ca,425\n")
                .proposal(ZONE);
        assertThat(named.ofName("Ca").orElseThrow().words()).isEqualTo("calcium in mg/L");
        assertThat(named.ofName("NO3")).isEmpty();
    }

    @Test
    void wordsWithoutNumbersBecomeAnObservation() throws Exception {
        Spreadsheet sheet = saved("date,KH,notes\n2023-06-05,8.1,clear\n2023-06-06,,red slime on the sand\n");
        List<Draft> drafts = taken(sheet.drafts(sheet.proposal(ZONE).mapping(), SYSTEM, rows -> {}))
                .drafts();
        assertThat(drafts.get(0).remark()).isEqualTo("clear");
        assertThat(drafts.get(1).event()).isEqualTo(new Event.Observation("red slime on the sand", null));
    }

    /** Some spreadsheets write the separator into a first line of their own. */
    @Test
    void aLineThatNamesTheSeparatorIsNoHeader() throws Exception {
        Spreadsheet sheet = saved("sep=;\nDatum;KH\n05.06.2023;8,1\n16.06.2023;8,2\n");
        Mapping mapping = sheet.proposal(ZONE).mapping();
        assertThat(mapping.layout().headerLine()).isEqualTo(2);
        assertThat(taken(sheet.drafts(mapping, SYSTEM, rows -> {})).drafts()).hasSize(2);
    }

    @Test
    void aBrokenFirstRowIsDataAndNotPassedOver() throws Exception {
        Spreadsheet sheet = saved("my log\ndate,KH\n32/06/2023,8.1\n2023-06-06,8.2\n");
        Mapping mapping = sheet.proposal(ZONE).mapping();
        assertThat(mapping.layout().dataLine()).isEqualTo(3);
        assertThat(sheet.preview(mapping.with(DateOrder.DMY), SYSTEM).bad())
                .extracting(Fault::line)
                .containsExactly(3);
    }

    @Test
    void numbersThatComeFasterThanEachThreeHoursBecomeAProbesUnlessTheKeeperSaysOtherwise() throws Exception {
        Spreadsheet fast = every(Duration.ofMinutes(179), 120, "Temp °C", 25);
        Mapping mapping = fast.proposal(ZONE).mapping();
        Probe probe = new Probe(WaterQuantity.TEMPERATURE, "probe", "tank");
        assertThat(taken(fast.drafts(mapping, SYSTEM, rows -> {})).values()).containsOnlyKeys(probe);
        Spreadsheet slow = every(Duration.ofMinutes(181), 120, "Temp °C", 25);
        assertThat(taken(slow.drafts(mapping, SYSTEM, rows -> {})).drafts()).hasSize(120);
        Spreadsheet few = every(Duration.ofMinutes(10), 20, "Temp °C", 25);
        assertThat(taken(few.drafts(mapping, SYSTEM, rows -> {})).drafts()).hasSize(20);
        Measured asReadings = new Measured(
                WaterQuantity.TEMPERATURE, WaterQuantity.TEMPERATURE.units().get(0), null, "tank", Kept.READINGS, true);
        assertThat(taken(fast.drafts(mapping.with(2, asReadings), SYSTEM, rows -> {}))
                        .drafts())
                .hasSize(120);
    }

    @Test
    void aProbeWithoutAMethodIsAskedFor() throws Exception {
        Spreadsheet sheet = every(Duration.ofHours(1), 200, "Alk dKH", 8);
        Mapping mapping = sheet.proposal(ZONE).mapping();
        assertThat(sheet.preview(mapping, SYSTEM).questions())
                .containsExactly("“Alk dKH” comes as fast as from a probe: by which method is it measured?");
        assertThat(sheet.drafts(mapping, SYSTEM, rows -> {})).isInstanceOf(Taking.Refused.class);
    }

    @Test
    void twoColumnsOfOneProbeAreAskedApart() throws Exception {
        StringBuilder text = new StringBuilder("time,Temp C,Temp °C\n");
        for (int i = 0; i < 200; i++) {
            text.append(Instant.parse("2023-01-01T00:00:00Z").plusSeconds(600L * i))
                    .append(",25.1,25.2\n");
        }
        Spreadsheet sheet = saved(text.toString());
        assertThat(sheet.preview(sheet.proposal(ZONE).mapping(), SYSTEM).questions())
                .containsExactly("“Temp °C” would be the same probe as another column: where does each of them stand?");
    }

    @Test
    void aHundredThousandRowsArePreviewedTakenAndToldOnTheWay() throws Exception {
        Spreadsheet sheet = every(Duration.ofMinutes(5), 100_000, "Temp °C", 25);
        Mapping mapping = sheet.proposal(ZONE).mapping();
        List<Integer> progress = new ArrayList<>();
        Taking.Taken taken = taken(sheet.drafts(mapping, SYSTEM, progress::add));
        assertThat(taken.values().values())
                .singleElement()
                .satisfies(values -> assertThat(values).hasSize(100_000));
        assertThat(progress).hasSize(200).isSorted().endsWith(200_000);
        assertThat(sheet.preview(mapping, SYSTEM).series().get(0).pace()).isEqualTo(Duration.ofMinutes(5));
    }

    private static Spreadsheet every(Duration pace, int count, String header, double value) {
        StringBuilder text = new StringBuilder("time," + header + "\n");
        for (int i = 0; i < count; i++) {
            text.append(Instant.parse("2023-01-01T00:00:00Z").plus(pace.multipliedBy(i)))
                    .append(String.format(Locale.ROOT, ",%.1f\n", value + i % 7 / 10.0));
        }
        return saved(text.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            zone: Europe/London  | zone: Europe/Lodnon   | zone: found “Europe/Lodnon”; expected a zone such as Europe/London
            date-order: ymd      | date-order: dym       | date-order: found “dym”; expected one of: dmy, mdy, ymd
            decimal: point       | decimals: point       | decimals: found the unknown entry “decimals”
            column 2: alkalinity | column 2: alkalinty   | Did you mean “alkalinity”?
            alkalinity, dkh      | alkalinity, dhk       | Did you mean “dkh”?
            alkalinity, dkh      | alkalinity            | expected one of: dkh, meq_per_l, mg_per_l_caco3
            alkalinity, dkh      | alkalinity, dkh, method photomter | Did you mean “photometer”?
            alkalinity, dkh      | alkalinity, dkh, quickly | column 2: found “quickly”; expected method and its key
            rows: all            | rows: some            | rows: found “some”; expected all, or such as column 2 is "left tank"
            header: line 1       | header: line 9        | header: found “line 9”; expected a line above the data
            date: column 1       | date: column 0        | date: found “column 0”; expected “column” and its number
            bad-cells: refuse    | bad-cells: ignore     | bad-cells: found “ignore”; expected one of: refuse, leave out
            separator: comma     | separator: comma\\nseparator: comma | separator: found “separator” a second time
            """)
    void aMappingThatCannotBeReadIsToldByItsEntry(String was, String is, String words) throws Exception {
        String text = MappingText.write(
                saved("date,KH\n2023-06-05,8.1\n").proposal(ZONE).mapping());
        assertThat(text).contains(was);
        MappingReading reading = MappingText.read(text.replace(was, is.replace("\\n", "\n")));
        assertThat(reading).isInstanceOf(MappingReading.Faulty.class);
        Fault fault = ((MappingReading.Faulty) reading).faults().get(0);
        assertThat(fault.sentence()).contains(words);
        assertThat(fault.line()).isPositive();
    }

    @Test
    void theMappingOnTheFormatsPageIsOne() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "formats", "spreadsheet.md"));
        String example = page.split("```", -1)[1];
        assertThat(MappingText.read(example))
                .isInstanceOfSatisfying(
                        MappingReading.Read.class,
                        read -> assertThat(read.mapping().questions())
                                .containsExactly("Is column 5 phosphate in µg/L PO4?"));
    }

    @Test
    void aDiskThatCannotBeReadIsNoFaultOfTheSheet() {
        Spreadsheet sheet = new Spreadsheet(() -> {
            throw new IOException("the disk is gone");
        });
        assertThatThrownBy(() -> sheet.proposal(ZONE)).isInstanceOf(IOException.class);
    }

    @Test
    void aMarkBeforeTheFirstNameIsNoPartOfIt() throws Exception {
        byte[] bytes = "\uFEFFdate,KH\n2023-06-05,8.1\n".getBytes(StandardCharsets.UTF_8);
        Proposal proposal = new Spreadsheet(() -> new ByteArrayInputStream(bytes)).proposal(ZONE);
        assertThat(proposal.labels()).containsEntry(1, "date");
    }
}
