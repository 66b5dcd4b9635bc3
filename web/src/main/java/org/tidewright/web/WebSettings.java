package org.tidewright.web;

import java.util.Set;

/**
 * Where the pages are served.
 *
 * @param address to listen on; loopback unless the keeper says otherwise
 * @param port 0 for any free one
 * @param hosts names by which browsers may call this server, besides localhost
 */
public record WebSettings(String address, int port, Set<String> hosts) {
    public WebSettings {
        hosts = Set.copyOf(hosts);
        if (port < 0 || port > 65535) {
            throw new IllegalArgumentException("port " + port + " is outside 0 to 65535");
        }
    }

    /** On this machine only. */
    public static WebSettings loopback(int port) {
        return new WebSettings("127.0.0.1", port, Set.of());
    }
}
