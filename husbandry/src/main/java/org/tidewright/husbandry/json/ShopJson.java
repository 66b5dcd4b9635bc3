package org.tidewright.husbandry.json;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.shop.ShopAnimal;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Species;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** All species judged for one system, in one document without blanks: a phone in a shop keeps it whole. */
public final class ShopJson {
    private ShopJson() {}

    /**
     * The document.
     *
     * @param asOf when it was judged
     */
    public static String text(String system, OffsetDateTime asOf, List<ShopAnimal> animals, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", system);
        root.put("as_of", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(asOf.withNano(0)));
        root.put("units", units.name().toLowerCase(Locale.ROOT));
        List<String> cautions = new ArrayList<>();
        ArrayNode array = AdviceJson.JSON.createArrayNode();
        animals.forEach(animal -> animal(array.addObject(), animal, cautions));
        // The same few cautions stand with hundreds of animals: they are told once, and meant by their key.
        ObjectNode told = root.putObject("cautions");
        for (int i = 0; i < cautions.size(); i++) {
            told.put(key(i), cautions.get(i));
        }
        root.set("animals", array);
        return AdviceJson.JSON.writeValueAsString(root);
    }

    private static void animal(ObjectNode node, ShopAnimal animal, List<String> cautions) {
        Species.Name name = animal.species().name();
        node.put("species", name.scientific());
        node.put("common_name", name.common());
        ArrayNode others = node.putArray("other_names");
        name.synonyms().forEach(others::add);
        node.put("kind", animal.kind().key());
        node.put("verdict", animal.call().verdict());
        node.put("lead", animal.lead());
        node.put("size", animal.size());
        put(node, "length", animal.sold());
        put(node, "grown_length", animal.grown());
        ArrayNode becomes = node.putArray("becomes_yes");
        animal.becomes().forEach(becomes::add);
        ArrayNode reasons = node.putArray("reasons");
        for (ShopAnimal.Reason reason : animal.reasons()) {
            reasons.addObject()
                    .put("says", reason.call().name().toLowerCase(Locale.ROOT))
                    .put("sentence", reason.sentence());
        }
        ArrayNode keys = node.putArray("cautions");
        for (String caution : animal.cautions()) {
            if (!cautions.contains(caution)) {
                cautions.add(caution);
            }
            keys.add(key(cautions.indexOf(caution)));
        }
    }

    private static String key(int place) {
        return String.valueOf(place + 1);
    }

    private static void put(ObjectNode node, String name, @Nullable Double length) {
        if (length != null) {
            // To the millimetre: without the rest of a binary fraction.
            node.put(name + AdviceJson.suffix(Measure.LENGTH), Math.round(1000 * length) / 10.0);
        }
    }
}
