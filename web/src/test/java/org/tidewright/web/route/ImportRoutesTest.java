package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;

/** A spreadsheet taken in over HTTP, step by step. It is 20:40 on 7 March 2026 in Berlin. */
class ImportRoutesTest extends Served {
    private static final String IMPORT = "/systems/harbour-room/log/import";
    private static final String CHOOSE = "<form class=\"next-line\"";
    private static final String CHOICES = "<form class=\"import\"";
    private static final String SOUND = "date,KH dKH,Ca ppm\n2025-06-05,8.1,420\n2025-06-08,8.0,425\n2025-06-11,7.9,\n";

    private HttpResponse<String> look(String name, byte[] bytes) {
        return MultipartForm.in(visitor.get(IMPORT).body(), CHOOSE)
                .file("sheet", name, bytes)
                .post(visitor, IMPORT);
    }

    private String look(String text) {
        HttpResponse<String> answer = look("log.csv", text.getBytes(StandardCharsets.UTF_8));
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> send(String page, String act) {
        return MultipartForm.in(page, CHOICES).with("act", act).post(visitor, IMPORT);
    }

    private List<Line> lines() {
        return desk.journal().lines("harbour-room", Span.EVER, EnumSet.allOf(Kind.class));
    }

    @Test
    void aSheetIsLookedAtPreviewedAndKeptAndTheSecondTimeAddsNothing() {
        String page = look(SOUND);
        assertThat(page)
                .contains(
                        "Column 2 “KH dKH”", "8.1  ·  8.0  ·  7.9", "Taken for alkalinity in dKH: the header says so.")
                .contains("Read as UTF-8, cells set apart by commas, the header in line 1, the first row in line 2.")
                .doesNotContain("Keep it in the log");
        String preview = send(page, "show").body();
        assertThat(preview)
                .contains("3 rows, 5 numbers, from 5 Jun 2025 to 11 Jun 2025. 5 lines are new.")
                .contains("7.9 to 8.1 dKH", "5 Jun 2025 12:00", "alkalinity 8.1 dKH", "Keep it in the log");
        assertThat(lines()).as("nothing before it is said").isEmpty();
        HttpResponse<String> kept = send(preview, "keep");
        assertThat(kept.statusCode()).isEqualTo(303);
        String location = kept.headers().firstValue("Location").orElseThrow();
        assertThat(visitor.get(location).body()).contains("Kept: 5 lines are new in the log.", "/log?month=2025-06");
        assertThat(lines()).hasSize(5);

        String again = send(look(SOUND + "2025-06-14,8.2,\n"), "show").body();
        assertThat(again).contains("1 line is new, 5 are in the log already.");
        assertThat(send(again, "keep").headers().firstValue("Location").orElseThrow())
                .contains("lines=1&there=5");
        assertThat(lines()).hasSize(6);
    }

    @Test
    void aLineThatWasTakenBackDoesNotComeAgain() {
        send(send(look(SOUND), "show").body(), "keep");
        Line line = lines().get(0);
        desk.journal().strike("harbour-room", line.id(), 1);
        String again = send(look(SOUND), "show").body();
        assertThat(again).contains("0 lines are new, 5 are in the log already.");
        send(again, "keep");
        assertThat(lines()).hasSize(4);
    }

    @Test
    void anOrderOfDatesThatIsOpenIsAskedForAndNothingIsChosenInSilence() {
        String open = "date;KH\n05.06.2025;8,1\n07.08.2025;8,2\n";
        String page = look(open);
        assertThat(page).contains("please choose", "In which order do day, month and year stand?");
        HttpResponse<String> unanswered = send(page, "keep");
        assertThat(unanswered.statusCode()).isEqualTo(422);
        assertThat(unanswered.body()).contains("One thing is still to be answered", "can be read in more than one way");
        assertThat(lines()).isEmpty();
        String preview = MultipartForm.in(page, CHOICES)
                .with("order", "mdy")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        assertThat(preview).contains("from 6 May 2025 to 8 Jul 2025");
    }

    @Test
    void aDateThatIsYetToComeIsAskedAbout() {
        String preview =
                send(look("date,KH\n2025-06-05,8.1\n2062-06-08,8.1\n"), "show").body();
        assertThat(preview).contains("The last date, 8 Jun 2062, is yet to come.");
    }

    @Test
    void aGuessIsKeptOnlyOnceItWasChosen() {
        String page = look("date,SG\n2025-06-05,1.0255\n2025-06-08,1.0252\n");
        assertThat(page).contains("To be answered: is it salinity in SG 25/25?", "salinity in SG 25/25, as guessed");
        String preview = MultipartForm.in(page, CHOICES)
                .with("column_2", "salinity sg_20c_20c")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        assertThat(preview).contains("1.0252 to 1.0255 SG 20/20", "refractometer");
        String withMethod = MultipartForm.in(preview, CHOICES)
                .with("method_column_2", "refractometer_seawater")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        send(withMethod, "keep");
        assertThat(lines()).extracting(Line::event).allSatisfy(event -> {
            assertThat(((Event.Reading) event).unit().key()).isEqualTo("sg_20c_20c");
            assertThat(((Event.Reading) event).method()).isEqualTo("refractometer_seawater");
        });
    }

    @Test
    void aChoiceThatWasChangedSinceThePreviewIsShownOnceMoreBeforeItIsKept() {
        String preview = send(look(SOUND), "show").body();
        MultipartForm changed = MultipartForm.in(preview, CHOICES).with("column_3", "left_out");
        HttpResponse<String> shown = changed.with("act", "keep").post(visitor, IMPORT);
        assertThat(shown.statusCode()).isEqualTo(409);
        assertThat(shown.body()).contains("a choice was changed since this was shown", "3 lines are new.");
        assertThat(lines()).isEmpty();
        assertThat(send(shown.body(), "keep").statusCode()).isEqualTo(303);
        assertThat(lines()).hasSize(3);
    }

    @Test
    void aBadCellIsToldByLineAndStopsTheWholeUntilItIsLeftOut() {
        String preview = send(look("date,KH dKH\n2025-06-05,8.1\n2025-06-06,84\n2025-06-07,8.0\n"), "show")
                .body();
        assertThat(preview)
                .contains("Line 3, KH dKH: found “84”; expected alkalinity that can be meant in dKH")
                .contains("Did you mean 8.4?")
                .doesNotContain("Keep it in the log");
        HttpResponse<String> refused = send(preview, "keep");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(lines()).isEmpty();
        String without = MultipartForm.in(preview, CHOICES)
                .with("leave_out", "yes")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        assertThat(without).contains("2 lines are new.", "Left out, since they cannot be taken");
        assertThat(send(without, "keep").statusCode()).isEqualTo(303);
        assertThat(lines()).hasSize(2);
    }

    @Test
    void aProbesHourlyValuesAreKeptAsSuchAndToldWhereTheyAreThere() {
        StringBuilder sheet = new StringBuilder("time,Temp °C sump\n");
        for (int hour = 0; hour < 240; hour++) {
            sheet.append("2025-06-%02d %02d:00,25.%d\n".formatted(1 + hour / 24, hour % 24, hour % 10));
        }
        String preview = send(look(sheet.toString()), "show").body();
        assertThat(preview).contains("240 values of a probe", "240 values of probes are new.", "at “sump”");
        HttpResponse<String> kept = send(preview, "keep");
        assertThat(visitor.get(kept.headers().firstValue("Location").orElseThrow())
                        .body())
                .contains("Kept: 240 values of probes.");
        Probe sump = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
        assertThat(desk.probes().values("harbour-room", sump, Span.EVER)).hasSize(240);
        String corrected = sheet.toString().replace("2025-06-01 00:00,25.0", "2025-06-01 00:00,26.0");
        assertThat(send(look(corrected), "show").body())
                .contains("0 values of probes are new, 239 are kept already, 1 takes the place of another value.");
    }

    @Test
    void rowsOfAnotherTankAreLeftOutOnceTheTankIsNamed() {
        String page = look("date,tank,KH\n2025-06-05,left,8.1\n2025-06-05,right,7.0\n2025-06-06,left,8.2\n");
        assertThat(page).contains("only “left”", "only “right”", "Are all rows of this system?");
        String preview = MultipartForm.in(page, CHOICES)
                .with("rows", "is left")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        assertThat(preview).contains("2 lines are new.");
    }

    @Test
    void twoColumnsForTheDateAreRefusedBesideTheSecond() {
        HttpResponse<String> answer = MultipartForm.in(look(SOUND), CHOICES)
                .with("column_3", "date")
                .with("act", "show")
                .post(visitor, IMPORT);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Column 1 is the date already; expected one of them.");
        HttpResponse<String> none = MultipartForm.in(look(SOUND), CHOICES)
                .with("column_1", "left_out")
                .with("time_of_day", "noon")
                .with("act", "show")
                .post(visitor, IMPORT);
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body())
                .contains("Found no column for the date", "Found “noon”; expected a time such as 12:00.");
    }

