package org.tidewright.web.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tidewright.web.WebServer;
import org.tidewright.web.WebSettings;
import org.tidewright.web.desk.HandMadeDesk;

/** The mixing desk over HTTP. It is 7 March 2026, and the fifty-five gallons were tested for alkalinity and nitrate. */
class MixingRoutesTest {
    private static final String DESK = "/systems/fifty-five-gallon/mixing";

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
    void fieldsBeginWithTheLogAndThePlanInThePlansUnits() {
        String page = visitor.get(DESK).body();
        assertThat(page)
                .contains("From your log, 7 March, ±", "name=\"system_alkalinity\"", "From your plan.")
                // The plan's own habit, 5 gal, and its new water of 76 °F.
                .contains(
                        "id=\"volume\" name=\"volume\" type=\"text\" inputmode=\"decimal\"",
                        "value=\"5\"",
                        "value=\"76\"")
                .contains("<option value=\"gal\" selected>gal</option>");
        assertThat(visitor.get(DESK + "?units=metric").body()).contains("value=\"18.93\"");
    }

    @Test
    void everyQuestionOpensAndALinkLeadsToIt() {
        String page = visitor.get(DESK).body();
        for (String task : new String[] {"change", "series", "salt", "salinity", "temperature", "heating", "reserve"}) {
            assertThat(page).contains(DESK + "?task=" + task + "\"");
            assertThat(visitor.get(DESK + "?task=" + task).statusCode())
                    .as(task)
                    .isEqualTo(200);
        }
        assertThat(visitor.get(DESK + "?task=brewing").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/systems/nowhere/mixing").statusCode()).isEqualTo(404);
    }

    @Test
    void aSeriesIsAskedOfAQuantity() {
        assertThat(visitor.get(DESK + "?task=series&of=phosphate").body())
                .contains("name=\"system_phosphate\"", "name=\"of\" value=\"phosphate\"");
    }

    @Test
    void aFieldThatCannotBeReadIsMarkedAndNothingTypedIsLost() {
        HttpResponse<String> answer = visitor.get(DESK + "?task=salt&salinity=%3Cb%3E&volume=12");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Mend the marked field:", "value=\"&lt;b>\"", "value=\"12\"", "aria-invalid=\"true\"")
                .doesNotContain("Weigh ");
    }

    @Test
    void moreThanTheSystemHoldsIsMarked() {
        HttpResponse<String> answer = visitor.get(DESK + "?volume=500&volume_unit=gal");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("This is more than the water in the system.");
    }
}
