package org.tidewright.husbandry.exchange;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.Draw;

/** A journal as nobody would write it: every kind, corrected and struck, with the words and numbers that break formats. */
final class RandomJournal {
    private static final String[] WORDS = {
        "", "=1+1", "'", "''quoted", "-", "+49 170", "@home", "\t=2", " =2", "a,b;c\td", "say \"half\"",
                "two\nlines\r\n\r",
        "°C, µg, ‰", "珊瑚 🐠", "\u0000", "\uFEFFbom", "\u2028", "null", "NaN", "true", "0", "＝wide", "#comment",
                "\\u00e4\\"
    };

    private final Draw draw;

    RandomJournal(Draw draw) {
        this.draw = draw;
    }

    MemoryRecords records() {
        MemoryRecords records = new MemoryRecords();
        for (int i = draw.whole(0, 30); i > 0; i--) {
            step(records);
        }
        for (Probe probe : draw.list(0, 3, any -> probe())) {
            records.append("", probe, draw.list(1, 20, any -> new Value(instant(), number())));
        }
        return records;
    }

    private void step(MemoryRecords records) {
        var here = records.everything("");
        int last = here.size() - 1;
        switch (here.isEmpty() ? 2 : draw.whole(0, 4)) {
            case 0 -> {
                UUID id = here.get(draw.whole(0, last)).id();
                records.correct("", records.history("", id).size(), draft(id, records));
            }
            case 1 -> {
                UUID id = here.get(draw.whole(0, last)).id();
                records.strike("", id, records.history("", id).size());
            }
            default -> records.write("", draft(new UUID(draw.anyLong(), draw.anyLong()), records));
        }
    }

    private Draft draft(UUID id, MemoryRecords records) {
        ZoneOffset offset = ZoneOffset.ofTotalSeconds(draw.whole(-18 * 3600, 18 * 3600));
        return new Draft(id, OffsetDateTime.ofInstant(instant(), offset), event(records), text());
    }

    private Event event(MemoryRecords records) {
        return switch (draw.oneOf(Kind.values())) {
            case READING -> {
                WaterQuantity quantity = draw.oneOf(WaterQuantity.values());
                QuantityUnit unit = unit(quantity);
                double held = draw.between(middle(quantity, 0.4), middle(quantity, 0.6));
                yield new Event.Reading(quantity, unit.fromHeld(held), unit, orNull(text()));
            }
            case METHOD_CHECK -> {
                WaterQuantity quantity = draw.oneOf(WaterQuantity.values());
                QuantityUnit unit = unit(quantity);
                double error = draw.oneOf(0.0, 0.1, Double.POSITIVE_INFINITY);
                yield new Event.MethodChecked(quantity, text(), unit, number(), number(), error);
            }
            case DOSE ->
                new Event.Dose(
                        named(), orNull(draw.oneOf(Salt.values())), Math.abs(number()) + 1e-300, orNull(Math.ulp(3.0)));
            case WATER_CHANGE -> new Event.WaterChanged(draw.between(1e-9, 10), newWater());
            case FEEDING -> new Event.Fed(named(), draw.between(1e-9, 10));
            case ANIMAL ->
                new Event.AnimalMoved(
                        named(),
                        draw.whole(1, Integer.MAX_VALUE),
                        draw.oneOf(Event.Move.values()),
                        orNull(draw.between(1e-9, 10)));
            case WORK -> new Event.WorkDone(named(), orNull(took()));
            case OBSERVATION -> observation(records);
            case LEVER ->
                new Event.LeverMoved(
                        named(), text(), orNull(draw.oneOf(Double.NaN, Double.NEGATIVE_INFINITY, 0.1)), number());
            case ANIMAL_CHECK ->
                new Event.AnimalsChecked(
                        orNull(named()),
                        draw.oneOf(Event.Appetite.values()),
                        orNull(draw.whole(0, 400)),
                        Set.copyOf(draw.list(0, 4, any -> draw.oneOf(Sign.values()))));
            case TREATMENT ->
                new Event.Treated(
                        named(), draw.oneOf(Event.Word.values()), orNull(draw.between(1e-9, 10)), orNull(named()));
            case FALLOW -> new Event.Fallow(draw.oneOf(Parasite.values()), draw.oneOf(Event.Turn.values()));
        };
    }

    private Event observation(MemoryRecords records) {
        return switch (draw.whole(0, 2)) {
            case 0 -> new Event.Observation(named(), null);
            case 1 -> new Event.Observation(text(), "a photo nobody kept " + text());
            default -> {
                List<Byte> drawn = draw.list(0, 40, any -> (byte) draw.whole(-128, 127));
                byte[] bytes = new byte[drawn.size()];
                for (int i = 0; i < bytes.length; i++) {
                    bytes[i] = drawn.get(i);
                }
                yield new Event.Observation(text(), records.keep("", new Photo("image/png", bytes)));
            }
        };
    }

    private QuantityUnit unit(WaterQuantity quantity) {
        return quantity.units().get(draw.whole(0, quantity.units().size() - 1));
    }

    private static double middle(WaterQuantity quantity, double share) {
        return quantity.least() + share * (quantity.most() - quantity.least());
    }

    private Duration took() {
        return draw.oneOf(
                Duration.ZERO,
                Duration.ofMinutes(30),
                Duration.ofNanos(1),
                Duration.ofSeconds(Long.MAX_VALUE, 999_999_999),
                Duration.ofMillis(draw.whole(0, Integer.MAX_VALUE)));
    }

    private Map<WaterQuantity, Double> newWater() {
        Map<WaterQuantity, Double> known = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : draw.list(0, 4, any -> draw.oneOf(WaterQuantity.values()))) {
            known.put(quantity, number());
        }
        return known;
    }

    private Probe probe() {
        return new Probe(draw.oneOf(WaterQuantity.values()), text(), text());
    }

    private double number() {
        return draw.oneOf(
                0.0,
                -0.0,
                8.1,
                2e-3,
                Math.nextUp(2e22),
                1.0 / 3,
                Double.MIN_VALUE,
                Double.MAX_VALUE,
                -1e-300,
                draw.between(-1e3, 1e3),
                draw.between(0, 1e-6));
    }

    private Instant instant() {
        return Instant.ofEpochSecond(draw.whole(-2_000_000_000, Integer.MAX_VALUE), draw.whole(0, 999_999_999));
    }

    private String named() {
        return "n" + text();
    }

    /** Text that UTF-8 can hold. */
    private String text() {
        return JournalFormat.wellFormed(draw.whole(0, 3) == 0 ? draw.text() : draw.oneOf(WORDS));
    }

    private <T> @Nullable T orNull(T value) {
        return draw.whole(0, 1) == 0 ? null : value;
    }

    /** All that is kept, to be compared. */
    static List<Object> content(MemoryRecords records) {
        List<Object> content = new ArrayList<>(records.everything(""));
        for (Probe probe : records.probes("")) {
            content.add(probe);
            content.addAll(records.values("", probe, Span.EVER));
        }
        return content;
    }
}