    @Test
    void whatStandsInCellsHeadersAndFileNamesIsTextAndNeverMarkup() {
        String script = "<script>alert(1)</script>";
        String sheet = "date,KH " + script + ",notes,tank\n2025-06-05,8.1," + script + "," + script
                + "\n2025-06-06,8.2,\"\"\"><img src=x>\",right\n2025-06-07," + script + ",,right\n";
        String page =
                look(script + ".csv", sheet.getBytes(StandardCharsets.UTF_8)).body();
        String preview = MultipartForm.in(page, CHOICES)
                .with("rows", "all")
                .with("column_2", "alkalinity dkh")
                .with("leave_out", "yes")
                .with("act", "show")
                .post(visitor, IMPORT)
                .body();
        for (String shown : List.of(page, preview)) {
            assertThat(shown)
                    .contains("&lt;script&gt;")
                    .doesNotContain("<script>alert")
                    .doesNotContain("<img src=x");
        }
        assertThat(preview).contains("2 lines are new.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ../../etc/passwd              | passwd
            C:\\Users\\me\\my log.csv     | my log.csv
            """)
    void ofAFileNameOnlyItsLastPartIsShown(String sent, String shown) {
        assertThat(look(sent, SOUND.getBytes(StandardCharsets.UTF_8)).body())
                .contains("How “" + shown + "” is written");
    }

    @Test
    void aFileThatIsNoSheetIsRefusedWithTheReasonAndNothingElseHappens() {
        byte[] binary = new byte[4000];
        new Random(11).nextBytes(binary);
        for (byte[] bytes : List.of(
                new byte[0], binary, new byte[] {'P', 'K', 3, 4, 0}, "only words".getBytes(StandardCharsets.UTF_8))) {
            HttpResponse<String> answer = look("thing.csv", bytes);
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("“thing.csv”. Nothing can be taken from it: ", "type=\"file\"");
        }
        HttpResponse<String> none =
                MultipartForm.in(visitor.get(IMPORT).body(), CHOOSE).post(visitor, IMPORT);
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("No file was chosen");
    }

    @Test
    void aFileThatIsTooLargeIsToldSoOnItsPageAndAHugeBodyToo() {
        byte[] large = new byte[SheetParcel.LARGEST + 1];
        Arrays.fill(large, (byte) '8');
        HttpResponse<String> answer = look("large.csv", large);
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("up to 8 MB", "tidewright import", "type=\"file\"");
        HttpResponse<String> huge = look("huge.csv", new byte[13_000_000]);
        assertThat(huge.statusCode()).isEqualTo(413);
        assertThat(huge.body()).contains("This is more than can be taken", "up to 8 MB");
    }

    @Test
    void aFormWithoutItsTokenKeepsNothingAndLosesNoChoice() {
        String preview = send(look(SOUND), "show").body();
        HttpResponse<String> answer = MultipartForm.in(preview, CHOICES)
                .with("token", "stale")
                .with("column_3", "left_out")
                .with("act", "keep")
                .post(visitor, IMPORT);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(MultipartForm.in(answer.body(), CHOICES).value("column_3")).isEqualTo("left_out");
        HttpResponse<String> file = MultipartForm.in(visitor.get(IMPORT).body(), CHOOSE)
                .with("token", "")
                .file("sheet", "log.csv", SOUND)
                .post(visitor, IMPORT);
        assertThat(file.statusCode()).isEqualTo(403);
        assertThat(file.body()).contains("Choose the file once more");
        assertThat(lines()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "!!", "H4sIAAAA", "AAAA", "H4sIAAAAAAAA_0tMSk4BAMRBBgcGAAAA"})
    void aSpoiltParcelIsRefusedInWords(String parcel) {
        HttpResponse<String> answer = MultipartForm.in(send(look(SOUND), "show").body(), CHOICES)
                .with("parcel", parcel)
                .with("act", "keep")
                .post(visitor, IMPORT);
        assertThat(answer.statusCode()).isIn(400, 422);
        assertThat(lines()).isEmpty();
    }

    @Test
    void aParcelThatUnpacksToMoreThanMayBeIsRefused() {
        byte[] large = new byte[SheetParcel.LARGEST + 1];
        HttpResponse<String> answer = MultipartForm.in(look(SOUND), CHOICES)
                .with("parcel", SheetParcel.pack(large))
                .with("act", "show")
                .post(visitor, IMPORT);
        assertThat(answer.statusCode()).isEqualTo(400);
    }

    @Test
    void aBrokenFormIsRefusedAndNeverHangsOrFails() {
        byte[] whole = MultipartForm.in(visitor.get(IMPORT).body(), CHOOSE)
                .file("sheet", "log.csv", SOUND)
                .bytes();
        Random random = new Random(7);
        for (int i = 0; i < 120; i++) {
            byte[] broken = i < 40 ? Arrays.copyOf(whole, whole.length * i / 40) : whole.clone();
            for (int flip = 0; i >= 40 && flip < 4; flip++) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            HttpResponse<String> answer = visitor.post(IMPORT, MultipartForm.TYPE, BodyPublishers.ofByteArray(broken));
            assertThat(answer.statusCode()).as("try %d", i).isIn(200, 400, 403, 422);
        }
        for (String type :
                List.of("multipart/form-data", "multipart/form-data; boundary=", "text/csv", "multipart/mixed")) {
            assertThat(visitor.post(IMPORT, type, BodyPublishers.ofByteArray(whole))
                            .statusCode())
                    .as(type)
                    .isEqualTo(400);
        }
        assertThat(lines()).isEmpty();
    }
}
