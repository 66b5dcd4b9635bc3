package org.tidewright.web.page;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.mixing.ChangeSeries;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.husbandry.mixing.KnownWater;
import org.tidewright.husbandry.mixing.Portion;
import org.tidewright.husbandry.mixing.WaterChange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.web.page.MixingFields.Range;
import org.tidewright.web.page.MixingFields.Value;

/** The mixing desk's questions about changes of water. */
final class MixingChanges {
    /** Name of the quantity a series is about, in the query. */
    static final String OF = "of";

    /** Those that changes carry off or bring, the one that usually is asked about first. */
    static final List<WaterQuantity> CARRIED = List.of(
            WaterQuantity.NITRATE,
            WaterQuantity.PHOSPHATE,
            WaterQuantity.ALKALINITY,
            WaterQuantity.CALCIUM,
            WaterQuantity.MAGNESIUM,
            WaterQuantity.SALINITY);

    private static final List<WaterQuantity> FIRST =
            List.of(WaterQuantity.SALINITY, WaterQuantity.TEMPERATURE, WaterQuantity.ALKALINITY, WaterQuantity.NITRATE);
    private static final List<WaterQuantity> MORE =
            List.of(WaterQuantity.CALCIUM, WaterQuantity.MAGNESIUM, WaterQuantity.PHOSPHATE);

    static final Range VOLUME = new Range(1e-4, 100, "");
    private static final Range TIME = new Range(3600, 365 * 86_400.0, "");

    private MixingChanges() {}

    static @Nullable Advice change(MixingFields fields, KnownSystem known) {
        fields.group("The change");
        Value volume = volume(fields, known);
        Value system = system(fields, known);
        Keeping keeping = fields.keeping(known.keeping());
        Map<WaterQuantity, List<Value>> waters = new EnumMap<>(WaterQuantity.class);
        fields.group("Both waters, as far as you know them");
        FIRST.forEach(quantity -> waters.put(quantity, both(fields, known, quantity, false)));
        fields.foldedGroup("Calcium, magnesium, phosphate");
        MORE.forEach(quantity -> waters.put(quantity, both(fields, known, quantity, false)));
        fields.fold();
        fits(fields, volume, system);
        return fields.isSound()
                ? new WaterChange(new Portion(system.orNone(), water(waters, 0)), volume.orNone(), water(waters, 1))
                        .advice(keeping)
                : null;
    }

    static Value volume(MixingFields fields, KnownSystem known) {
        return fields.needed("volume", "Water to change", FieldUnits.VOLUME, known.change(), VOLUME);
    }

    static Value system(MixingFields fields, KnownSystem known) {
        return fields.needed("system", "Water in the system", FieldUnits.VOLUME, known.volume(), VOLUME);
    }

    /** Nobody changes more than there is. */
    static void fits(MixingFields fields, Value volume, Value system) {
        if (volume.orNone() > system.orNone()) {
            fields.fault("volume", "This is more than the water in the system. Is the unit right?");
        }
    }

    private static List<Value> both(MixingFields fields, KnownSystem known, WaterQuantity quantity, boolean needed) {
        return fields.pair(
                quantity.key(),
                capital(quantity),
                FieldUnits.of(quantity),
                List.of("system_" + quantity.key(), "new_" + quantity.key()),
                List.of("System", "New water"),
                Stream.of(known.levels(), known.newWater())
                        .<@Nullable Given>map(water -> water.get(quantity))
                        .collect(Collectors.toList()),
                Collections.nCopies(2, range(quantity)),
                needed);
    }

    /** What a water can have; pure water and brine are mixed with too. */
    static Range range(WaterQuantity quantity) {
        return switch (quantity) {
            case SALINITY -> new Range(0, 60, "");
            case TEMPERATURE -> new Range(0, 45, "");
            default -> new Range(quantity.least(), quantity.most(), "");
        };
    }

    private static KnownWater water(Map<WaterQuantity, List<Value>> waters, int which) {
        KnownWater water = new KnownWater(Map.of());
        for (Map.Entry<WaterQuantity, List<Value>> entry : waters.entrySet()) {
            water = with(water, entry.getKey(), entry.getValue().get(which));
        }
        return water;
    }

    private static KnownWater with(KnownWater water, WaterQuantity quantity, Value number) {
        return number.value().isPresent() ? water.with(quantity, number.value().getAsDouble(), number.error()) : water;
    }

    /**
     * What both waters' weight goes by. A series asks nobody for it: apart by a degree or by half a salinity, they weigh the
     * same to some ten-thousandths.
     */
    private static KnownWater weight(Map<WaterQuantity, Given> known) {
        KnownWater water = new KnownWater(Map.of());
        for (WaterQuantity quantity : List.of(WaterQuantity.SALINITY, WaterQuantity.TEMPERATURE)) {
            Given given = known.get(quantity);
            water = given == null ? water : water.with(quantity, given.value());
        }
        return water;
    }

    static @Nullable Advice series(MixingFields fields, KnownSystem known) {
        WaterQuantity quantity = carried(fields.text(OF));
        fields.group("Where it stands and where it is to go");
        List<Value> waters = both(fields, known, quantity, true);
        Value target = fields.needed(
                "target", "Target", FieldUnits.of(quantity), known.targets().get(quantity), range(quantity));
        // Nobody has a salinity that rises by itself: the top-off holds it.
        Given rising = known.rates().get(quantity);
        double most = quantity.most() / 86_400;
        Value rate = fields.needed(
                "rise",
                "Rises a day, without changes (− if it falls)",
                FieldUnits.perDay(quantity),
                rising,
                new Range(-most, most, ""));
        fields.group("The changes");
        Value volume = volume(fields, known);
        Value every = fields.needed("every", "From one to the next", FieldUnits.TIME, known.every(), TIME);
        Value system = system(fields, known);
        Keeping keeping = fields.keeping(known.keeping());
        fits(fields, volume, system);
        if (!fields.isSound()) {
            return null;
        }
        KnownWater old = with(weight(known.levels()), quantity, waters.get(0));
        KnownWater fresh = with(weight(known.levels()), quantity, waters.get(1));
        WaterChange change = new WaterChange(new Portion(system.orNone(), old), volume.orNone(), fresh);
        return ChangeSeries.of(change, quantity, target.orNone(), rate.orNone(), every.orNone())
                .advice(change, keeping, rate.error());
    }

    /** The quantity a series is asked about. */
    static WaterQuantity carried(@Nullable String key) {
        return WaterQuantity.ofKey(key == null ? "" : key)
                .filter(CARRIED::contains)
                .orElse(WaterQuantity.NITRATE);
    }

    static String capital(WaterQuantity quantity) {
        return capital(quantity.words());
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
