package org.tidewright.husbandry.exchange;

import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.WaterQuantity;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.exc.StreamReadException;

/** Reads what {@link JournalJson} writes, as a stream. The names of an object may stand in any order. */
final class JournalJsonReader {
    private static final List<String> NAMES = List.of("format", "version", "system", "lines", "probes", "photos");
    private static final List<String> PROBE = List.of("quantity", "method", "place");
    private static final List<String> PHOTO = List.of("name", "media_type", "base64");
    private static final String VALUES = "values_";
    private static final String BASE64 = "base64";
    private static final String AS_WRITTEN = "a journal as it was written out";

    private final JsonParser json;
    private final CopyReader.Listener listener;
    private final Faults faults;
    private final Map<String, Scalar> head = new HashMap<>();
    private int entry;

    private JournalJsonReader(JsonParser json, CopyReader.Listener listener, Faults faults) {
        this.json = json;
        this.listener = listener;
        this.faults = faults;
    }

    static void read(InputStream in, CopyReader.Listener listener, Faults faults) throws IOException {
        try (JsonParser json = JournalJson.JSON.createParser(in)) {
            new JournalJsonReader(json, listener, faults).root();
        } catch (JacksonIOException failed) {
            if (!(failed.getCause() instanceof CharConversionException)) {
                throw failed.getCause();
            }
            faults.add(broken(failed).fault("bytes that are no text", "JSON in UTF-8", ""));
        } catch (JacksonException broken) {
            faults.add(broken(broken)
                    .fault(
                            "what is no JSON (" + broken.getOriginalMessage() + ")",
                            AS_WRITTEN,
                            "Was the file cut short or changed by hand?"));
        } catch (BadLine unusable) {
            faults.add(unusable.fault());
        }
    }

    private void root() throws BadLine {
        if (json.nextToken() != JsonToken.START_OBJECT) {
            throw new BadLine(here("").fault(shown(), "an object, " + AS_WRITTEN, ""));
        }
        Set<String> seen = new HashSet<>();
        for (String name = json.nextName(); name != null; name = json.nextName()) {
            Place place = here(name);
            json.nextToken();
            if (!seen.add(name)) {
                throw new BadLine(place.fault("“" + name + "” a second time", "each name once", ""));
            }
            switch (name) {
                case "format", "version", "system" -> head.put(name, scalar(place));
                case "lines" -> each(name, this::line);
                case "probes" -> each(name, this::probe);
                case "photos" -> each(name, this::photo);
                default -> {
                    faults.add(unknown(place, name, NAMES));
                    json.skipChildren();
                }
            }
            try {
                head();
            } catch (BadLine another) {
                faults.only(another.fault());
                return;
            }
        }
        if (json.nextToken() != null) {
            throw new BadLine(here("").fault("more after the end of the object", "nothing more", ""));
        }
        Given given = new Given(here(""), head);
        given.text("format");
        given.whole("version");
        listener.system(given.text("system"));
        for (String list : List.of("lines", "probes", "photos")) {
            if (!seen.contains(list)) {
                throw new BadLine(here("").fault("no “" + list + "”", "a list, empty where there are none", ""));
            }
        }
    }

    /** A copy of another kind, or of a later program, is said to be one as soon as it shows, and nothing else about it. */
    private void head() throws BadLine {
        Given given = new Given(here(""), head);
        if (head.containsKey("format") && !given.text("format").equals(JournalFormat.NAME)) {
            throw given.refusal("format", "“" + JournalFormat.NAME + "”", "Is this another kind of file?");
        }
        if (head.containsKey("version") && !JournalFormat.isRead(given.whole("version"))) {
            throw given.refusal(
                    "version",
                    "version 1 to " + JournalFormat.VERSION,
                    given.whole("version") > JournalFormat.VERSION
                            ? "A newer program wrote this file: read it with that one, or a later one."
                            : "");
        }
    }

    private interface Element {
        void read(String where) throws BadLine;
    }

    private void each(String name, Element element) throws BadLine {
        if (json.currentToken() != JsonToken.START_ARRAY) {
            throw new BadLine(here(name).fault(shown(), "a list", ""));
        }
        for (int i = 0; json.nextToken() != JsonToken.END_ARRAY; i++) {
            String where = name + "[" + i + "]";
            if (json.currentToken() == JsonToken.START_OBJECT) {
                element.read(where);
            } else {
                faults.add(here(where).fault(shown(), "an object", ""));
                json.skipChildren();
            }
        }
    }

    private void line(String where) throws BadLine {
        Given given = new Given(here(where), object(where));
        entry++;
        try {
            Kind kind = EventFields.constant(given, LineFields.KIND, Kind.values());
            List<String> names = new ArrayList<>(LineFields.names(kind));
            names.add(LineFields.KIND);
            given.onlyKnow(names);
            listener.line(given.place(), entry, LineFields.read(kind, given));
        } catch (BadLine bad) {
            faults.add(bad.fault());
        }
    }

