package org.tidewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.husbandry.mixing.KnownWater;
import org.tidewright.husbandry.mixing.Origin;
import org.tidewright.husbandry.mixing.Portion;
import org.tidewright.husbandry.mixing.TemperatureMatch;
import org.tidewright.husbandry.mixing.Warming;
import org.tidewright.husbandry.mixing.WaterChange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;
import org.tidewright.web.page.MixingFields.Range;
import org.tidewright.web.page.MixingFields.Value;

/** The mixing desk's questions about warmth. */
final class MixingWarmth {
    private static final Range SALINITY = MixingChanges.range(WaterQuantity.SALINITY);
    private static final Range DEGREES = MixingChanges.range(WaterQuantity.TEMPERATURE);

    private MixingWarmth() {}

    static @Nullable Advice match(MixingFields fields, KnownSystem known) {
        FieldUnits salinity = FieldUnits.of(WaterQuantity.SALINITY);
        fields.group("The change");
        Value volume = MixingChanges.volume(fields, known);
        Value limit = fields.needed(
                "limit", "May move the system by", FieldUnits.WARMTH, comfortable(), new Range(0.05, 5, ""));
        fields.group("Both waters");
        Value system = MixingChanges.system(fields, known);
        Value temperature = MixingSalinity.temperature(fields, known);
        List<Value> salt = fields.pair(
                "salinity",
                "Salinity",
                salinity,
                List.of("system_salinity", "new_salinity"),
                List.of("System", "New water"),
                List.of(
                        known.levels().get(WaterQuantity.SALINITY),
                        known.newWater()
                                .getOrDefault(
                                        WaterQuantity.SALINITY, known.targets().get(WaterQuantity.SALINITY))),
                List.of(SALINITY, SALINITY),
                true);
        MixingChanges.fits(fields, volume, system);
        if (!fields.isSound()) {
            return null;
        }
        KnownWater old = KnownWater.of(salt.get(0).orNone(), temperature.orNone());
        KnownWater put = KnownWater.of(salt.get(1).orNone(), temperature.orNone());
        WaterChange change = new WaterChange(new Portion(system.orNone(), old), volume.orNone(), put);
        return new TemperatureMatch(change, limit.orNone()).advice();
    }

    /** What asks for no thought within an hour, the shortest of the practice's spans. */
    private static Given comfortable() {
        SafeRate hourly =
                SafeRate.of(WaterQuantity.TEMPERATURE, Keeping.FISH, 25, true).get(0);
        return new Given(hourly.comfortable(), 0, new Origin(Basis.COMMON_PRACTICE, "comfortable within an hour"));
    }

    static @Nullable Advice heating(MixingFields fields, KnownSystem known) {
        FieldUnits degrees = FieldUnits.of(WaterQuantity.TEMPERATURE);
        Given asRoom = new Given(known.room().value(), 0, new Origin(Basis.YOUR_PLAN, "as warm as the room"));
        fields.group("The batch");
        Value volume =
                fields.needed("volume", "Water in the batch", FieldUnits.VOLUME, known.change(), MixingChanges.VOLUME);
        Value from = fields.needed("from", "Its temperature now", degrees, asRoom, DEGREES);
        Value to = fields.needed(
                "to", "Temperature wanted", degrees, known.levels().get(WaterQuantity.TEMPERATURE), DEGREES);
        Value power = fields.needed("power", "Power of the heater", FieldUnits.POWER, null, new Range(1, 20_000, ""));
        Choice lid = fields.choice("lid", "The vessel is", "on", List.of("on", "covered", "off", "open"), "");
        fields.foldedGroup("Salinity and the room");
        Value salinity = fields.needed(
                "salinity",
                "Salinity",
                FieldUnits.of(WaterQuantity.SALINITY),
                known.newWater()
                        .getOrDefault(WaterQuantity.SALINITY, known.targets().get(WaterQuantity.SALINITY)),
                SALINITY);
        Value room = fields.needed("room", "Temperature of the room", degrees, known.room(), DEGREES);
        Value humidity = fields.needed(
                "humidity", "Its relative humidity", FieldUnits.SHARE, known.humidity(), new Range(0, 1, ""));
        fields.fold();
        if (to.orNone() < from.orNone()) {
            fields.fault("to", "This is colder than the batch is now; a heater does not cool it.");
        }
        if (!fields.isSound()) {
            return null;
        }
        return new Warming(
                        volume.orNone(),
                        salinity.orNone(),
                        from.orNone(),
                        to.orNone(),
                        power.orNone(),
                        room.orNone(),
                        humidity.orNone(),
                        Choice.is(lid, "on"))
                .advice();
    }
}
