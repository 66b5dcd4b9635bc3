package org.tidewright.husbandry.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Copies held in memory, so that tests can look into them and damage them. */
final class CopyFiles implements JournalCsv.Target, JournalCsv.Source {
    private final Map<String, ByteArrayOutputStream> files = new TreeMap<>();

    static String json(KeptSystem from) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JournalJson.write(from, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    static Restoring restoreJson(String json, KeptSystem into) throws IOException {
        return restoreJson(json.getBytes(StandardCharsets.UTF_8), into);
    }

    static Restoring restoreJson(byte[] json, KeptSystem into) throws IOException {
        return JournalJson.restore(() -> new ByteArrayInputStream(json), into);
    }

    static CopyFiles csv(KeptSystem from) throws IOException {
        CopyFiles files = new CopyFiles();
        JournalCsv.write(from, files);
        return files;
    }

    @Override
    public OutputStream create(String file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.put(file, out);
        return out;
    }

    @Override
    public @Nullable InputStream open(String file) {
        ByteArrayOutputStream bytes = files.get(file);
        return bytes == null ? null : new ByteArrayInputStream(bytes.toByteArray());
    }

    Iterable<String> names() {
        return files.keySet();
    }

    String text(String file) {
        return files.getOrDefault(file, new ByteArrayOutputStream()).toString(StandardCharsets.UTF_8);
    }

    void put(String file, String text) throws IOException {
        create(file).write(text.getBytes(StandardCharsets.UTF_8));
    }

    void remove(String file) {
        files.remove(file);
    }
}
