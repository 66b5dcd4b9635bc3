package org.tidewright.web.page;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.husbandry.mixing.Origin;
import org.tidewright.husbandry.mixing.Reserve;
import org.tidewright.husbandry.mixing.SalinityCorrection;
import org.tidewright.husbandry.mixing.SaltMix;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.web.page.MixingFields.Range;
import org.tidewright.web.page.MixingFields.Value;

/** The mixing desk's questions about what evaporates: salinity that is to be moved, and water to keep in hand. */
final class MixingSalinity {
    private static final double DAY = 86_400;
    private static final Range EVAPORATION = new Range(0, 1 / DAY, "");
    private static final Range SHARE = new Range(0.01, 1, "");

    /** Share of the system; an open one loses a hundredth or two. */
    private static final double MOST_A_DAY = 0.25;

    private MixingSalinity() {}

    static @Nullable Advice salinity(MixingFields fields, KnownSystem known) {
        FieldUnits units = FieldUnits.of(WaterQuantity.SALINITY);
        Range salinities = MixingChanges.range(WaterQuantity.SALINITY);
        fields.group("Salinity");
        Value now = fields.needed(
                "now", "In the system", units, known.levels().get(WaterQuantity.SALINITY), new Range(1, 60, ""));
        Value target = fields.needed(
                "target", "Target", units, known.targets().get(WaterQuantity.SALINITY), MixingSalt.WANTED);
        Value strong = fields.needed(
                "strong", "Salt water at hand to raise it with", units, MixingSalt.newSalinity(known), salinities);
        fields.group("The system");
        Value system = MixingChanges.system(fields, known);
        Value temperature = temperature(fields, known);
        Value evaporation = evaporation(fields, known);
        Keeping keeping = fields.keeping(known.keeping());
        if (evaporation.orNone() * DAY > MOST_A_DAY * system.orNone()) {
            fields.fault("evaporation", "This would be more than a quarter of the system a day. Is the unit right?");
        }
        if (!fields.isSound()) {
            return null;
        }
        return new SalinityCorrection(
                        system.orNone(),
                        temperature.orNone(),
                        now.orNone(),
                        target.orNone(),
                        evaporation.orNone(),
                        keeping)
                .advice(strong.orNone(), now.error(), evaporation.error(), origin(evaporation));
    }

    static Value temperature(MixingFields fields, KnownSystem known) {
        return fields.needed(
                "temperature",
                "Temperature of the system",
                FieldUnits.of(WaterQuantity.TEMPERATURE),
                known.levels().get(WaterQuantity.TEMPERATURE),
                MixingChanges.range(WaterQuantity.TEMPERATURE));
    }

    private static Value evaporation(MixingFields fields, KnownSystem known) {
        return fields.needed("evaporation", "Evaporation", FieldUnits.EVAPORATION, known.evaporation(), EVAPORATION);
    }

    private static Origin origin(Value number) {
        return number.given() == null ? Origin.TYPED : number.given().origin();
    }

    static @Nullable Advice reserve(MixingFields fields, KnownSystem known) {
        fields.group("What to be ready for");
        Value time = fields.needed(
                "days",
                "Time without fresh water",
                FieldUnits.TIME,
                MixingSalt.practice(14 * DAY, "two weeks"),
                new Range(0, 365 * DAY, ""));
        Value share = fields.needed(
                "share",
                "System to change in an emergency",
                FieldUnits.SHARE,
                MixingSalt.practice(0.25, "a quarter"),
                SHARE);
        Value evaporation = evaporation(fields, known);
        Value reservoir = fields.needed(
                "reservoir",
                "Reservoir of the top-off, full",
                FieldUnits.VOLUME,
                known.reservoir(),
                new Range(0, 100, ""));
        fields.group("The system");
        Value system = MixingChanges.system(fields, known);
        Value salinity = fields.needed(
                "salinity",
                "Salinity",
                FieldUnits.of(WaterQuantity.SALINITY),
                known.targets().get(WaterQuantity.SALINITY),
                MixingSalt.WANTED);
        Value temperature = temperature(fields, known);
        fields.group("The mix");
        SaltMix mix = MixingSalt.mix(fields);
        if (!fields.isSound()) {
            return null;
        }
        return new Reserve(
                        system.orNone(),
                        salinity.orNone(),
                        temperature.orNone(),
                        evaporation.orNone(),
                        reservoir.orNone(),
                        time.orNone(),
                        share.orNone(),
                        mix)
                .advice(evaporation.error(), origin(evaporation));
    }
}
