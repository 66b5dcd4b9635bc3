package org.tidewright.web.route;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A form with files as a browser sends it: what stands in a page, what is changed there, one button. */
final class MultipartForm {
    static final String BOUNDARY = "----tidewright-test";
    static final String TYPE = "multipart/form-data; boundary=" + BOUNDARY;

    private static final Pattern INPUT = Pattern.compile("<input ([^>]*)>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)=\"([^\"]*)\"");
    private static final Pattern LIST =
            Pattern.compile("<select id=\"[^\"]*\" name=\"([^\"]*)\".*?</select>", Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option value=\"([^\"]*)\"( selected)?");

    private record File(String field, String name, byte[] bytes) {}

    private final Map<String, String> fields = new LinkedHashMap<>();
    private final List<File> files = new ArrayList<>();

    /** The form of a page that begins with these words, as the page fills it in. */
    static MultipartForm in(String page, String begins) {
        int from = page.indexOf(begins);
        if (from < 0) {
            throw new AssertionError("no " + begins + " in the page");
        }
        String html = page.substring(from, page.indexOf("</form>", from));
        MultipartForm form = new MultipartForm();
        Matcher input = INPUT.matcher(html);
        while (input.find()) {
            Map<String, String> attributes = attributes(input.group(1));
            boolean off =
                    "checkbox".equals(attributes.get("type")) && !input.group(1).matches(".* checked(\\s.*)?");
            String name = attributes.get("name");
            if (name != null && !off && !"file".equals(attributes.get("type"))) {
                form.with(name, attributes.getOrDefault("value", ""));
            }
        }
        Matcher list = LIST.matcher(html);
        while (list.find()) {
            form.with(list.group(1), chosen(list.group()));
        }
        return form;
    }

    private static Map<String, String> attributes(String tag) {
        Map<String, String> attributes = new LinkedHashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(tag);
        while (attribute.find()) {
            attributes.put(attribute.group(1), plain(attribute.group(2)));
        }
        return attributes;
    }

    private static String chosen(String list) {
        Matcher option = OPTION.matcher(list);
        String first = null;
        while (option.find()) {
            first = first == null ? plain(option.group(1)) : first;
            if (option.group(2) != null) {
                return plain(option.group(1));
            }
        }
        return String.valueOf(first);
    }

    private static String plain(String escaped) {
        return escaped.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&amp;", "&");
    }

    MultipartForm with(String field, String value) {
        fields.put(field, value);
        return this;
    }

    MultipartForm without(String field) {
        fields.remove(field);
        return this;
    }

    MultipartForm file(String field, String name, byte[] bytes) {
        files.add(new File(field, name, bytes));
        return this;
    }

    MultipartForm file(String field, String name, String text) {
        return file(field, name, text.getBytes(StandardCharsets.UTF_8));
    }

    String value(String field) {
        return fields.getOrDefault(field, "");
    }

    HttpResponse<String> post(Visitor visitor, String path) {
        return visitor.post(path, TYPE, BodyPublishers.ofByteArray(bytes()));
    }

    byte[] bytes() {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        fields.forEach((name, value) -> {
            body.writeBytes(
                    text("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n"));
            body.writeBytes(text(value + "\r\n"));
        });
        for (File file : files) {
            body.writeBytes(text("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + file.field()
                    + "\"; filename=\"" + file.name() + "\"\r\nContent-Type: application/octet-stream\r\n\r\n"));
            body.writeBytes(file.bytes());
            body.writeBytes(text("\r\n"));
        }
        body.writeBytes(text("--" + BOUNDARY + "--\r\n"));
        return body.toByteArray();
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
