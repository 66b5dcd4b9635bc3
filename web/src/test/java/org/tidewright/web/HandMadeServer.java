package org.tidewright.web;

import org.tidewright.web.desk.HandMadeDesk;

/** The pages over invented numbers, to look at while working on them: run it and open the address. */
public final class HandMadeServer {
    private HandMadeServer() {}

    public static void main(String[] arguments) {
        int port = arguments.length == 0 ? 8086 : Integer.parseInt(arguments[0]);
        WebServer server = WebServer.start(new HandMadeDesk(), WebSettings.loopback(port));
        Runtime.getRuntime().addShutdownHook(new Thread(server::close));
    }
}
