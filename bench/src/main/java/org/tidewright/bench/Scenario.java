package org.tidewright.bench;

import java.util.List;
import java.util.Map;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** Courses of the harbour room that are held against the same equations in another language. */
enum Scenario {
    /** As the example says. */
    USUAL(Map.of(), List.of(), List.of()),

    /**
     * Hungry days in a room as warm and damp as a greenhouse: thin fish burn their own flesh and some die, vapour settles
     * on the water and the room's panes, and heat goes through those of the tanks either way. Waste afloat begins so
     * rich in carbon that bacteria on it take nitrogen and phosphorus from the water.
     */
    LEAN_AND_CLOSE(
            Map.of(
                    "temperature: 21 °C", "temperature: 27 °C",
                    "humidity: 50 %", "humidity: 96 %",
                    "mass: 0.5 g", "mass: 0.01 g",
                    "mass: 2 g", "mass: 0.03 g",
                    "mass: 0.4 g", "mass: 0.01 g"),
            List.of(),
            List.of(
                    new Begin(Stock.ORGANIC_CARBON, "fish", 0.5),
                    new Begin(Stock.ORGANIC_NITROGEN, "fish", 0.6),
                    new Begin(Stock.ORGANIC_PHOSPHORUS, "fish", 0.8),
                    new Begin(Stock.ORGANIC_CARBON, "display", 1000))),

    /**
     * Lean fish get more food than their stomachs hold, and on the third day the mains fail for so long that the battery of
     * the air pump is used up: still surfaces, no light, no doses, little oxygen, in a house that cools as fast as it can.
     * All comes on again and the room is heated; seconds after the battery can serve again the mains fail once more.
     */
    DARK(
            Map.of("mass: 0.5 g", "mass: 7 g"),
            List.of(
                    new Turn(When.FAILS, When.POWER, 0),
                    new Turn(When.FAILS, "room temperature", 15),
                    new Turn(When.BACK, When.POWER, 1),
                    new Turn(When.BACK, "room temperature", 21),
                    new Turn(When.BACK + 1176, When.POWER, 0),
                    new Turn(When.BACK + 1176 + 3600, When.POWER, 1)),
            List.of(new Begin(Stock.ORGANIC_CARBON, "fish", 0.8)));

    /** The mains and what becomes of them; an enum's constants see no later ones of its own. */
    private static final class When {
        static final String POWER = "power";
        static final double FAILS = 2 * 86_400 + 13.3 * 3600;
        static final double BACK = 3 * 86_400 + 3.3 * 3600;
    }

    /** A setting that is turned while it runs. */
    record Turn(double time, String setting, double value) {}

    /** How many times as much of a stock there is to begin with. */
    record Begin(Stock stock, String body, double times) {}

    private final Map<String, String> edits;
    private final List<Turn> turns;
    private final List<Begin> begins;

    Scenario(Map<String, String> edits, List<Turn> turns, List<Begin> begins) {
        this.edits = edits;
        this.turns = turns;
        this.begins = begins;
    }

    /** The start of a plan as this one has it. */
    State start(Network network, State usual) {
        State start = usual.copy();
        for (Begin begin : begins) {
            Body body = network.body(begin.body());
            start.set(body, begin.stock(), begin.times() * usual.get(body, begin.stock()));
        }
        return start;
    }

    List<Turn> turns() {
        return turns;
    }

    Plan plan() {
        String text = Examples.text("harbour-room");
        for (Map.Entry<String, String> edit : edits.entrySet()) {
            if (!text.contains(edit.getKey())) {
                throw new IllegalStateException("the example says nothing of “" + edit.getKey() + "” any more");
            }
            text = text.replace(edit.getKey(), edit.getValue());
        }
        return ExamplePlan.read(text);
    }

    /** By its name in lower case, words parted by hyphens. */
    static Scenario named(String name) {
        return valueOf(name.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
    }
}
