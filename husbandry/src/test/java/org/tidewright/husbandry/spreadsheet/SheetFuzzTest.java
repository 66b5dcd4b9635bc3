package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.spreadsheet.Sheets.SYSTEM;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.fault.Fault;
import org.tidewright.testkit.SeededCases;

/** Whatever the bytes, a sheet gives drafts, questions, a list of clear faults, or one sentence why it cannot be used. */
class SheetFuzzTest {
    private static final List<String> SHEETS =
            List.of("weekly-us", "german", "long", "two-rows", "no-header", "ambiguous", "slips");
    private static final String PIECES = ",;\t\"\n\r'.-+/: 0123456789eE°%<µ\u0000\u00A0\uFEFF\u2028AMpt";
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    @Test
    void anyTextIsAnswered() {
        SeededCases.check(1000, draw -> {
            String text = draw.oneOf("", "date,KH\n", "date;Temp;Ca\n1/2/23;", "45000,8.1\n")
                    + draw.text()
                    + draw.oneOf("", "\n5/6/23,8.1\n", ",\"")
                    + draw.text();
            answered(text.getBytes(draw.oneOf(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1)));
        });
    }

    @Test
    void anyBytesAreAnswered() {
        SeededCases.check(300, draw -> {
            byte[] bytes = new byte[draw.whole(0, 3000)];
            new Random(draw.anyLong()).nextBytes(bytes);
            answered(bytes);
        });
    }

    @Test
    void anyDamageToASheetIsAnswered() {
        SeededCases.check(1500, draw -> {
            Random random = new Random(draw.anyLong());
            String sound = Sheets.resource("invented/" + SHEETS.get(random.nextInt(SHEETS.size())) + ".csv");
            answered(damaged(sound, random).getBytes(StandardCharsets.UTF_8));
        });
    }

    @Test
    void anyDamageToAMappingIsAnswered() {
        SeededCases.check(1500, draw -> {
            Random random = new Random(draw.anyLong());
            String name = SHEETS.get(random.nextInt(SHEETS.size()));
            String damaged = damaged(Sheets.resource("invented/" + name + ".mapping.txt"), random);
            if (MappingText.read(damaged) instanceof MappingReading.Read read) {
                String sheet = Sheets.resource("invented/" + name + ".csv");
                under(Sheets.saved(sheet), read.mapping());
                assertThat(MappingText.read(MappingText.write(read.mapping()))).isEqualTo(read);
            } else {
                clear(((MappingReading.Faulty) MappingText.read(damaged)).faults());
            }
        });
    }

    private static String damaged(String sound, Random random) {
        StringBuilder text = new StringBuilder(sound);
        for (int i = random.nextInt(10); i >= 0; i--) {
            int at = random.nextInt(text.length());
            int until = Math.min(text.length(), at + 1 + random.nextInt(30));
            switch (random.nextInt(4)) {
                case 0 -> text.setCharAt(at, PIECES.charAt(random.nextInt(PIECES.length())));
                case 1 -> text.delete(at, until);
                case 2 -> text.insert(at, text.substring(at, until));
                default -> text.insert(at, PIECES.charAt(random.nextInt(PIECES.length())));
            }
            if (text.isEmpty()) {
                text.append('x');
            }
        }
        return text.toString();
    }

    private static void answered(byte[] bytes) throws IOException {
        Spreadsheet sheet = new Spreadsheet(() -> new ByteArrayInputStream(bytes));
        try {
            Proposal proposal = sheet.proposal(ZONE);
            assertThat(MappingText.read(proposal.text())).isEqualTo(new MappingReading.Read(proposal.mapping()));
            under(sheet, proposal.mapping());
            Mapping answered =
                    proposal.mapping().confirmed().with(DateOrder.MDY).with(DecimalSign.COMMA);
            under(sheet, answered.leavingBadCellsOut());
        } catch (UnusableSheet unusable) {
            assertThat(unusable).message().isNotBlank();
        }
    }

    private static void under(Spreadsheet sheet, Mapping mapping) throws IOException {
        try {
            Preview preview = sheet.preview(mapping, SYSTEM);
            clear(preview.bad());
            Taking taking = sheet.drafts(mapping, SYSTEM, rows -> {});
            assertThat(taking instanceof Taking.Taken).isEqualTo(preview.isSound(mapping));
            if (taking instanceof Taking.Taken taken) {
                int readings = (int) taken.drafts().stream()
                        .filter(draft -> draft.event() instanceof Event.Reading)
                        .count();
                int values =
                        taken.values().values().stream().mapToInt(List::size).sum();
                assertThat(readings + values).isEqualTo(preview.numbers());
                assertThat(taken.drafts()).doesNotHaveDuplicates();
            }
        } catch (UnusableSheet unusable) {
            assertThat(unusable).message().isNotBlank();
        }
    }

    private static void clear(List<Fault> faults) {
        assertThat(faults).allSatisfy(fault -> {
            assertThat(fault.line()).isPositive();
            assertThat(fault.column()).isPositive();
            assertThat(fault.found()).isNotEmpty();
            assertThat(fault.expected()).isNotEmpty();
        });
    }
}
