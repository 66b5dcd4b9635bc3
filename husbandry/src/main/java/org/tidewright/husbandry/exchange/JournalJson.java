package org.tidewright.husbandry.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.json.JsonMapper;

/** Everything kept of a system as one JSON file, an entry to a line of text: docs/formats/journal-json.md. */
public final class JournalJson {
    static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    // Whoever opened a stream closes it.
                    .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                    .build())
            .defaultPrettyPrinter(new EntryToALine())
            .build();

    /** The file, which is read twice. */
    public interface Source {
        InputStream open() throws IOException;
    }

    private JournalJson() {}

    /** Writes all of it; the stream stays open. */
    public static void write(KeptSystem from, OutputStream out) throws IOException {
        try (JsonGenerator json = JSON.writerWithDefaultPrettyPrinter().createGenerator(out)) {
            json.writeStartObject();
            json.writeStringProperty("format", JournalFormat.NAME);
            json.writeNumberProperty("version", JournalFormat.VERSION);
            json.writeStringProperty("system", JournalFormat.wellFormed(from.name()));
            Set<String> photoNames = lines(json, from);
            probes(json, from);
            photos(json, from, photoNames);
            json.writeEndObject();
        } catch (JacksonIOException failed) {
            throw failed.getCause();
        }
    }

    /** Reads a file back, all or nothing. */
    public static Restoring restore(Source source, KeptSystem into) throws IOException {
        return CopyRestore.restore(
                (listener, faults) -> {
                    try (InputStream in = source.open()) {
                        JournalJsonReader.read(in, listener, faults);
                    }
                },
                into);
    }

    private static Set<String> lines(JsonGenerator json, KeptSystem from) {
        Set<String> photoNames = new TreeSet<>();
        json.writeArrayPropertyStart("lines");
        for (Line line : from.journal().everything(from.name())) {
            Map<String, @Nullable Object> values = new LinkedHashMap<>();
            values.put(LineFields.KIND, Kind.of(line.event()).key());
            values.putAll(LineFields.values(line));
            json.writeStartObject();
            values.forEach((name, value) -> value(json, name, value));
            json.writeEndObject();
            if (line.event() instanceof Event.Observation seen && seen.photo() != null) {
                photoNames.add(seen.photo());
            }
        }
        json.writeEndArray();
        return photoNames;
    }

    /** What is not known is left out. */
    private static void value(JsonGenerator json, String name, @Nullable Object value) {
        if (value instanceof String text) {
            json.writeStringProperty(name, JournalFormat.wellFormed(text));
        } else if (value instanceof Double number) {
            json.writeNumberProperty(name, number);
        } else if (value instanceof Integer number) {
            json.writeNumberProperty(name, number);
        } else if (value instanceof BigDecimal number) {
            json.writeName(name);
            json.writeNumber(number.toPlainString());
        } else if (value instanceof Boolean flag) {
            json.writeBooleanProperty(name, flag);
        }
    }

    private static void probes(JsonGenerator json, KeptSystem from) {
        json.writeArrayPropertyStart("probes");
        for (Probe probe : from.probes().probes(from.name())) {
            json.writeStartObject();
            json.writeStringProperty("quantity", probe.quantity().key());
            json.writeStringProperty("method", JournalFormat.wellFormed(probe.method()));
            json.writeStringProperty("place", JournalFormat.wellFormed(probe.place()));
            json.writeArrayPropertyStart("values_" + JournalFormat.heldUnit(probe.quantity()));
            ProbeBlocks.each(from, probe, block -> block.forEach(value -> pair(json, value)));
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void pair(JsonGenerator json, Value value) {
        json.writeStartArray();
        json.writeString(value.at().toString());
        json.writeNumber(value.value());
        json.writeEndArray();
    }

    /** A picture that a line names and nobody keeps is left out. */
    private static void photos(JsonGenerator json, KeptSystem from, Set<String> names) throws JacksonException {
        json.writeArrayPropertyStart("photos");
        for (String name : names) {
            Photo photo = from.photos().find(from.name(), name).orElse(null);
            if (photo != null) {
                json.writeStartObject();
                json.writeStringProperty("name", JournalFormat.wellFormed(name));
                json.writeStringProperty("media_type", JournalFormat.wellFormed(photo.mediaType()));
                json.writeBinaryProperty("base64", photo.bytes());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }
}
