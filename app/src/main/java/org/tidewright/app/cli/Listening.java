package org.tidewright.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.tidewright.app.desk.LiveDesk;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.web.WebServer;
import org.tidewright.web.WebSettings;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Where the pages are served, and serving them until the program is stopped. */
final class Listening {
    private static final String USUAL_PORT = "8787";
    private static final String LOOPBACK = "127.0.0.1";

    /** The root of all loggers; kept, so that its level is not lost with it. */
    private static final Logger ALL = Logger.getLogger("");

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = USUAL_PORT,
            description = "port, 0 for any free one (default " + USUAL_PORT + ")")
    private int port;

    @Option(
            names = "--address",
            paramLabel = "IP",
            defaultValue = LOOPBACK,
            description = "address to listen on; anything but the default opens the pages to your network, without a"
                    + " password (default " + LOOPBACK + ")")
    private String address = LOOPBACK;

    @Option(
            names = "--host",
            paramLabel = "NAME",
            description = "name by which browsers may call this program, besides localhost; repeatable")
    private List<String> hosts = List.of();

    /** Starts to serve; empty after saying why that cannot be. */
    Optional<WebServer> start(KeptFolder folder, CommandLine line) {
        ALL.setLevel(Level.WARNING);
        try {
            WebSettings settings = new WebSettings(address, port, new LinkedHashSet<>(hosts));
            LiveDesk desk =
                    new LiveDesk(folder.plans(), folder::journal, folder::probes, Clock.system(ZoneId.systemDefault()));
            WebServer server = WebServer.start(desk, settings);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                server.close();
                folder.close();
            }));
            return Optional.of(server);
        } catch (RuntimeException refused) {
            line.getErr()
                    .println("tidewright: port " + port + " on " + address + " cannot be opened ("
                            + rootMessage(refused) + "). Choose another: --port 0 takes any free one.");
            return Optional.empty();
        }
    }

    /** Address at which a browser on this machine finds the pages. */
    String shownAddress() {
        return address.equals("0.0.0.0") ? LOOPBACK : address;
    }

    /** Says where the pages are, then waits until the program is stopped. */
    void untilStopped(WebServer server, String startTime, CommandLine line) {
        line.getOut()
                .println("The pages are at http://" + shownAddress() + ":" + server.port() + "/  (stop with Ctrl-C)");
        line.getOut().println(startTime);
        line.getOut().flush();
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static String rootMessage(Throwable failure) {
        Throwable root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return String.valueOf(root.getMessage());
    }
}
