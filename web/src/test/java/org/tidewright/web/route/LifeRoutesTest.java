package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** The page Life over HTTP. */
class LifeRoutesTest extends Served {
    private static final String LIFE = "/systems/harbour-room/life";

    @Test
    void whoLivesThereStandsWithLengthNowAndGrown() {
        String body = visitor.get(LIFE).body();
        assertThat(body)
                .contains("Who lives here", "yellow tang", "Zebrasoma flavescens", "15\u00a0cm", "ocellaris clownfish");
        assertThat(visitor.get(LIFE + "?units=us").body()).contains("5.9\u00a0in");
    }

    @Test
    void aCandidateGetsItsVerdictReasonsCautionsAndADrawing() {
        HttpResponse<String> answer = visitor.get(LIFE + "?consider=Cephalopholis+miniata+10+cm");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains(
                        "class=\"verdict\"",
                        ">No<",
                        "aria-label=\"Reasons\"",
                        "class=\"growth\"",
                        "Quarantine it first");
    }

    @Test
    void twoCandidatesKeepTheirSourcesApart() {
        String body = visitor.get(LIFE + "?consider=royal+gramma%0Ayellow+tang").body();
        assertThat(body).contains("id=\"source-a\"", "id=\"source-a2\"", "href=\"#source-a2\"");
    }

    @Test
    void aNameNobodyKnowsIsRefusedWithTheFormAsTyped() {
        HttpResponse<String> answer = visitor.get(LIFE + "?consider=yelow+tang+%3Cb%3E");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("yelow tang &lt;b&gt;", "expected a species of the catalogue", "nothing was judged")
                .doesNotContain("<b>tang", "class=\"verdict\"");
    }

    @Test
    void theQuarantineTankThatServesTheDisplayIsLookedAtAndACoralGetsAPlace() {
        assertThat(visitor.get(LIFE + "?consider=royal+gramma").body()).contains("There is room in quarantine.");
        assertThat(visitor.get(LIFE + "?consider=Discosoma+sp.").body()).contains("There is a place for it.");
    }

    @Test
    void aPageThatHasAllItNeedsIsNotAskedForAgain() {
        HttpResponse<String> answer = visitor.get(LIFE + "?consider=royal+gramma");
        assertThat(answer.headers().firstValue("Refresh")).isEmpty();
        assertThat(answer.body()).doesNotContain("looks again in a moment");
    }

    @Test
    void whoAsksOnAQuarantineTankIsAnsweredForItsDisplay() {
        HttpResponse<String> life = visitor.get("/systems/quarantine-box/life?consider=royal+gramma");
        assertThat(life.statusCode()).isEqualTo(302);
        assertThat(life.headers().firstValue("Location").orElse(""))
                .endsWith("/systems/harbour-room/life?consider=royal+gramma");
        HttpResponse<String> shop = visitor.get("/systems/quarantine-box/shop");
        assertThat(shop.headers().firstValue("Location").orElse("")).endsWith("/systems/harbour-room/shop");
        assertThat(visitor.get("/systems/quarantine-box/life").statusCode()).isEqualTo(200);
    }
}
