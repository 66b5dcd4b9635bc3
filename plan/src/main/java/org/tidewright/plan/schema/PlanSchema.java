package org.tidewright.plan.schema;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Entry;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.plan.quantity.TextUnit;
import org.tidewright.plan.text.DateText;
import org.tidewright.plan.text.Keys;
import org.tidewright.plan.text.TimeText;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * JSON Schema (draft 2020-12) of the plan file. It knows shapes, words and units; what two keys mean together is checked
 * by {@link org.tidewright.plan.rule.PlanRules} alone.
 */
public final class PlanSchema {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private PlanSchema() {}

    public static String text() {
        ObjectNode root = JSON.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Tidewright plan, version 1");
        root.setAll(block(Plan.class));
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static ObjectNode block(Class<?> type) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        ArrayNode required = JSON.createArrayNode();
        for (RecordComponent component : type.getRecordComponents()) {
            Entry entry = component.getAnnotation(Entry.class);
            String key = Keys.ofComponent(component.getName());
            ObjectNode value = value(component.getGenericType(), entry);
            value.put("description", entry.value());
            properties.set(key, value);
            if (isRequired(component, entry)) {
                required.add(key);
            }
        }
        schema.set("required", required);
        return schema;
    }

    /** Whether a key must stand in the file: lists and counts may be left out for none, if none is allowed. */
    static boolean isRequired(RecordComponent component, Entry entry) {
        boolean mayBeEmpty =
                component.getType() == Map.class || (component.getType() == List.class && entry.least() < 1);
        return !mayBeEmpty && !component.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    private static ObjectNode value(Type type, Entry entry) {
        ObjectNode schema = JSON.createObjectNode();
        if (type instanceof ParameterizedType generic) {
            return generic.getRawType() == List.class
                    ? list(generic.getActualTypeArguments()[0], entry)
                    : counts((Class<?>) generic.getActualTypeArguments()[0]);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Amount.class) {
            return amount(SiUnit.of(entry.unit()));
        } else if (plain == int.class) {
            schema.put("type", "integer");
            schema.put("minimum", (long) entry.least());
            schema.put("maximum", (long) entry.most());
        } else if (plain == String.class) {
            schema.putArray("type").add("string").add("number");
        } else if (plain == LocalTime.class) {
            schema.put("type", "string");
            schema.put("pattern", "^" + TimeText.PATTERN + "$");
        } else if (plain == LocalDate.class) {
            schema.put("type", "string");
            schema.put("pattern", "^" + DateText.PATTERN + "$");
        } else if (plain.isEnum()) {
            ArrayNode words = schema.putArray("enum");
            for (Object constant : plain.getEnumConstants()) {
                words.add(Keys.ofChoice((Enum<?>) constant));
            }
        } else {
            return block(plain);
        }
        return schema;
    }

    private static ObjectNode list(Type of, Entry entry) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("type", "array");
        if (entry.least() > 0) {
            schema.put("minItems", (long) entry.least());
        }
        if (entry.most() < Integer.MAX_VALUE) {
            schema.put("maxItems", (long) entry.most());
        }
        schema.set("items", value(of, entry));
        return schema;
    }

    private static ObjectNode counts(Class<?> choices) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        for (Object constant : choices.getEnumConstants()) {
            ObjectNode count = properties.putObject(Keys.ofChoice((Enum<?>) constant));
            count.put("type", "integer");
            count.put("minimum", 0);
        }
        return schema;
    }

    private static ObjectNode amount(SiUnit unit) {
        String number = "[-+]?(\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(\\.\\d+)?([eE][-+]?\\d+)?|\\.\\d+)";
        String symbols = TextUnit.spellings().stream()
                .filter(spelling -> TextUnit.spelt(spelling, unit).orElseThrow().isCompatibleWith(unit))
                .map(PlanSchema::escaped)
                .collect(joining("|"));
        String one = number + "\\s*(" + symbols + ")";
        ObjectNode schema = JSON.createObjectNode();
        if (unit.text().equals("1")) {
            schema.putArray("type").add("string").add("number");
        } else {
            schema.put("type", "string");
        }
        String doubt = "\\s*(±|\\+/-|\\+-)\\s*" + one;
        schema.put("pattern", "^\\s*(" + one + "(" + doubt + ")?|" + number + doubt + ")\\s*$");
        return schema;
    }

    /** A symbol as it stands in an ECMA 262 pattern. */
    private static String escaped(String symbol) {
        return Pattern.compile("[\\\\^$.|?*+()\\[\\]{}/]").matcher(symbol).replaceAll("\\\\$0");
    }
}
