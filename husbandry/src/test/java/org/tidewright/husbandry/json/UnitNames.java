package org.tidewright.husbandry.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Asks of a JSON text that every number's name ends in its unit. */
final class UnitNames {
    private static final Set<String> UNITS = Set.of(
            "l",
            "mm",
            "cm",
            "c",
            "k",
            "h",
            "s",
            "kg",
            "kpa",
            "l_per_h",
            "w",
            "wh",
            "mg_per_l",
            "percent",
            "w_per_k",
            "cm_per_h",
            "percent_per_m",
            "per_d",
            "mmol_per_h",
            "umol_per_l",
            "mmol_per_kg",
            "l_per_h_kg",
            "umol_per_m2_s");

    /** Numbers that are shares or factors, and have none. */
    private static final Set<String> WITHOUT = Set.of("share_of_draws", "value", "value_low", "value_high");

    private UnitNames() {}

    /** Checks a node and all it holds; how many numbers were seen. */
    static int check(JsonNode node) {
        int numbers = 0;
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            JsonNode value = entry.getValue();
            if (value.isNumber()
                    || (value.isArray() && !value.isEmpty() && value.get(0).isNumber())) {
                String name = entry.getKey();
                assertThat(UNITS.stream().anyMatch(unit -> name.endsWith("_" + unit)) || WITHOUT.contains(name))
                        .as(name)
                        .isTrue();
                numbers++;
            }
            numbers += check(value);
        }
        if (node.isArray()) {
            for (JsonNode element : node) {
                numbers += check(element);
            }
        }
        return numbers;
    }
}
