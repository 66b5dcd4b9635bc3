package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.husbandry.mixing.Origin;
import org.tidewright.husbandry.mixing.SaltBatch;
import org.tidewright.husbandry.mixing.SaltMix;
import org.tidewright.husbandry.mixing.SaltMix.Filled;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;
import org.tidewright.web.page.MixingFields.Range;
import org.tidewright.web.page.MixingFields.Value;

/** The mixing desk's question about salt. */
final class MixingSalt {
    private static final List<String> FILLED = List.of("salt", "finished salt water", "pure", "pure water");
    private static final double USUAL_SALINITY = 35;
    static final Range WANTED = new Range(2, 50, "");
    private static final Range YIELD = new Range(0.5, 1.05, "Half to all of a dry mix is salt.");
    private static final Range DOUBT = new Range(0, 0.3, "");
    private static final Given SCALES = practice(0.01, "kitchen scales");
    private static final Given MARKS = practice(0.02, "marks on a drum");

    private MixingSalt() {}

    static Given practice(double value, String detail) {
        return new Given(value, 0, new Origin(Basis.COMMON_PRACTICE, detail));
    }

    static @Nullable Advice batch(MixingFields fields, KnownSystem known) {
        fields.group("The batch");
        Value salinity = fields.needed(
                "salinity", "Salinity wanted", FieldUnits.of(WaterQuantity.SALINITY), newSalinity(known), WANTED);
        Value volume =
                fields.needed("volume", "Water in the batch", FieldUnits.VOLUME, known.change(), MixingChanges.VOLUME);
        Choice filled = fields.choice("filled", "Which is the volume of", "salt", FILLED, "");
        Value temperature = fields.needed(
                "temperature",
                "Temperature when it is read off",
                FieldUnits.of(WaterQuantity.TEMPERATURE),
                new Given(known.room().value(), 0, new Origin(Basis.YOUR_PLAN, "as warm as the room")),
                MixingChanges.range(WaterQuantity.TEMPERATURE));
        SaltMix typed = mix(fields);
        SaltMix learned = learned(fields, known);
        if (!fields.isSound()) {
            return null;
        }
        return new SaltBatch(
                        salinity.orNone(),
                        temperature.orNone(),
                        volume.orNone(),
                        filled(filled),
                        learned == null ? typed : learned)
                .advice();
    }

    static @Nullable Given newSalinity(KnownSystem known) {
        Given mixed = known.newWater().get(WaterQuantity.SALINITY);
        return mixed == null ? known.targets().get(WaterQuantity.SALINITY) : mixed;
    }

    private static Filled filled(Choice choice) {
        return Choice.is(choice, "pure") ? Filled.PURE_WATER : Filled.SALT_WATER;
    }

    /** The yield as it is typed, or the usual one. */
    static SaltMix mix(MixingFields fields) {
        Origin usual = new Origin(SaltMix.USUAL.basis(), SaltMix.USUAL.detail());
        Given yield = new Given(SaltMix.USUAL.yield(), 0, usual);
        Given doubt = new Given(SaltMix.USUAL.standardError(), 0, new Origin(usual.basis(), ""));
        List<Value> both = fields.pair(
                "yield",
                "Share of salt in the dry mix",
                FieldUnits.SHARE,
                List.of("yield", "yield_error"),
                List.of("Yield", "Give or take"),
                List.of(yield, doubt),
                List.of(YIELD, DOUBT),
                true);
        Value value = both.get(0);
        Value error = both.get(1);
        boolean begun = value.given() != null && error.given() != null;
        if (begun || !fields.isSound()) {
            return SaltMix.USUAL;
        }
        return new SaltMix(value.orNone(), error.orNone(), Basis.YOUR_LOG, Origin.TYPED.detail());
    }

    /** What a batch that was measured shows; null where none is typed, or not all of it. */
    private static @Nullable SaltMix learned(MixingFields fields, KnownSystem known) {
        fields.foldedGroup("Learn the yield from a batch you measured");
        Value mass = fields.optional(
                "made_mass", "Dry mix that went in", FieldUnits.MASS, null, new Range(1e-3, 1000, ""), "");
        Value massError = fields.needed("made_mass_error", "Give or take", FieldUnits.SHARE, SCALES, DOUBT);
        Value volume = fields.optional(
                "made_volume", "Water of that batch", FieldUnits.VOLUME, null, MixingChanges.VOLUME, "");
        Value volumeError = fields.needed("made_volume_error", "Give or take", FieldUnits.SHARE, MARKS, DOUBT);
        Choice filled = fields.choice("made_filled", "Which is the volume of", "salt", FILLED, "");
        Value temperature = fields.needed(
                "made_temperature",
                "Its temperature",
                FieldUnits.of(WaterQuantity.TEMPERATURE),
                new Given(known.room().value(), 0, new Origin(Basis.YOUR_PLAN, "as warm as the room")),
                MixingChanges.range(WaterQuantity.TEMPERATURE));
        Value salinity = fields.optional(
                "made_salinity", "Salinity it came to", FieldUnits.of(WaterQuantity.SALINITY), null, WANTED, "");
        TestMethod method = method(fields);
        fields.fold();
        List<Value> three = List.of(mass, volume, salinity);
        if (three.stream().noneMatch(Value::typed)) {
            return null;
        }
        List<String> names = List.of("made_mass", "made_volume", "made_salinity");
        for (int i = 0; i < names.size(); i++) {
            if (!three.get(i).typed()) {
                fields.fault(names.get(i), "Needed too: a batch teaches by its mass, its volume and its salinity.");
            }
        }
        return fields.isSound()
                ? taught(fields, mass, massError, volume, volumeError, filled, temperature, salinity, method)
                : null;
    }

    private static @Nullable SaltMix taught(
            MixingFields fields,
            Value mass,
            Value massError,
            Value volume,
            Value volumeError,
            Choice filled,
            Value temperature,
            Value salinity,
            TestMethod method) {
        try {
            return SaltMix.learned(new SaltMix.Made(
                    mass.orNone(),
                    massError.orNone() * mass.orNone(),
                    volume.orNone(),
                    volumeError.orNone() * volume.orNone(),
                    filled(filled),
                    temperature.orNone(),
                    salinity.orNone(),
                    method.standardError(salinity.orNone())));
        } catch (IllegalArgumentException impossible) {
            fields.fault(
                    "made_mass",
                    "So much mix in so much water does not come to that salinity: half to all of a dry mix is salt."
                            + " Are the units right?");
            return null;
        }
    }

    private static TestMethod method(MixingFields fields) {
        List<String> options = new ArrayList<>();
        TestMethods.of(WaterQuantity.SALINITY).forEach(method -> options.addAll(List.of(method.key(), method.name())));
        Choice by = fields.menu("made_by", "Measured by", "refractometer_seawater", options, MixingSalt::doubt);
        return method(by);
    }

    private static TestMethod method(Choice by) {
        return TestMethods.find(WaterQuantity.SALINITY, by.chosen()).orElseThrow();
    }

    private static String doubt(Choice by) {
        double error = method(by).standardError(USUAL_SALINITY);
        return "±\u00a0" + FigureText.number(error, 1) + " at " + FigureText.number(USUAL_SALINITY, 0) + ", "
                + method(by).basis().words() + ".";
    }
}
