package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.tidewright.plan.Examples;
import org.tidewright.web.WebServer;
import org.tidewright.web.WebSettings;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.SaveResult;
import org.tidewright.web.desk.SystemEntry;
import org.tidewright.web.desk.SystemView;

/** The pages asked for over HTTP from a server that runs. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WebServerTest {
    private static final String HARBOUR = "/systems/harbour-room";

    static final List<String> PAGES = List.of(
            "/",
            "/water-desk",
            "/water-desk?temperature=25&temperature_unit=%C2%B0C&salinity=35&alkalinity=8&alkalinity_unit=dKH&units=us",
            HARBOUR + "/build",
            HARBOUR + "/build?show=blocked",
            HARBOUR + "/feed-and-export",
            HARBOUR + "/feed-and-export?feed_percent=60&show=phosphorus",
            "/systems/window-nano/feed-and-export",
            HARBOUR + "/rehearse",
            HARBOUR + "/rehearse?hours=48&outdoor_c=-5&hole=blocked&backup=yes",
            HARBOUR + "/new-tank",
            HARBOUR + "/new-tank?seed=none&begin=fish&temperature_c=40&fish=0&mass_g=x",
            HARBOUR + "/day",
            HARBOUR + "/day?window=evening&lime=night&algae=day&lights_start=08:00&lights_hours=10",
            HARBOUR + "/solutions",
            HARBOUR + "/solutions?for=carbonate_pair&units=us",
            HARBOUR + "/solutions?ask=bottle&before=7.4&after=8.2&dose=40",
            HARBOUR + "/solutions?ask=year",
            HARBOUR + "/ph",
            HARBOUR + "/ph?ph=8.0&cup_tank=8&cup_outdoors=8.2&cup_room=8",
            "/systems/window-nano/ph?units=us",
            HARBOUR + "/plan",
            HARBOUR + "/quarantine",
            "/systems/quarantine-box/quarantine?units=us",
            HARBOUR + "/log",
            HARBOUR + "/today",
            HARBOUR + "/today?enter=calcium",
            HARBOUR + "/water",
            "/systems/fifty-five-gallon/today",
            "/systems/fifty-five-gallon/water",
            "/systems/fifty-five-gallon/water/nitrate?units=us",
            "/systems/fifty-five-gallon/build",
            "/systems/fifty-five-gallon/rehearse",
            "/systems/fifty-five-gallon/log/import",
            "/systems/fifty-five-gallon/log/import?lines=3&there=0&values=0&month=2026-03",
            "/systems/window-nano/build",
            "/systems/window-nano/new-tank?units=us",
            "/systems/window-nano/day?lime=night&units=us",
            "/systems/window-nano/rehearse");

    static final List<String> NO_PAGES = List.of(
            HARBOUR + "/water/gold", "/systems/nobody/build", "/systems/nobody/plan", "/nowhere", "/assets/x/y");

    private final HandMadeDesk desk = new HandMadeDesk() {
        @Override
        public synchronized Optional<SystemView> system(String id) {
            if (id.equals("broken")) {
                throw new IllegalStateException("a secret of the inside");
            }
            return super.system(id);
        }

        @Override
        public synchronized SaveResult save(String id, int basedOnRevision, String text) {
            if (id.equals("full-disk")) {
                throw new UncheckedIOException(new IOException("No space left on device"));
            }
            return super.save(id, basedOnRevision, text);
        }
    };
    private WebServer server;
    private Visitor visitor;

    @BeforeAll
    void start() {
        server = WebServer.start(desk, new WebSettings("127.0.0.1", 0, Set.of("reef.example")));
        visitor = new Visitor(server.port());
    }

    @AfterAll
    void stop() {
        server.close();
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    // ── every answer ──

    @ParameterizedTest
    @FieldSource("PAGES")
    void everyPageCarriesTheStrictHeaders(String page) {
        HttpResponse<String> answer = visitor.get(page);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertStrictHeaders(answer);
    }

    @ParameterizedTest
    @FieldSource("NO_PAGES")
    void whatIsNotThereIsToldInTheSameLook(String page) {
        HttpResponse<String> answer = visitor.get(page);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("Nothing stands at this address", "class=\"neatline");
        assertStrictHeaders(answer);
    }

    private static void assertStrictHeaders(HttpResponse<String> answer) {
        assertThat(header(answer, "Content-Security-Policy"))
                .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "form-action 'self'")
                .contains("frame-ancestors 'none'", "base-uri 'none'")
                .doesNotContain("unsafe");
        assertThat(header(answer, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(answer, "Referrer-Policy")).isEqualTo("same-origin");
        assertThat(header(answer, "Content-Type").replace(" ", "")).isEqualTo("text/html;charset=utf-8");
    }

    @ParameterizedTest
    @FieldSource("PAGES")
    void noPageHasWhatThePolicyForbids(String page) {
        String html = visitor.get(page).body();
        assertThat(html)
                .doesNotContainPattern("<[^>]+\\sstyle=")
                .doesNotContainPattern("<[^>]+\\son[a-z]+=")
                .doesNotContain("<style")
                .doesNotContain("javascript:");
        Matcher scripts = Pattern.compile("<script([^>]*)>").matcher(html);
        while (scripts.find()) {
            assertThat(scripts.group(1)).containsPattern("src=\"/assets/|type=\"application/json\"");
        }
    }

    @ParameterizedTest
    @FieldSource("PAGES")
    void everyFileAPageAsksForIsThereAndMayBeKept(String page) {
        Matcher files = Pattern.compile("\"(/assets/[^\"]+)\"")
                .matcher(visitor.get(page).body());
        int found = 0;
        while (files.find()) {
            found++;
            HttpResponse<String> file = visitor.get(files.group(1));
            assertThat(file.statusCode()).as(files.group(1)).isEqualTo(200);
            assertThat(header(file, "Cache-Control")).contains("immutable");
            assertThat(header(file, "X-Content-Type-Options")).isEqualTo("nosniff");
        }
        assertThat(found).isGreaterThan(4);
    }

    @Test
    void whatIsTypedWrongOnAPageThatAsksIsUnprocessableAndStaysAsItWasTyped() {
        for (String page : List.of("/solutions?volume=heaps", "/solutions?ask=year&every=heaps", "/ph?ph=heaps")) {
            HttpResponse<String> answer = visitor.get(HARBOUR + page);
            assertThat(answer.statusCode()).as(page).isEqualTo(422);
            assertThat(answer.body()).contains("value=\"heaps\"", "class=\"fault\"", "Mend the marked field");
        }
    }

    @Test
    void onlyListedFilesAreServed() {
        assertThat(visitor.get("/assets/x/Assets.class").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/assets/x/..%2f..%2fpom.xml").statusCode()).isBetween(400, 404);
        assertThat(header(visitor.get("/assets/x/tokens.css"), "Cache-Control")).isEqualTo("no-store");
    }

    // ── who may ask ──

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(5000);
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String asHost(String host) throws IOException {
        return raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    @Test
    void aForeignHostNameIsRefused() throws IOException {
        for (String host : List.of("evil.example", "localhost.evil.example:8787", "127.0.0.1.evil.example", "evil")) {
            String answer = asHost(host);
            assertThat(answer).as(host).startsWith("HTTP/1.1 421").doesNotContain("Harbour room");
            assertThat(answer).contains("Content-Security-Policy");
        }
    }

    @Test
    void theServersOwnNamesAreKnown() throws IOException {
        for (String host : List.of("localhost", "LOCALHOST:99", "127.0.0.1:8787", "[::1]:8787", "reef.example")) {
            assertThat(asHost(host)).as(host).startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void aRequestThatIsNoneGetsNoPageOfTheServerLibrary() throws IOException {
        for (String request : List.of(
                "GET /%zz HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
                "NONSENSE\r\n\r\n", "GET / HTTP/1.1\r\nHost: localhost\r\nX: " + "a".repeat(20_000) + "\r\n\r\n")) {
            String answer = raw(request);
            assertThat(answer).containsPattern("^HTTP/1.1 4\\d\\d");
            assertThat(answer.toLowerCase(Locale.ROOT)).doesNotContain("jetty").doesNotContain("exception");
        }
    }

    // ── forms ──

    private Map<String, String> form(String token, int basedOn, String text) {
        return Map.of("token", token, "based_on", Integer.toString(basedOn), "text", text);
    }

    private int revision(String id) {
        return desk.system(id).orElseThrow().entry().revision();
    }

    @Test
    void savingKeepsANewRevision() {
        desk.put("saved", Examples.text("window-nano"));
        String token = visitor.token("/systems/saved/plan");
        String changed = Examples.text("window-nano").replace("33 cm", "32 cm");
        HttpResponse<String> answer =
                visitor.post("/systems/saved/plan", form(token, 1, changed.replace("\n", "\r\n")));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(header(answer, "Location")).isEqualTo("/systems/saved/plan?saved=2");
        assertThat(desk.system("saved").orElseThrow().text()).isEqualTo(changed);
        assertThat(visitor.get("/systems/saved/plan?saved=2").body()).contains("Kept as revision 2");
    }

    @Test
    void aFormWithoutItsTokenChangesNothingAndKeepsTheText() {
        int before = revision("window-nano");
        visitor.token("/systems/window-nano/plan");
        for (String token : List.of("", "x", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")) {
            HttpResponse<String> answer = visitor.post(
                    "/systems/window-nano/plan", form(token, before, Examples.text("window-nano") + "# typed\n"));
            assertThat(answer.statusCode()).isEqualTo(403);
            assertThat(answer.body()).contains("# typed").contains("Save once more");
        }
        assertThat(revision("window-nano")).isEqualTo(before);
    }

    @Test
    void theTokenOfAnotherBrowserIsNoGood() {
        int before = revision("window-nano");
        String theirs = new Visitor(server.port()).token("/systems/window-nano/plan");
        visitor.token("/systems/window-nano/plan");
        assertThat(visitor.post("/systems/window-nano/plan", form(theirs, before, Examples.text("window-nano")))
                        .statusCode())
                .isEqualTo(403);
        assertThat(new Visitor(server.port())
                        .post("/systems/window-nano/plan", form(theirs, before, Examples.text("window-nano")))
                        .statusCode())
                .isEqualTo(403);
        assertThat(revision("window-nano")).isEqualTo(before);
    }

    @Test
    void aFormFromAnotherSiteIsRefusedEvenWithItsToken() {
        int before = revision("window-nano");
        String token = visitor.token("/systems/window-nano/plan");
        Map<String, String> form = form(token, before, Examples.text("window-nano"));
        String[][] foreign = {
            {"Origin", "https://evil.example"},
            {"Origin", "null"},
            {"Origin", "http://127.0.0.1:1"},
            {"Sec-Fetch-Site", "cross-site"},
            {"Sec-Fetch-Site", "same-site"}
        };
        for (String[] headers : foreign) {
            HttpResponse<String> answer = visitor.post("/systems/window-nano/plan", form, headers);
            assertThat(answer.statusCode()).as(String.join(": ", headers)).isEqualTo(403);
        }
        assertThat(revision("window-nano")).isEqualTo(before);
    }

    @Test
    void theCookieOfTheTokenIsForThisSiteAndNoScript() {
        HttpResponse<String> answer = new Visitor(server.port()).get("/systems/window-nano/plan");
        assertThat(header(answer, "Set-Cookie")).contains("HttpOnly", "SameSite=Strict", "Path=/");
    }

    @Test
    void aTextWithFaultsIsKeptInTheEditorAndEachFaultStandsAtItsLine() {
        int before = revision("window-nano");
        String token = visitor.token("/systems/window-nano/plan");
        String typed =
                Examples.text("window-nano").replace("height: 36 cm", "height: 36 parsecs") + "# <em>mine</em>\n";
        int line = typed.substring(0, typed.indexOf("parsecs")).split("\n", -1).length;
        HttpResponse<String> answer = visitor.post("/systems/window-nano/plan", form(token, before, typed));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("36 parsecs")
                .contains("# &lt;em&gt;mine&lt;/em&gt;")
                .contains("href=\"#line-" + line + "\"")
                .contains("id=\"line-" + line + "\" class=\"faulty\"");
        assertThat(revision("window-nano")).isEqualTo(before);
    }

    @Test
    void aConflictKeepsBothTexts() {
        desk.put("shared", Examples.text("window-nano"));
        String token = visitor.token("/systems/shared/plan");
        String theirs = Examples.text("window-nano").replace("33 cm", "31 cm");
        String mine = Examples.text("window-nano").replace("33 cm", "30 cm");
        assertThat(visitor.post("/systems/shared/plan", form(token, 1, theirs)).statusCode())
                .isEqualTo(303);
        HttpResponse<String> answer = visitor.post("/systems/shared/plan", form(token, 1, mine));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("water_level: 30 cm").contains("water_level: 31 cm");
        assertThat(answer.body()).contains("name=\"based_on\" value=\"2\"");
        assertThat(desk.system("shared").orElseThrow().text()).isEqualTo(theirs);
        assertThat(visitor.post("/systems/shared/plan", form(token, 2, mine)).statusCode())
                .isEqualTo(303);
    }

    @Test
    void aTextThatCannotBeWrittenDownStaysInTheEditor() {
        desk.put("full-disk", Examples.text("window-nano"));
        String token = visitor.token("/systems/full-disk/plan");
        String typed = Examples.text("window-nano") + "# an hour of work\n";
        HttpResponse<String> answer = visitor.post("/systems/full-disk/plan", form(token, 1, typed));
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body()).contains("# an hour of work").doesNotContain("No space left");
    }

    @Test
    void faultsAreToldWhileTyping() {
        String token = visitor.token("/systems/window-nano/plan");
        HttpResponse<String> good =
                visitor.post("/systems/window-nano/plan/check", form(token, 1, Examples.text("window-nano")));
        assertThat(good.body()).isEqualTo("{\"faults\":[]}");
        HttpResponse<String> bad = visitor.post("/systems/window-nano/plan/check", form(token, 1, "name: x\nnme: y\n"));
        assertThat(bad.statusCode()).isEqualTo(200);
        assertThat(header(bad, "Content-Type")).startsWith("application/json");
        assertThat(bad.body()).contains("\"line\":2").contains("nme");
        assertThat(visitor.post("/systems/window-nano/plan/check", form("", 1, "x"))
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void aBodyLargerThanAPlanIsRefusedWhetherItsLengthIsToldOrNot() {
        byte[] large = ("text=" + "a".repeat(1_200_000)).getBytes(StandardCharsets.US_ASCII);
        String type = "application/x-www-form-urlencoded";
        HttpResponse<String> told = visitor.post("/systems/window-nano/plan", type, BodyPublishers.ofByteArray(large));
        assertThat(told.statusCode()).isEqualTo(413);
        HttpResponse<String> untold = visitor.post(
                "/systems/window-nano/plan", type, BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large)));
        assertThat(untold.statusCode()).isEqualTo(413);
        assertThat(untold.body()).contains("more than can be taken", "at most 1.1 MB");
    }

    @Test
    void aBodyThatIsNoFormIsRefused() {
        assertThat(visitor.post("/systems/window-nano/plan", "text/plain", BodyPublishers.ofString("text=x"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(visitor.post(
                                "/systems/window-nano/plan",
                                "application/x-www-form-urlencoded",
                                BodyPublishers.ofString("text=%zz&based_on=1"))
                        .statusCode())
                .isEqualTo(400);
    }

    // ── what is shown ──

    @Test
    void aNameFromThePlanCannotBecomeMarkup() {
        String name = "<script>alert(1)</script>";
        desk.put(
                "markup",
                Examples.text("window-nano")
                        .replace("name: Window nano", "name: \"" + name + "\"")
                        .replace("about: An invented", "about: <img src=x onerror=alert(1)> An invented"));
        for (String page : List.of("/", "/systems/markup/build", "/systems/markup/rehearse", "/systems/markup/plan")) {
            assertThat(visitor.get(page).body())
                    .as(page)
                    .doesNotContain(name)
                    .doesNotContain("<img")
                    .contains("&lt;script&gt;");
        }
    }

    @Test
    void anErrorShowsNothingOfTheInside() {
        HttpResponse<String> answer = visitor.get("/systems/broken/build");
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body())
                .contains("This page did not come out")
                .doesNotContain("secret")
                .doesNotContain("IllegalStateException")
                .doesNotContain("at org.");
        assertThat(header(answer, "Content-Security-Policy")).contains("default-src 'none'");
    }

    @Test
    void theChoiceOfUnitsIsKept() {
        Visitor reader = new Visitor(server.port());
        assertThat(reader.get(HARBOUR + "/build").body()).contains("heights in mm");
        assertThat(reader.get(HARBOUR + "/build?units=us").body()).contains("heights in inches");
        assertThat(reader.get(HARBOUR + "/build").body()).contains("heights in inches");
        assertThat(reader.get(HARBOUR + "/rehearse").body())
                .contains("Gallons in")
                .contains("outdoor_f");
        assertThat(reader.get(HARBOUR + "/build?units=metric").body()).contains("heights in mm");
        assertThat(reader.get("/systems/fifty-five-gallon/build").body()).contains("heights in mm");
        assertThat(new Visitor(server.port())
                        .get("/systems/fifty-five-gallon/build")
                        .body())
                .contains("heights in inches");
    }

    @Test
    void theSwitchOfUnitsKeepsTheLevers() {
        assertThat(visitor.get(HARBOUR + "/rehearse?hole=blocked&hours=48").body())
                .contains("/rehearse?hole=blocked&amp;hours=48&amp;units=us");
    }

    @Test
    void thePlanCanBeTakenAsTheFileItIs() {
        HttpResponse<String> answer = visitor.get("/systems/fifty-five-gallon/plan.yaml");
        assertThat(answer.body()).isEqualTo(Examples.text("fifty-five-gallon"));
        assertThat(header(answer, "Content-Disposition")).contains("fifty-five-gallon.yaml");
    }

    @Test
    void aFieldOfTheWaterDeskThatCannotBeReadIsMarkedAndStays() {
        HttpResponse<String> answer = visitor.get("/water-desk?temperature=25&salinity=35&alkalinity=%3Cb%3E8");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .containsPattern("<input id=\"alkalinity\"[^>]*value=\"&lt;b>8\"[^>]*aria-invalid=\"true\""
                        + " aria-describedby=\"alkalinity-fault\"")
                .containsPattern("id=\"alkalinity-fault\"[^>]*>Found “&lt;b&gt;8”")
                .doesNotContain("<b>8")
                .doesNotContain("The whole sheet");
        assertStrictHeaders(answer);
    }

    @Test
    void theWaterDeskIsFoundFromEveryPageWithSystemsAndWithout() {
        for (String page : List.of("/", HARBOUR + "/build", HARBOUR + "/plan", "/nowhere")) {
            assertThat(visitor.get(page).body()).as(page).contains("href=\"/water-desk\"");
        }
        HandMadeDesk empty = new HandMadeDesk() {
            @Override
            public synchronized List<SystemEntry> systems() {
                return List.of();
            }
        };
        try (WebServer alone = WebServer.start(empty, WebSettings.loopback(0))) {
            Visitor keeper = new Visitor(alone.port());
            assertThat(keeper.get("/").body()).contains("href=\"/water-desk\"");
            assertThat(keeper.get("/water-desk").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void theNavigationShowsOnlyPagesThatExist() {
        String html = visitor.get(HARBOUR + "/build").body()
                + visitor.get("/water-desk").body();
        Matcher links = Pattern.compile("<a [^>]*href=\"(/[^\"]*)\"").matcher(html);
        while (links.find()) {
            assertThat(visitor.get(links.group(1).replace("&amp;", "&")).statusCode())
                    .as(links.group(1))
                    .isBetween(200, 303);
        }
    }
}
