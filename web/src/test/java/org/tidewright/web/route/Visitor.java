package org.tidewright.web.route;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser of the simplest kind: keeps cookies, follows nothing, runs no script. */
final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final int port;

    Visitor(int port) {
        this.port = port;
    }

    HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET().build());
    }

    HttpResponse<String> post(String path, Map<String, String> form, String... headers) {
        String body = form.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return post(path, "application/x-www-form-urlencoded", BodyPublishers.ofString(body), headers);
    }

    HttpResponse<String> post(String path, String type, HttpRequest.BodyPublisher body, String... headers) {
        return send(
                request(path, headers).header("Content-Type", type).POST(body).build());
    }

    /** The token in the form of a page. */
    String token(String path) {
        Matcher found = TOKEN.matcher(get(path).body());
        if (!found.find()) {
            throw new AssertionError("no token at " + path);
        }
        return found.group(1);
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
        return headers.length == 0 ? request : request.headers(headers);
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
