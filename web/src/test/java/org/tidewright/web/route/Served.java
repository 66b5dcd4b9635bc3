package org.tidewright.web.route;

import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.tidewright.web.WebServer;
import org.tidewright.web.WebSettings;
import org.tidewright.web.desk.HandMadeDesk;

/** Pages over a hand-made desk, and somebody who looks at them. */
abstract class Served {
    final HandMadeDesk desk = new HandMadeDesk();
    private WebServer server;
    Visitor visitor;

    @BeforeEach
    void start() {
        server = WebServer.start(desk, new WebSettings("127.0.0.1", 0, Set.of()));
        visitor = new Visitor(server.port());
    }

    @AfterEach
    void stop() {
        server.close();
    }
}
