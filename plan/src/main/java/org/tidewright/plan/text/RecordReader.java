package org.tidewright.plan.text;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Places;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.model.Entry;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.quantity.AmountText;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.plan.quantity.TextUnit;

/** Reads YAML nodes into records by their components, noting every fault and every key's place. */
final class RecordReader {
    private static final int LONGEST_TEXT = 2000;

    private final List<Fault> faults;
    private final Places places;

    RecordReader(List<Fault> faults, Places places) {
        this.faults = faults;
        this.places = places;
    }

    /** The record, or null when a fault kept it from being made. */
    <R extends Record> @Nullable R read(MappingNode node, Class<R> type) {
        return record(node, type, "");
    }

    private <R extends Record> @Nullable R record(Node node, Class<R> type, String path) {
        if (!(node instanceof MappingNode mapping)) {
            fault(node, path, found(node), "a block with the keys " + keysOf(type), "");
            return null;
        }
        Map<String, Node> values = keyed(mapping, type, path);
        RecordComponent[] components = type.getRecordComponents();
        @Nullable Object[] arguments = new @Nullable Object[components.length];
        boolean whole = true;
        for (int i = 0; i < components.length; i++) {
            RecordComponent component = components[i];
            String key = Keys.ofComponent(component.getName());
            String place = path.isEmpty() ? key : path + "." + key;
            Node value = values.get(key);
            if (value == null || value.getTag().equals(Tag.NULL)) {
                arguments[i] = absent(component);
                if (arguments[i] == null && !isOptional(component)) {
                    fault(
                            value == null ? mapping : value,
                            place,
                            value == null ? "no key “" + key + "”" : "the key “" + key + "” without a value",
                            entry(component).value(),
                            "");
                    whole = false;
                }
            } else {
                arguments[i] = value(value, component.getGenericType(), entry(component), place);
                whole &= arguments[i] != null;
            }
        }
        return whole ? construct(type, arguments) : null;
    }

    /** Sorts a mapping's values by key, reporting strangers and doubles. */
    private Map<String, Node> keyed(MappingNode mapping, Class<? extends Record> type, String path) {
        List<String> known = Arrays.stream(type.getRecordComponents())
                .map(component -> Keys.ofComponent(component.getName()))
                .toList();
        Map<String, Node> values = new HashMap<>();
        Set<String> seen = new HashSet<>();
        for (NodeTuple tuple : mapping.getValue()) {
            Node keyNode = tuple.getKeyNode();
            String key = keyNode instanceof ScalarNode scalar ? scalar.getValue() : "";
            String place = path.isEmpty() ? key : path + "." + key;
            if (!known.contains(key)) {
                String suggestion = Spelling.suggestion(key, known);
                fault(
                        keyNode,
                        place,
                        key.isEmpty() ? "a key that is no word" : "the unknown key “" + shorten(key) + "”",
                        "one of " + String.join(", ", known),
                        suggestion);
            } else if (!seen.add(key)) {
                fault(keyNode, place, "the key “" + key + "” a second time", "each key once", "Remove one of them.");
            } else {
                values.put(key, tuple.getValueNode());
                places.note(place, placeOf(keyNode));
            }
        }
        return values;
    }

