package org.tidewright.store.journal;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.Draw;

/** Invented events: of every kind with all it can say and with as little as it may, and any number of random ones. */
final class Events {
    private Events() {}

    static List<Event> ofEveryKind() {
        QuantityUnit degrees = WaterQuantity.ALKALINITY.units().get(0);
        QuantityUnit gravity = WaterQuantity.SALINITY.units().get(1);
        return List.of(
                new Event.Reading(WaterQuantity.ALKALINITY, 8.1, degrees, "drop_titration"),
                new Event.Reading(WaterQuantity.SALINITY, 1.0264, gravity, null),
                new Event.MethodChecked(WaterQuantity.ALKALINITY, "photometer", degrees, 7.9, 8.3, 0.05),
                new Event.MethodChecked(WaterQuantity.ALKALINITY, "", degrees, -1, 1e300, Double.POSITIVE_INFINITY),
                new Event.Dose("part one “A”", Salt.SODIUM_BICARBONATE, 0.0123, 2e-5),
                new Event.Dose("vinegar", null, null, 1e-6),
                new Event.Dose("calcium chloride", Salt.CALCIUM_CHLORIDE, 0.5, null),
                new Event.WaterChanged(
                        0.04, Map.of(WaterQuantity.SALINITY, 35.0, WaterQuantity.PH, 8.2, WaterQuantity.NITRATE, 0.0)),
                new Event.WaterChanged(Double.MIN_VALUE, Map.of()),
                new Event.Fed("frozen mysis", 1.5e-3),
                new Event.AnimalMoved("Pomacentrus vermilius (invented)", 2, Event.Move.ARRIVED, 0.045),
                new Event.AnimalMoved("snail", Integer.MAX_VALUE, Event.Move.LEFT, null),
                new Event.AnimalMoved("snail", 1, Event.Move.DIED, null),
                new Event.WorkDone("cleaned the skimmer's cup", Duration.ofMinutes(12)),
                new Event.WorkDone("new bulbs", Duration.ofSeconds(Long.MAX_VALUE, 999_999_999)),
                new Event.WorkDone("looked", null),
                new Event.Observation("polyps out, 🐠 hiding", "0123abcd"),
                new Event.Observation("", "0123abcd"),
                new Event.Observation("nothing\nnew\t", null),
                new Event.LeverMoved("feed", "1", 1.0, 1.5),
                new Event.LeverMoved("light bar hours", "s", null, 25_200),
                new Event.AnimalsChecked("clownfish", Event.Appetite.SOME, 90, Set.of(Sign.DUSTY_FILM, Sign.HIDING)),
                new Event.AnimalsChecked(null, Event.Appetite.NOT_FED, null, Set.of()),
                new Event.Treated("an invented medicine", Event.Word.VETERINARIAN, 0.04, "twice a day, for a week"),
                new Event.Treated("medicated food", Event.Word.LABEL, null, null),
                new Event.Fallow(Parasite.WHITE_SPOT, Event.Turn.BEGAN));
    }

    static Event random(Draw draw) {
        return switch (draw.oneOf(Kind.values())) {
            case READING -> reading(draw);
            case METHOD_CHECK -> {
                WaterQuantity quantity = draw.oneOf(WaterQuantity.values());
                yield new Event.MethodChecked(
                        quantity, text(draw), unit(draw, quantity), number(draw), number(draw), positive(draw));
            }
            case DOSE -> {
                boolean dry = draw.oneOf(true, false);
                yield new Event.Dose(
                        name(draw),
                        orNone(draw, draw.oneOf(Salt.values())),
                        dry ? positive(draw) : orNone(draw, positive(draw)),
                        dry ? null : positive(draw));
            }
            case WATER_CHANGE -> {
                Map<WaterQuantity, Double> newWater = new EnumMap<>(WaterQuantity.class);
                draw.list(0, 5, each -> each.oneOf(WaterQuantity.values()))
                        .forEach(quantity -> newWater.put(quantity, number(draw)));
                yield new Event.WaterChanged(positive(draw), newWater);
            }
            case FEEDING -> new Event.Fed(name(draw), positive(draw));
            case ANIMAL ->
                new Event.AnimalMoved(
                        name(draw),
                        draw.whole(1, Integer.MAX_VALUE),
                        draw.oneOf(Event.Move.values()),
                        orNone(draw, positive(draw)));
            case WORK ->
                new Event.WorkDone(name(draw), orNone(draw, Duration.ofNanos(draw.anyLong() & Long.MAX_VALUE)));
            case OBSERVATION -> new Event.Observation(name(draw), orNone(draw, name(draw)));
            case LEVER -> new Event.LeverMoved(name(draw), text(draw), orNone(draw, number(draw)), number(draw));
            case ANIMAL_CHECK ->
                new Event.AnimalsChecked(
                        orNone(draw, name(draw)),
                        draw.oneOf(Event.Appetite.values()),
                        orNone(draw, draw.whole(0, 400)),
                        Set.copyOf(draw.list(0, 3, each -> each.oneOf(Sign.values()))));
            case TREATMENT ->
                new Event.Treated(
                        name(draw),
                        draw.oneOf(Event.Word.values()),
                        orNone(draw, positive(draw)),
                        orNone(draw, name(draw)));
            case FALLOW -> new Event.Fallow(draw.oneOf(Parasite.values()), draw.oneOf(Event.Turn.values()));
        };
    }

    private static Event reading(Draw draw) {
        WaterQuantity quantity = draw.oneOf(WaterQuantity.values());
        QuantityUnit unit = unit(draw, quantity);
        double middle =
                unit.fromHeld(draw.between(0.9 * quantity.least() + 0.1 * quantity.most(), quantity.most() / 2));
        return new Event.Reading(quantity, kept(middle), unit, orNone(draw, text(draw)));
    }

    private static QuantityUnit unit(Draw draw, WaterQuantity quantity) {
        List<QuantityUnit> units = quantity.units();
        return units.get(draw.whole(0, units.size() - 1));
    }

    private static double number(Draw draw) {
        return kept(draw.between(-1e9, 1e9));
    }

    private static double positive(Draw draw) {
        return draw.between(Double.MIN_VALUE, 100);
    }

    private static double kept(double number) {
        return number + 0.0;
    }

    private static String name(Draw draw) {
        return "a " + text(draw);
    }

    /** Any text that can be kept: whole characters, and not U+0000. */
    static String text(Draw draw) {
        StringBuilder text = new StringBuilder();
        draw.text()
                .codePoints()
                .filter(point -> point != 0 && Character.getType(point) != Character.SURROGATE)
                .forEach(text::appendCodePoint);
        return text.toString();
    }

    private static <T> @Nullable T orNone(Draw draw, T value) {
        return draw.oneOf(true, false) ? value : null;
    }
}
