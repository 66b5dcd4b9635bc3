package org.tidewright.husbandry.nutrient;

import java.util.Collection;
import org.tidewright.twin.contract.Body;

/**
 * A place in a picture of flows: one or several bodies of the twin taken together.
 *
 * @param words as a keeper calls it
 * @param keeps whether what flows in is told as kept there, without saying again what piles up
 */
record FlowPlace(String id, String words, boolean keeps) {
    static final FlowPlace WATER = new FlowPlace("water", "water", false);
    static final FlowPlace FISH = new FlowPlace("fish", "fish", false);
    static final FlowPlace GROUND = new FlowPlace("ground", "waste on the ground", false);
    static final FlowPlace ROCK = new FlowPlace("rock", "rock and sand", true);

    static final FlowPlace CORALS = new FlowPlace("corals", "corals", true);

    private static final String MEDIUM = "medium of the ";
    private static final String HELD = "held by the ";

    /** The place a body inside the system belongs to. Free algae and bacteria fed with carbon drift in the water; other bacteria live where waste lies. */
    static FlowPlace of(Body body, Collection<Body> waters) {
        if (waters.contains(body)) {
            return WATER;
        }
        String name = body.name();
        return switch (name) {
            case "free algae", "bacteria on dosed carbon" -> WATER;
            case "stomachs of the fish", "guts of the fish", "reserves of the fish", "fish" -> FISH;
            case "waste on the ground", "ammonia oxidisers", "nitrite oxidisers", "dead animals" -> GROUND;
            case "phosphate on rock and sand" -> ROCK;
            case "new tissue of the corals" -> CORALS;
            default -> {
                if (name.startsWith(MEDIUM)) {
                    String gear = name.substring(MEDIUM.length());
                    yield new FlowPlace("medium " + gear, gear, true);
                } else if (name.startsWith(HELD)) {
                    String gear = name.substring(HELD.length());
                    yield new FlowPlace("held " + gear, gear, false);
                }
                yield new FlowPlace(name, name, false);
            }
        };
    }

    /** What piles up in it, for who follows the flows to their end. */
    String piling() {
        return switch (id) {
            case "water" -> "piles up in the water";
            case "fish" -> "growth of the fish";
            case "ground" -> "piles up on the ground";
            default -> {
                if (words.startsWith("algae")) {
                    yield words + " that stay";
                }
                yield id.startsWith("held ") ? "stays in the " + words : "piles up: " + words;
            }
        };
    }

    /** What it gives of its own. */
    String giving() {
        return switch (id) {
            case "water" -> "falls in the water";
            case "fish" -> "fish lose weight";
            case "ground" -> "old waste on the ground";
            default -> {
                if (words.startsWith("algae")) {
                    yield words + " that were there";
                }
                yield id.startsWith("held ") ? "lay in the " + words : "out of: " + words;
            }
        };
    }
}