    private @Nullable Object value(Node node, Type type, Entry entry, String path) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            return generic.getRawType() == List.class
                    ? list(node, arguments[0], entry, path)
                    : counts(node, (Class<?>) arguments[0], path);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Amount.class) {
            return amount(node, entry, path);
        } else if (plain == int.class) {
            return wholeNumber(node, entry, path);
        } else if (plain == String.class) {
            return text(node, path);
        } else if (plain == LocalTime.class) {
            return timeOfDay(node, path);
        } else if (plain == LocalDate.class) {
            return day(node, path);
        } else if (plain.isEnum()) {
            return choice(node, plain, path);
        }
        return record(node, plain.asSubclass(Record.class), path);
    }

    private @Nullable List<?> list(Node node, Type of, Entry entry, String path) {
        if (!(node instanceof SequenceNode sequence)) {
            fault(node, path, found(node), "a list, each item after a dash", "");
            return null;
        }
        int size = sequence.getValue().size();
        if (size < entry.least() || size > entry.most()) {
            fault(node, path, "a list of " + size, bounds(entry.least(), entry.most()) + " items", "");
            return null;
        }
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            Node item = sequence.getValue().get(i);
            String place = path + "[" + (i + 1) + "]";
            places.note(place, placeOf(item));
            Object value = value(item, of, entry, place);
            if (value != null) {
                items.add(value);
            }
        }
        return items.size() == size ? List.copyOf(items) : null;
    }

    /** A block of counts: {@code fittings: {elbow_90: 3}}. */
    private @Nullable Map<Enum<?>, Integer> counts(Node node, Class<?> choices, String path) {
        if (!(node instanceof MappingNode mapping)) {
            fault(node, path, found(node), "a block with a count after each of " + wordsOf(choices), "");
            return null;
        }
        Map<Enum<?>, Integer> counts = new LinkedHashMap<>();
        boolean whole = true;
        for (NodeTuple tuple : mapping.getValue()) {
            Enum<?> key = choice(tuple.getKeyNode(), choices, path);
            String place = key == null ? path : path + "." + Keys.ofChoice(key);
            places.note(place, placeOf(tuple.getKeyNode()));
            Integer count = wholeNumber(tuple.getValueNode(), 0, 1000, place);
            if (key == null || count == null) {
                whole = false;
            } else if (counts.put(key, count) != null) {
                fault(tuple.getKeyNode(), place, "a second count of it", "each kind once", "Add the two counts.");
                whole = false;
            }
        }
        return whole ? counts : null;
    }

    private @Nullable Amount amount(Node node, Entry entry, String path) {
        SiUnit unit = SiUnit.of(entry.unit());
        String text = text(node, path);
        if (text == null) {
            return null;
        }
        Amount amount;
        try {
            amount = AmountText.read(text, unit);
        } catch (AmountText.Unreadable unreadable) {
            List<String> fitting =
                    unit.spellings().stream().map(TextUnit::symbol).toList();
            String suggestion =
                    unreadable.unknownUnit().isEmpty() ? "" : Spelling.suggestion(unreadable.unknownUnit(), fitting);
            fault(node, path, unreadable.found(), unreadable.expected(), suggestion);
            return null;
        }
        double value = amount.in(unit.text());
        if (value < entry.least() || value > entry.most()) {
            fault(node, path, amount.toString(), bounds(entry, amount.unit(), unit), "");
            return null;
        }
        return amount;
    }

    private @Nullable Integer wholeNumber(Node node, Entry entry, String path) {
        return wholeNumber(node, entry.least(), entry.most(), path);
    }

    private @Nullable Integer wholeNumber(Node node, double least, double most, String path) {
        String expected = "a whole number from " + trim(least) + " to " + trim(most);
        String text = text(node, path);
        if (text == null) {
            return null;
        }
        try {
            int number = Integer.parseInt(text.strip());
            if (number >= least && number <= most) {
                return number;
            }
            fault(node, path, text, expected, "");
            return null;
        } catch (NumberFormatException notWhole) {
            fault(node, path, "“" + shorten(text) + "”", expected, "");
            return null;
        }
    }

    private @Nullable String text(Node node, String path) {
        if (!(node instanceof ScalarNode scalar)) {
            fault(node, path, found(node), "a single value", "");
            return null;
        }
        String text = scalar.getValue();
        if (text.isBlank()) {
            fault(node, path, "nothing", "a value", "");
            return null;
        }
        if (text.length() > LONGEST_TEXT) {
            fault(node, path, "a text of " + text.length() + " characters", "at most " + LONGEST_TEXT, "");
            return null;
        }
        return text;
    }

    private @Nullable LocalTime timeOfDay(Node node, String path) {
        String text = text(node, path);
        if (text == null) {
            return null;
        }
        LocalTime time = TimeText.read(text.strip());
        if (time == null) {
            fault(node, path, "“" + shorten(text) + "”", TimeText.EXPECTED, "");
        }
        return time;
    }

    private @Nullable LocalDate day(Node node, String path) {
        String text = text(node, path);
        if (text == null) {
            return null;
        }
        LocalDate day = DateText.read(text.strip());
        if (day == null) {
            fault(node, path, "“" + shorten(text) + "”", DateText.EXPECTED, "");
        }
        return day;
    }

    private @Nullable Enum<?> choice(Node node, Class<?> choices, String path) {
        String text = text(node, path);
        if (text == null) {
            return null;
        }
        for (Object constant : choices.getEnumConstants()) {
            Enum<?> choice = (Enum<?>) constant;
            if (Keys.ofChoice(choice).equals(text)) {
                return choice;
            }
        }
        fault(
                node,
                path,
                "“" + shorten(text) + "”",
                "one of " + wordsOf(choices),
                Spelling.suggestion(text, words(choices)));
        return null;
    }

    // ── what a component allows ──

    private static @Nullable Object absent(RecordComponent component) {
        if (component.getType() == List.class && entry(component).least() < 1) {
            return List.of();
        }
        return component.getType() == Map.class ? Map.of() : null;
    }

    static boolean isOptional(RecordComponent component) {
        return component.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    static Entry entry(RecordComponent component) {
        Entry entry = component.getAnnotation(Entry.class);
        if (entry == null) {
            throw new IllegalStateException(component + " has no @Entry");
        }
        return entry;
    }

    private static <R extends Record> R construct(Class<R> type, @Nullable Object[] arguments) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(arguments);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("record " + type + " cannot be made from its own components", impossible);
        }
    }

    // ── words for faults ──

    private void fault(Node node, String path, String found, String expected, String mend) {
        Places.Place place = placeOf(node);
        faults.add(new Fault(place.line(), place.column(), path, found, expected, mend));
    }

    private static Places.Place placeOf(Node node) {
        Mark mark = node.getStartMark().orElseThrow();
        return new Places.Place(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static String found(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue().isBlank() ? "nothing" : "“" + shorten(scalar.getValue()) + "”";
        }
        return node instanceof SequenceNode ? "a list" : "a block of keys";
    }

    private static String shorten(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }

    private static String keysOf(Class<? extends Record> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(component -> Keys.ofComponent(component.getName()))
                .collect(joining(", "));
    }

    private static List<String> words(Class<?> choices) {
        return Arrays.stream(choices.getEnumConstants())
                .map(constant -> Keys.ofChoice((Enum<?>) constant))
                .toList();
    }

    private static String wordsOf(Class<?> choices) {
        return String.join(", ", words(choices));
    }

    /** Bounds in the unit the keeper used. */
    private static String bounds(Entry entry, TextUnit unit, SiUnit si) {
        return bounds(rounded(unit.fromSi(entry.least(), si)), rounded(unit.fromSi(entry.most(), si)))
                + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    private static String bounds(double least, double most) {
        if (least == Double.NEGATIVE_INFINITY) {
            return "at most " + trim(most);
        }
        return most == Double.POSITIVE_INFINITY ? "at least " + trim(least) : trim(least) + " to " + trim(most);
    }

    private static double rounded(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(new MathContext(4)).doubleValue()
                : value;
    }

    private static String trim(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