    private Map<String, Scalar> object(String where) throws BadLine {
        Map<String, Scalar> values = new HashMap<>();
        for (String name = json.nextName(); name != null; name = json.nextName()) {
            json.nextToken();
            Place place = here(where + "." + name);
            if (values.put(name, scalar(place)) != null) {
                throw new BadLine(place.fault("“" + name + "” a second time", "each name once", ""));
            }
        }
        return values;
    }

    private void probe(String where) throws BadLine {
        Given known = new Given(here(where), new HashMap<>());
        Map<String, Scalar> values = new HashMap<>();
        for (String name = json.nextName(); name != null; name = json.nextName()) {
            json.nextToken();
            Place place = here(where + "." + name);
            if (PROBE.contains(name)) {
                values.put(name, scalar(place));
                known = new Given(known.place(), values);
            } else if (!name.startsWith(VALUES)) {
                throw new BadLine(unknown(place, name, List.of("quantity", "method", "place", VALUES + "…")));
            } else {
                if (!values.keySet().containsAll(PROBE)) {
                    throw new BadLine(place.fault("“" + name + "”", "quantity, method and place before it", ""));
                }
                WaterQuantity quantity = EventFields.quantity(known);
                String expected = VALUES + JournalFormat.heldUnit(quantity);
                if (!name.equals(expected) || json.currentToken() != JsonToken.START_ARRAY) {
                    throw new BadLine(place.fault("“" + name + "”", "a list “" + expected + "”", ""));
                }
                values(place, new Probe(quantity, known.text("method"), known.text("place")));
            }
        }
        EventFields.quantity(known);
    }

    private void values(Place place, Probe probe) throws BadLine {
        List<Value> block = new ArrayList<>();
        for (int i = 0; json.nextToken() != JsonToken.END_ARRAY; i++) {
            Place at = here(place.where() + "[" + i + "]");
            if (json.currentToken() != JsonToken.START_ARRAY) {
                throw new BadLine(at.fault(shown(), "a pair of a time and a number", ""));
            }
            json.nextToken();
            Scalar time = scalar(at);
            json.nextToken();
            Scalar number = scalar(at);
            if (json.nextToken() != JsonToken.END_ARRAY) {
                throw new BadLine(at.fault("more or less than two", "a pair of a time and a number", ""));
            }
            Given pair = new Given(at, Map.of("time", time, "value", number));
            Instant instant = pair.parsed("time", Instant::parse, "a time such as 2026-03-01T07:30:12Z");
            block.add(new Value(instant, pair.number("value")));
            if (block.size() == CopyReader.BLOCK) {
                listener.values(place, probe, block);
                block = new ArrayList<>();
            }
        }
        if (!block.isEmpty()) {
            listener.values(place, probe, block);
        }
    }

    private void photo(String where) throws BadLine {
        Place place = here(where);
        Map<String, Scalar> values = new HashMap<>();
        byte @Nullable [] bytes = null;
        for (String name = json.nextName(); name != null; name = json.nextName()) {
            json.nextToken();
            Place at = here(where + "." + name);
            if (name.equals(BASE64) && json.currentToken() == JsonToken.VALUE_STRING) {
                bytes = bytes(at);
            } else {
                values.put(name, scalar(at));
            }
        }
        Given given = new Given(place, values);
        given.onlyKnow(PHOTO);
        if (bytes == null) {
            throw given.refusal(BASE64, "a picture in base64", "");
        }
        listener.photo(place, given.text("name"), new Photo(given.text("media_type"), bytes));
    }

    private byte[] bytes(Place place) throws BadLine {
        try {
            return json.getBinaryValue();
        } catch (StreamReadException noBase64) {
            throw new BadLine(place.fault("what is no base64", "a picture in base64", ""));
        }
    }

    private Scalar scalar(Place place) {
        JsonToken token = json.currentToken();
        return switch (token) {
            case VALUE_NULL -> new Scalar(Scalar.Form.ABSENT, "", place);
            case VALUE_STRING -> new Scalar(Scalar.Form.TEXT, json.getString(), place);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Scalar(Scalar.Form.NUMBER, json.getString(), place);
            case VALUE_TRUE, VALUE_FALSE -> new Scalar(Scalar.Form.FLAG, json.getString(), place);
            default -> {
                json.skipChildren();
                yield new Scalar(Scalar.Form.NESTED, "", place);
            }
        };
    }

    private static Fault unknown(Place place, String name, List<String> names) {
        return place.fault(
                "the unknown name “" + name + "”",
                "one of: " + String.join(", ", names),
                Spelling.suggestion(name, names));
    }

    private String shown() {
        JsonToken token = json.currentToken();
        return token == null
                ? "nothing"
                : token.isScalarValue() ? "“" + scalar(here("")).text() + "”" : "a list or an object";
    }

    private Place here(String where) {
        return place(json.currentTokenLocation(), where);
    }

    private static Place broken(JacksonException broken) {
        TokenStreamLocation location = broken.getLocation();
        return place(location == null ? TokenStreamLocation.NA : location, "");
    }

    private static Place place(TokenStreamLocation location, String where) {
        return new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()), where);
    }
}
