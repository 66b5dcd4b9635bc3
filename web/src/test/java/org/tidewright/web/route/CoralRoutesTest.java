package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tidewright.web.WebServer;
import org.tidewright.web.WebSettings;
import org.tidewright.web.desk.HandMadeDesk;

/** The page about corals over HTTP. */
class CoralRoutesTest {
    private static final String CORALS = "/systems/harbour-room/corals";

    private WebServer server;
    private Visitor visitor;

    @BeforeEach
    void start() {
        server = WebServer.start(new HandMadeDesk(), new WebSettings("127.0.0.1", 0, Set.of()));
        visitor = new Visitor(server.port());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void everyExampleHasThePageAndItStandsInTheIndex() {
        for (String system : new String[] {"harbour-room", "fifty-five-gallon", "window-nano"}) {
            assertThat(visitor.get("/systems/" + system + "/corals").statusCode())
                    .isEqualTo(200);
        }
        assertThat(visitor.get("/systems/harbour-room/build").body()).contains("href=\"" + CORALS + "\"");
        assertThat(visitor.get("/systems/nowhere/corals").statusCode()).isEqualTo(404);
    }

    @Test
    void aPlaceThatCannotBeAnswers422WithTheFormAsTyped() {
        var answer = visitor.get(CORALS + "?coral=euphyllia&across=8+cm&x=300+cm&y=20&height=10");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"300\"", "id=\"x-fault\"", "Mend the marked fields");
    }

    @Test
    void whatIsTypedIsEscaped() {
        assertThat(visitor.get(CORALS + "?coral=%3Cscript%3E&x=%22%3E%3Cb%3E").body())
                .doesNotContain("<script>", "\"\"><b>")
                .contains("&lt;script&gt;");
    }
}
