package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page “At the shop” over HTTP, as somebody without script has it, and what its script is given. */
class ShopRoutesTest extends Served {
    private static final String SHOP = "/systems/harbour-room/shop";

    private static String attribute(String html, String name) {
        Matcher found = Pattern.compile(name + "=\"([^\"]*)\"").matcher(html);
        assertThat(found.find()).as(name).isTrue();
        return found.group(1);
    }

    @Test
    void everySystemHasThePageAndItIsLinkedFromIndexAndLife() {
        for (String system : new String[] {"harbour-room", "fifty-five-gallon", "window-nano"}) {
            assertThat(visitor.get("/systems/" + system + "/shop").statusCode()).isEqualTo(200);
        }
        assertThat(visitor.get("/systems/harbour-room/build").body()).contains("href=\"" + SHOP + "\"");
        assertThat(visitor.get("/systems/harbour-room/life").body())
                .contains("<a href=\"" + SHOP + "\">At the shop</a>");
        assertThat(visitor.get("/systems/nowhere/shop").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/systems/nowhere/shop.json").statusCode()).isEqualTo(404);
    }

    @Test
    void aPartOfANameIsLookedUpWithoutScript() {
        String body = visitor.get(SHOP + "?look=achilles").body();
        assertThat(body)
                .contains(
                        "<b>Achilles tang</b>",
                        "Acanthurus achilles",
                        "No: It grows to 20\u00a0cm",
                        "it grows to 20\u00a0cm.",
                        "It carries a blade on each side of the tail",
                        "/life?consider=Acanthurus+achilles");
        assertThat(visitor.get(SHOP + "?look=achilles&units=us").body()).contains("No: It grows to 7.9\u00a0in");
        assertThat(visitor.get(SHOP + "?look=tang").body()).contains("more: type more of the name.");
    }

    @Test
    void whatIsTickedAddsUpWithoutScript() {
        String body = visitor.get(SHOP + "?kind=fish&seen=fish_refuses&seen=fish_breathes_fast&seen=coral_jelly")
                .body();
        assertThat(body).contains("data-tally>Leave it: it breathes fast and does not eat.<");
        assertThat(body).containsPattern("value=\"fish_refuses\"[^>]* checked");
        assertThat(visitor.get(SHOP + "?kind=coral&seen=fish_refuses&seen=coral_jelly")
                        .body())
                .contains("data-tally>Leave it: it has brown jelly.<");
    }

    @Test
    void whatIsLookedUpDecidesWhichSignsAreShown() {
        assertThat(visitor.get(SHOP + "?look=hystrix").body()).containsPattern("id=\"lever-kind-coral\"[^>]* checked");
        assertThat(visitor.get(SHOP + "?look=hystrix&kind=fish").body())
                .containsPattern("id=\"lever-kind-fish\"[^>]* checked");
    }

    @Test
    void whatCannotBeIsRefusedAndEscaped() {
        HttpResponse<String> answer = visitor.get(SHOP + "?seen=%3Cb%3E&kind=stone&look=%3Ci%3Eq");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("“&lt;b&gt;” is no sign of this page.", "“stone” is none of", "value=\"&lt;i>q\"")
                .doesNotContain("<b>”", "<i>q”");
        assertThat(visitor.get(SHOP + "?look=" + "a".repeat(101)).statusCode()).isEqualTo(422);
    }

    @Test
    void theListHoldsAllSpeciesInTheReadersUnits() {
        HttpResponse<String> answer = visitor.get(SHOP + ".json");
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/json"));
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
        assertThat(answer.body())
                .startsWith("{\"system\":\"harbour-room\",\"as_of\":\"2026-03-07T20:40:00+01:00\",\"units\":\"metric\"")
                .contains("\"common_name\":\"yellow tang\"");
        assertThat(answer.body().split("\"species\":", -1)).hasSizeGreaterThan(500);
        assertThat(visitor.get(SHOP + ".json?units=us").body()).contains("\"units\":\"us\"", "\u00a0in");
    }

    @Test
    void theWorkerMayServeSystemsAndOnlyItMay() {
        String page = visitor.get(SHOP).body();
        HttpResponse<String> worker = visitor.get(attribute(page, "data-worker"));
        assertThat(worker.statusCode()).isEqualTo(200);
        assertThat(worker.headers().firstValue("Content-Type")).hasValue("text/javascript; charset=utf-8");
        assertThat(worker.headers().firstValue("Service-Worker-Allowed")).hasValue("/systems/");
        assertThat(worker.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("worker-src 'self'", "connect-src 'self'");
        String script = attribute(page, "data-worker").replace("shop-worker.js", "shop.js");
        assertThat(visitor.get(script).headers().firstValue("Service-Worker-Allowed"))
                .isEmpty();
    }

    @Test
    void thePageNamesEveryFileItIsMadeOf() {
        String page = visitor.get(SHOP).body();
        List<String> files = Arrays.asList(attribute(page, "data-files").split(" "));
        Matcher linked = Pattern.compile("(?:href|src)=\"(/assets/[^\"]+)\"").matcher(page);
        while (linked.find()) {
            assertThat(files).contains(linked.group(1));
        }
        for (String file : files) {
            HttpResponse<String> answer = visitor.get(file);
            assertThat(answer.statusCode()).as(file).isEqualTo(200);
            Matcher imported =
                    Pattern.compile("from '\\./([^']+)'|import '\\./([^']+)'").matcher(answer.body());
            while (file.endsWith(".js") && imported.find()) {
                String name = imported.group(1) == null ? imported.group(2) : imported.group(1);
                assertThat(files).contains(file.replaceFirst("[^/]+$", name));
            }
        }
    }
}
