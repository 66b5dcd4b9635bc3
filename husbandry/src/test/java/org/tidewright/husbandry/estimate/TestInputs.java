package org.tidewright.husbandry.estimate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;

/** Inputs put together by hand, numbers in the units keepers read first. */
final class TestInputs {
    private final List<Inputs.Reading> readings = new ArrayList<>();
    private final List<Inputs.Check> checks = new ArrayList<>();
    private final List<Solution> solutions = new ArrayList<>();
    private final List<Renewal> renewals = new ArrayList<>();
    private final List<Inputs.Upset> upsets = new ArrayList<>();
    private final Map<WaterQuantity, Inputs.Expected> expected = new EnumMap<>(WaterQuantity.class);
    private double until;

    /** A method that scatters, in the quantity's first unit, and is off by as much as a bias. */
    static TestMethod method(WaterQuantity quantity, String key, double scatter, double bias) {
        double one = one(quantity);
        return new TestMethod(
                key, quantity, key, scatter * one, 0, 0, bias * one, 0, false, Basis.FROM_MEMORY, "made for a test");
    }

    /** What one of the quantity's first unit is in its coherent one. */
    static double one(WaterQuantity quantity) {
        return quantity.units()
                .get(0)
                .errorToHeld(Priors.of(quantity).usualLevel().value(), 1);
    }

    TestInputs read(TestMethod method, double day, double value) {
        readings.add(new Inputs.Reading(
                new UUID(day < 0 ? 1 : 0, readings.size()), day, value * one(method.quantity()), method));
        until = Math.max(until, day);
        return this;
    }

    TestInputs checked(TestMethod method, double shown, double standard, double standardError) {
        double one = one(method.quantity());
        checks.add(new Inputs.Check(method, shown * one, new Known(standard * one, standardError * one)));
        return this;
    }

    /** Dosed evenly, in the quantity's unit a day. */
    TestInputs dosed(WaterQuantity quantity, double perDay) {
        return dosed(quantity, perDay, DayShape.EVEN);
    }

    /** Dosed by the hour. */
    TestInputs dosed(WaterQuantity quantity, double perDay, DayShape shape) {
        return dosed(quantity, perDay, shape, 0);
    }

    /** Dosed with a strength that is known to a share of it. */
    TestInputs dosed(WaterQuantity quantity, double perDay, DayShape shape, double strengthError) {
        solutions.add(new Solution(
                quantity.key() + " solution",
                quantity.key() + " dose",
                Map.of(quantity, one(quantity)),
                shape,
                List.of(new Solution.Portion(0, perDay)),
                List.of(),
                strengthError));
        return this;
    }

    TestInputs renewed(double day, double share, WaterQuantity quantity, double level, double error) {
        double one = one(quantity);
        renewals.add(new Renewal(day, share, Map.of(quantity, new Known(level * one, error * one))));
        return this;
    }

    TestInputs upset(double day) {
        upsets.add(new Inputs.Upset(day, "something"));
        return this;
    }

    TestInputs expecting(WaterQuantity quantity, @Nullable Known stated, Known use) {
        double one = one(quantity);
        expected.put(
                quantity,
                new Inputs.Expected(
                        stated == null ? null : new Known(stated.value() * one, stated.standardError() * one),
                        new Known(use.value() * one, use.standardError() * one)));
        return this;
    }

    TestInputs until(double day) {
        until = day;
        return this;
    }

    /** Calcification evenly over the day, not following alkalinity. */
    Inputs inputs() {
        return new Inputs(
                Instant.parse("2025-01-01T00:00:00Z"),
                until,
                readings,
                checks,
                solutions,
                renewals,
                upsets,
                DayShape.EVEN,
                expected,
                0,
                0.0195,
                List.of());
    }
}
