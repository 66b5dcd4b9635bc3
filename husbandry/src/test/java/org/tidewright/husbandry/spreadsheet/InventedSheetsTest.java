package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.spreadsheet.Sheets.SYSTEM;
import static org.tidewright.husbandry.spreadsheet.Sheets.resource;
import static org.tidewright.husbandry.spreadsheet.Sheets.taken;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Invented sheets of several habits, with what must come of them written by hand; README.md beside them tells more. */
class InventedSheetsTest {
    /** What the keepers of these sheets answer beside “yes, as guessed”. */
    private static final Map<String, UnaryOperator<Mapping>> ANSWERS = Map.of(
            "ambiguous",
            mapping -> mapping.with(DateOrder.DMY).with(new RowChoice(1, "display", true)),
            "slips",
            mapping -> mapping.with(DecimalSign.POINT).leavingBadCellsOut());

    static Stream<String> sheets() {
        return Stream.of("weekly-us", "german", "long", "two-rows", "no-header", "ambiguous", "slips");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aSheetIsTakenForWhatItIs(String name) throws Exception {
        String expected = resource("invented/" + name + ".mapping.txt");
        Proposal proposal = sheet(name).proposal(zone(expected));
        assertThat(withoutRemarks(MappingText.write(proposal.mapping()))).isEqualTo(expected);
        assertThat(proposal.findings())
                .allSatisfy(finding -> assertThat(finding.reason()).isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void itsDraftsAreThoseWrittenByHand(String name) throws Exception {
        Mapping mapping = answered(name);
        Taking.Taken taken = taken(sheet(name).drafts(mapping, SYSTEM, rows -> {}));
        assertThat(Sheets.csv(taken.drafts())).isEqualTo(resource("invented/" + name + ".drafts.csv"));
        assertThat(taken.values()).isEmpty();
        Preview preview = sheet(name).preview(mapping, SYSTEM);
        assertThat(preview.numbers()).isEqualTo(taken.drafts().size());
        assertThat(preview.firstDrafts())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("remark")
                .isEqualTo(taken.drafts().subList(0, Math.min(20, taken.drafts().size())));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void itsMappingReadsBackFromText(String name) throws Exception {
        Mapping mapping = sheet(name).proposal(ZoneId.of("Europe/London")).mapping();
        assertThat(MappingText.read(MappingText.write(mapping))).isEqualTo(new MappingReading.Read(mapping));
        Mapping answered = answered(name);
        assertThat(MappingText.read(MappingText.write(answered))).isEqualTo(new MappingReading.Read(answered));
    }

    @Test
    void everySlipIsToldWithItsLineAndWhatWasMeant() throws Exception {
        Mapping mapping =
                sheet("slips").proposal(ZoneId.of("Europe/London")).mapping().with(DecimalSign.POINT);
        Preview preview = sheet("slips").preview(mapping, SYSTEM);
        assertThat(Sheets.told(preview.bad())).isEqualTo(resource("invented/slips.bad.txt"));
        assertThat(preview.badCount()).isEqualTo(13);
        assertThat(preview.comesTwice())
                .containsExactly("line 11: the clock showed 2023-10-29T01:30 twice; taken as 2023-10-29T01:30+01:00");
        assertThat(preview.isSound(mapping)).isFalse();
    }

    @Test
    void whileAnythingIsWrongNothingIsTaken() throws Exception {
        Mapping mapping =
                sheet("slips").proposal(ZoneId.of("Europe/London")).mapping().with(DecimalSign.POINT);
        assertThat(sheet("slips").drafts(mapping, SYSTEM, rows -> {}))
                .isInstanceOfSatisfying(Taking.Refused.class, refused -> {
                    assertThat(refused.badCount()).isEqualTo(13);
                    assertThat(refused.questions()).isEmpty();
                });
    }

    @Test
    void anOrderOfDatesThatIsOpenIsAskedAndNeverChosen() throws Exception {
        Proposal proposal = sheet("ambiguous").proposal(ZoneId.of("Europe/London"));
        assertThat(proposal.mapping().questions())
                .containsExactly(
                        "In which order do day, month and year stand?",
                        "Are all rows of this system? Column 1 may name others.");
        assertThat(proposal.mapping().confirmed().questions())
                .containsExactly("In which order do day, month and year stand?");
        Taking taking = sheet("ambiguous").drafts(proposal.mapping().confirmed(), SYSTEM, rows -> {});
        assertThat(taking).isInstanceOf(Taking.Refused.class);
    }

    @Test
    void theReasonsStandInTheTextOfTheProposal() throws Exception {
        String text = sheet("german").proposal(ZoneId.of("Europe/Berlin")).text();
        assertThat(text)
                .contains("# column 10 “Dosierung KH (ml)”: left out, because “ml” tells of something else")
                .contains("# decimal: COMMA, because ");
        assertThat(MappingText.read(text)).isInstanceOf(MappingReading.Read.class);
    }

    private static Mapping answered(String name) throws Exception {
        ZoneId zone = zone(resource("invented/" + name + ".mapping.txt"));
        Mapping confirmed = sheet(name).proposal(zone).mapping().confirmed();
        Mapping answered = ANSWERS.getOrDefault(name, UnaryOperator.identity()).apply(confirmed);
        assertThat(answered.questions()).isEmpty();
        return answered;
    }

    private static Spreadsheet sheet(String name) throws Exception {
        Matcher charset = Pattern.compile("charset: (.*)").matcher(resource("invented/" + name + ".mapping.txt"));
        assertThat(charset.find()).isTrue();
        String text = resource("invented/" + name + ".csv");
        boolean otherLineEnds = List.of("weekly-us", "german").contains(name);
        return Sheets.saved(otherLineEnds ? text.replace("\n", "\r\n") : text, Charset.forName(charset.group(1)));
    }

    private static ZoneId zone(String mapping) {
        Matcher zone = Pattern.compile("zone: (.*)").matcher(mapping);
        assertThat(zone.find()).isTrue();
        return ZoneId.of(zone.group(1));
    }

    private static String withoutRemarks(String mapping) {
        return mapping.replaceAll("(?m)^#.*\\n", "");
    }
}
