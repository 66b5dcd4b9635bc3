package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.Span;

/** Photos sent with lines of the log, and served. */
class PhotoRoutesTest extends Served {
    private static final String LOG = "/systems/harbour-room/log";
    private static final String FORM = "<form class=\"next-line\"";
    private static final byte[] JPEG = HexFormat.of().parseHex("ffd8ffe000104a46494600010100");
    private static final byte[] PNG = HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452");

    private HttpResponse<String> write(String text, String name, byte[] bytes) {
        return MultipartForm.in(visitor.get(LOG).body(), FORM)
                .with("text", text)
                .file("photo_file", name, bytes)
                .post(visitor, LOG);
    }

    private List<Line> lines() {
        return desk.journal().lines("harbour-room", Span.EVER, EnumSet.allOf(Kind.class));
    }

    private Event.Observation seen() {
        assertThat(lines()).hasSize(1);
        return (Event.Observation) lines().get(0).event();
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void aPhotoIsKeptWithItsWordsShownWithThemAndServedFromItsOwnAddress() {
        assertThat(write("saw white \"spots\"", "<b>.exe", PNG).statusCode()).isEqualTo(303);
        String photo = "/systems/harbour-room/photos/" + seen().photo();
        assertThat(visitor.get(LOG).body()).contains("<img src=\"" + photo + "\" alt=\"Photo: white &#34;spots&#34;\"");
        HttpResponse<String> served = visitor.get(photo);
        assertThat(served.statusCode()).isEqualTo(200);
        assertThat(header(served, "Content-Type")).isEqualTo("image/png");
        assertThat(header(served, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(served, "Cache-Control")).isEqualTo("private, max-age=31536000, immutable");
        assertThat(header(served, "Content-Security-Policy")).contains("default-src 'none'");
        assertThat(header(served, "Content-Length")).isEqualTo(String.valueOf(PNG.length));
        assertThat(visitor.get("/systems/window-nano/photos/" + seen().photo()).statusCode())
                .as("of another system")
                .isEqualTo(404);
        assertThat(visitor.get("/systems/harbour-room/photos/nothing").statusCode())
                .isEqualTo(404);
    }

    @Test
    void whatIsNoPictureByItsFirstBytesIsRefusedWhateverItIsCalled() {
        for (String text : List.of("<svg xmlns='http://www.w3.org/2000/svg'/>", "<!doctype html><p>", "GIF89a", "")) {
            HttpResponse<String> answer = write("saw spots", "photo.png", text.getBytes(StandardCharsets.UTF_8));
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body())
                    .contains("“photo.png” is no JPEG, PNG or WebP by its first bytes", "value=\"saw spots\"");
        }
        assertThat(lines()).isEmpty();
    }

    @Test
    void aPhotoThatIsTooLargeIsToldSoAndTheWordsStillStand() {
        HttpResponse<String> answer = write("saw spots", "huge.jpg", Arrays.copyOf(JPEG, Photos.LARGEST_BYTES + 1));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("has 21 MB; expected up to 20 MB", "value=\"saw spots\"");
        HttpResponse<String> body = write("saw spots", "vast.jpg", Arrays.copyOf(JPEG, 2 * Photos.LARGEST_BYTES));
        assertThat(body.statusCode()).isEqualTo(413);
        assertThat(body.body()).contains("A photo may have up to 20 MB", "Nothing was changed");
        assertThat(lines()).isEmpty();
    }

    @Test
    void aPhotoStaysWithTheFormWhileItsWordsAreRefused() {
        for (String text : List.of("", "alkalinity 8.1 dKH", "white spots")) {
            HttpResponse<String> refused = write(text, "a.jpg", JPEG);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(MultipartForm.in(refused.body(), FORM).value("photo")).isNotEmpty();
        }
        assertThat(write("alkalinity 8.1 dKH", "a.jpg", JPEG).body()).contains("A photo goes with what was seen");
        String refused = write("", "a.jpg", JPEG).body();
        assertThat(refused).contains("Say in words what the photo shows");
        HttpResponse<String> mended =
                MultipartForm.in(refused, FORM).with("text", "saw white spots").post(visitor, LOG);
        assertThat(mended.statusCode()).isEqualTo(303);
        assertThat(seen().photo()).isNotNull();
    }

    @Test
    void aPhotoIsChangedAndTakenOffOnTheLinesPageAndStaysInItsHistory() {
        write("saw white spots", "a.jpg", JPEG);
        String first = seen().photo();
        String line = LOG + "/" + lines().get(0).id();
        MultipartForm words = MultipartForm.in(visitor.get(line).body(), FORM).with("text", "saw two white spots");
        words.post(visitor, line);
        assertThat(seen()).isEqualTo(new Event.Observation("two white spots", first));

        MultipartForm.in(visitor.get(line).body(), FORM)
                .file("photo_file", "b.png", PNG)
                .post(visitor, line);
        assertThat(seen().photo()).isNotNull().isNotEqualTo(first);

        MultipartForm.in(visitor.get(line).body(), FORM)
                .with("photo_off", "yes")
                .post(visitor, line);
        assertThat(seen()).isEqualTo(new Event.Observation("two white spots", null));
        assertThat(visitor.get(line).body()).contains("/photos/" + first);
    }

    @Test
    void aCorrectionThatSaysNothingOfThePhotoLeavesIt() {
        write("saw white spots", "a.jpg", JPEG);
        String photo = seen().photo();
        String line = LOG + "/" + lines().get(0).id();
        visitor.post(line, Map.of("token", visitor.token(line), "based_on", "1", "text", "saw a snail"));
        assertThat(seen()).isEqualTo(new Event.Observation("a snail", photo));
    }

    @Test
    void aPhotoThatIsNotHereIsNotWrittenIntoALine() {
        HttpResponse<String> answer = MultipartForm.in(visitor.get(LOG).body(), FORM)
                .with("text", "saw spots")
                .with("photo", UUID.randomUUID().toString())
                .post(visitor, LOG);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("The photo is not here any more");
    }

    @Test
    void withoutItsTokenNoPhotoIsKept() {
        HttpResponse<String> answer = MultipartForm.in(visitor.get(LOG).body(), FORM)
                .with("token", "stale")
                .with("text", "saw spots")
                .file("photo_file", "a.jpg", JPEG)
                .post(visitor, LOG);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("Choose the photo once more", "value=\"saw spots\"");
        assertThat(MultipartForm.in(answer.body(), FORM).value("photo")).isEmpty();
    }
}
