package org.tidewright.husbandry.estimate;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.numerics.sample.Draws;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.run.BeyondTheModel;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.SystemTwin;

/**
 * A system that lives on the twin and not in the estimator's model, and the journal an ordinary keeper writes of it: tests
 * at odd days and hours by kits with their scatter, steps and bias, now and then a gross mistake; doses that are not quite
 * what the bottle says; a dose that was moved, light hours that were changed, food that varies unseen, a water change that was
 * missed.
 */
final class TwinTank {
    static final List<String> PLANS = List.of("harbour-room", "fifty-five-gallon", "window-nano");
    static final int DAYS = 91;
    static final int SAMPLES_A_DAY = 24;
    static final double MISTAKES = 0.015;

    private static final double DAY = 86_400;
    private static final double HOUR = 1 / 24.0;
    private static final OffsetDateTime START = OffsetDateTime.of(2025, 3, 3, 0, 0, 0, 0, ZoneOffset.ofHours(1));

    private static final Map<WaterQuantity, Quantity> TOLD = new EnumMap<>(Map.ofEntries(
            Map.entry(WaterQuantity.TEMPERATURE, Quantity.TEMPERATURE),
            Map.entry(WaterQuantity.SALINITY, Quantity.SALINITY),
            Map.entry(WaterQuantity.ALKALINITY, Quantity.ALKALINITY),
            Map.entry(WaterQuantity.CALCIUM, Quantity.CALCIUM),
            Map.entry(WaterQuantity.MAGNESIUM, Quantity.MAGNESIUM),
            Map.entry(WaterQuantity.PH, Quantity.PH),
            Map.entry(WaterQuantity.NITRATE, Quantity.NITRATE),
            Map.entry(WaterQuantity.NITRITE, Quantity.NITRITE),
            Map.entry(WaterQuantity.AMMONIA, Quantity.AMMONIA),
            Map.entry(WaterQuantity.PHOSPHATE, Quantity.PHOSPHATE),
            Map.entry(WaterQuantity.OXYGEN, Quantity.OXYGEN)));

    /** Share of the keeper's rounds on which a quantity is tested. */
    private static final Map<WaterQuantity, Double> TESTED = new EnumMap<>(Map.ofEntries(
            Map.entry(WaterQuantity.TEMPERATURE, 0.8),
            Map.entry(WaterQuantity.SALINITY, 0.6),
            Map.entry(WaterQuantity.ALKALINITY, 0.95),
            Map.entry(WaterQuantity.CALCIUM, 0.5),
            Map.entry(WaterQuantity.MAGNESIUM, 0.3),
            Map.entry(WaterQuantity.PH, 0.6),
            Map.entry(WaterQuantity.NITRATE, 0.6),
            Map.entry(WaterQuantity.NITRITE, 0.2),
            Map.entry(WaterQuantity.AMMONIA, 0.2),
            Map.entry(WaterQuantity.PHOSPHATE, 0.6),
            Map.entry(WaterQuantity.OXYGEN, 0.3)));

    private final Plan plan;
    private final Course course;
    private final double volume;
    private final List<Line> lines = new ArrayList<>();
    private final List<Double> renewals = new ArrayList<>();
    private final List<Solution> trueDoses;
    private final List<UUID> mistakes = new ArrayList<>();
    private final Map<WaterQuantity, Kit> kits = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Double> misjudged = new EnumMap<>(WaterQuantity.class);
    private final Map<WaterQuantity, Double> mixedOtherwise = new EnumMap<>(WaterQuantity.class);
    private final RandomGenerator dice;

    private TwinTank(String name, long seed, int draw) {
        Draws draws = new Draws(seed, draw);
        dice = draws.stream("keeper of " + name);
        plan = TestPlans.example(name);
        SystemTwin twin = SystemTwin.of(plan);
        double[] parameters = new double[twin.network().parameters().size()];
        for (Parameter parameter : twin.network().parameters()) {
            parameters[parameter.index()] = parameter.at(draws.normal(parameter.name()));
        }
        List<Change> changes = new ArrayList<>();
        Map<String, Double> strengths = new java.util.HashMap<>();
        doses(twin, changes, strengths);
        food(twin, changes);
        corals(twin, changes);
        lights(twin, changes);
        waterChanges(twin, changes);
        room(twin, changes);
        volume = twin.volume();
        course = new Forecast(twin, parameters)
                .course(DAYS, DAYS * SAMPLES_A_DAY + 1, new java.util.HashSet<>(TOLD.values()), changes);
        if (course.brokenOff() != null) {
            throw new BrokenOff(course.brokenOff());
        }
        readings();
        for (WaterQuantity quantity : TESTED.keySet()) {
            Priors priors = Priors.of(quantity);
            Kit kit = java.util.Objects.requireNonNull(kits.get(quantity));
            double start = truth(quantity, 0.5);
            misjudged.put(
                    quantity, Math.max(0, kit.shows(start, dice) + 0.5 * priors.statedError() * dice.nextGaussian()));
            mixedOtherwise.put(quantity, dice.nextGaussian());
        }
        lines.sort(Comparator.comparing(line -> line.at().toInstant()));
        Inputs told = inputs(DAYS);
        trueDoses = told.solutions().stream()
                .map(solution -> scaled(solution, strengths.getOrDefault(solution.name(), 1.0)))
                .toList();
    }

    private static final class BrokenOff extends RuntimeException {
        private static final long serialVersionUID = 1L;

        BrokenOff(String why) {
            super(why);
        }
    }

    /**
     * One of many: the same seed and number give the same system and journal. Empty where the twin has no law for what was
     * drawn: a sock that holds everything back.
     */
    static Optional<TwinTank> of(long seed, int draw) {
        try {
            return Optional.of(new TwinTank(PLANS.get(draw % PLANS.size()), seed, draw));
        } catch (BeyondTheModel | BrokenOff noLaw) {
            return Optional.empty();
        }
    }

    // ── what the keeper does ──

    private void doses(SystemTwin twin, List<Change> changes, Map<String, Double> strengths) {
        for (Dosing dosing : plan.dosing()) {
            double strength = 1 + 0.05 * dice.nextGaussian();
            strengths.put(dosing.name(), strength);
            Lever lever = twin.levers().get(dosing.name() + " dose");
            double planned = dosing.perDay().in("m^3/s");
            boolean isSupply = dosing.salt().alkalinity() > 0 || dosing.salt().calcium() > 0;
            // The plan's doses are what the twin needs; hardly any keeper hits that.
            double dosed = isSupply ? planned * dice.nextDouble(0.7, 1.3) : planned;
            changes.add(Change.to(lever, dosed * strength));
            write(0.001, new Event.LeverMoved(lever.name(), lever.unit(), dosed, dosed));
            if (isSupply && dice.nextDouble() < 0.5) {
                double when = dice.nextDouble(15, 75);
                double moved = dosed * dice.nextDouble(0.6, 1.4);
                changes.add(new Change(lever, moved * strength, when * DAY, Double.POSITIVE_INFINITY));
                write(when, new Event.LeverMoved(lever.name(), lever.unit(), null, moved));
            }
        }
    }

    /** Nobody writes down how full the spoon was this week; a change for good stands in the journal. */
    private void food(SystemTwin twin, List<Change> changes) {
        Lever feed = twin.levers().get("feed");
        double usual = 1;
        for (double day = 0; day < DAYS; day += dice.nextDouble(3, 10)) {
            if (dice.nextDouble() < 0.04) {
                usual = dice.nextDouble(0.6, 1.5);
                write(day, new Event.LeverMoved("feed", "1", null, usual));
            }
            double now = usual * dice.nextDouble(0.75, 1.25);
            changes.add(new Change(feed, now, day * DAY, Double.POSITIVE_INFINITY));
        }
    }

    /** They grow, or shrink, week by week, and are not alike from one week to the next. */
    private void corals(SystemTwin twin, List<Change> changes) {
        Lever corals = twin.levers().get("corals");
        double growth = dice.nextDouble(-0.001, 0.005);
        for (int day = 0; day < DAYS; day += 4) {
            double extent = Math.exp(growth * day) * (1 + 0.06 * dice.nextGaussian());
            changes.add(new Change(corals, Math.max(0.2, extent), day * DAY, Double.POSITIVE_INFINITY));
        }
    }

    private void lights(SystemTwin twin, List<Change> changes) {
        Light light = plan.lights().get(0);
        if (dice.nextDouble() < 0.4) {
            Lever hours = twin.levers().get(light.name() + " hours");
            double when = dice.nextDouble(15, 75);
            double lasts = light.daily().in("s") + dice.nextDouble(-2, 2) * 3600;
            changes.add(new Change(hours, lasts, when * DAY, Double.POSITIVE_INFINITY));
            write(when, new Event.LeverMoved(hours.name(), hours.unit(), null, lasts));
        }
    }

    private void waterChanges(SystemTwin twin, List<Change> changes) {
        Lever factor = twin.levers().get("water changes");
        for (WaterChange change : plan.waterChanges()) {
            double every = change.every().in("s") / DAY;
            double at = change.at().toSecondOfDay() / DAY;
            for (double day = 0; day < DAYS; day += every) {
                if (dice.nextDouble() < 0.1) {
                    changes.add(new Change(factor, 0, day * DAY, DAY));
                } else {
                    renewals.add(day + at);
                    write(day + at, new Event.WaterChanged(change.volume().in("m^3"), Map.of()));
                }
            }
        }
    }

    /** Weather comes in, windows stand open, and there are guests or nobody. */
    private void room(SystemTwin twin, List<Change> changes) {
        Lever temperature = twin.levers().get("room temperature");
        Lever air = twin.levers().get("air changes");
        for (double day = 0; day < DAYS; day += dice.nextDouble(1, 5)) {
            double warmer = temperature.setting().initial() + 1.2 * dice.nextGaussian();
            changes.add(new Change(temperature, warmer, day * DAY, Double.POSITIVE_INFINITY));
            double aired = air.setting().initial() * Math.exp(0.5 * dice.nextGaussian());
            changes.add(new Change(air, aired, day * DAY, Double.POSITIVE_INFINITY));
        }
    }

    private void readings() {
        TESTED.keySet().forEach(quantity -> kits.put(quantity, Kit.any(quantity, dice)));
        double longest = dice.nextDouble(3, 14);
        for (double day = dice.nextDouble(0, 3); day < DAYS; day += dice.nextDouble(2, longest)) {
            double time = Math.floor(day) + dice.nextDouble(7, 23) / 24;
            TESTED.forEach((quantity, share) -> {
                if (dice.nextDouble() < share && time < DAYS) {
                    read(quantity, time, kits.get(quantity));
                }
            });
        }
    }

    private void read(WaterQuantity quantity, double time, @Nullable Kit kit) {
        if (kit == null) {
            return;
        }
        double shown = kit.shows(truth(quantity, time), dice);
        boolean mistaken = dice.nextDouble() < MISTAKES;
        if (mistaken) {
            shown *= dice.nextBoolean() ? dice.nextDouble(0.3, 0.7) : dice.nextDouble(1.5, 2.8);
        }
        if (shown >= quantity.least() && shown <= quantity.most()) {
            QuantityUnit unit = quantity.units().get(0);
            UUID id = write(
                    time,
                    new Event.Reading(
                            quantity, unit.fromHeld(shown), unit, kit.method().key()));
            if (mistaken) {
                mistakes.add(id);
            }
        }
    }

    /** A kit with its own bias. */
    private record Kit(TestMethod method, double biasErrors) {
        static Kit any(WaterQuantity quantity, RandomGenerator dice) {
            List<TestMethod> methods = TestMethods.of(quantity).stream()
                    .filter(method -> !method.key().startsWith("laboratory"))
                    .toList();
            return new Kit(methods.get(dice.nextInt(methods.size())), dice.nextGaussian());
        }

        /** Errors of colours grow with the colour, and are log-normal; those of all else are normal. */
        double shows(double level, RandomGenerator dice) {
            double relative = method.relativeScatter() * dice.nextGaussian() + method.relativeBias() * biasErrors;
            double absolute = method.scatter() * dice.nextGaussian() + method.bias() * biasErrors;
            double exact = Math.max(0, level * Math.exp(relative) + absolute);
            double step = method.resolution();
            return step > 0 ? step * Math.round(exact / step) : exact;
        }
    }

    private UUID write(double day, Event event) {
        UUID id = new UUID(dice.nextLong(), dice.nextLong());
        OffsetDateTime at = START.plusNanos(Math.round(day * DAY * 1e3) * 1_000_000);
        lines.add(new Line(id, 1, at, event, "", false, at.toInstant()));
        return id;
    }

    // ── what is true ──

    private static Solution scaled(Solution solution, double factor) {
        Map<WaterQuantity, Double> effect = new EnumMap<>(WaterQuantity.class);
        solution.effect().forEach((quantity, rise) -> effect.put(quantity, rise * factor));
        return new Solution(
                solution.name(),
                solution.lever(),
                effect,
                solution.shape(),
                solution.programme(),
                solution.pulses(),
                0);
    }

    /** The level of the display's water. */
    double truth(WaterQuantity quantity, double time) {
        Quantity told = TOLD.get(quantity);
        if (told == null) {
            throw new IllegalArgumentException("the twin does not tell " + quantity.words());
        }
        double[] samples = course.of(told);
        double place = time * SAMPLES_A_DAY;
        int before = (int) Math.min(samples.length - 2, Math.floor(place));
        double value = samples[before] + (place - before) * (samples[before + 1] - samples[before]);
        return unit(quantity).toHeld(value);
    }

    /** The unit in which the twin tells it. */
    private static QuantityUnit unit(WaterQuantity quantity) {
        return switch (quantity) {
            case PH -> quantity.unitOfKey("total").orElseThrow();
            case NITRITE -> quantity.unitOfKey("n_mg_per_l").orElseThrow();
            default -> quantity.units().get(0);
        };
    }

    /**
     * What the system used of it a day in the mean of a time, doses as they truly were. The hour on each side of a water
     * change is left out.
     */
    double use(WaterQuantity quantity, double from, double to) {
        double gone = 0;
        double days = 0;
        double since = from;
        List<Double> pauses = new ArrayList<>(renewals);
        pauses.add(to + HOUR);
        for (double pause : pauses.stream().sorted().toList()) {
            double until = Math.min(to, pause - HOUR);
            if (until > since) {
                gone += gone(quantity, since, until);
                days += until - since;
            }
            since = Math.max(since, pause + HOUR);
        }
        return gone / days;
    }

    private double gone(WaterQuantity quantity, double from, double to) {
        double dosed = trueDoses.stream()
                .mapToDouble(solution -> solution.amount(from, to) * solution.effectOn(quantity))
                .sum();
        return dosed - truth(quantity, to) + truth(quantity, from);
    }

    /** A time at which somebody is up, and could test. */
    double wakingTime(int day) {
        return day + new Draws(plan.name().hashCode(), day).uniform("hour") * 16 / 24 + 7 / 24.0;
    }

    Plan plan() {
        return plan;
    }

    double volume() {
        return volume;
    }

    List<UUID> mistakes() {
        return mistakes;
    }

    List<Line> lines() {
        return lines;
    }

    /**
     * What its keeper knows on a day. The twin begins with exactly the water that the plan states, and mixes exactly the new
     * water it states: no keeper's plan is so true. So what is told of the first is what the keeper's kit showed once, some
     * time ago, and of the second something else.
     */
    Inputs inputs(double day) {
        Instant now = START.toInstant().plusMillis(Math.round(day * DAY * 1e3));
        Inputs told = Inputs.of(plan, lines, new Span(START.toInstant(), now));
        Map<WaterQuantity, Inputs.Expected> expected = new EnumMap<>(told.expected());
        expected.replaceAll((quantity, was) -> {
            Double shown = misjudged.get(quantity);
            return was.stated() == null || shown == null
                    ? was
                    : new Inputs.Expected(new Known(shown, was.stated().standardError()), was.use());
        });
        List<Renewal> renewed = told.renewals().stream()
                .map(renewal -> new Renewal(renewal.time(), renewal.share(), otherwise(renewal.newWater())))
                .toList();
        return new Inputs(
                told.origin(),
                told.until(),
                told.readings(),
                told.checks(),
                told.solutions(),
                renewed,
                told.upsets(),
                told.calcifying(),
                expected,
                told.response(),
                told.magnesiumShare(),
                told.notes());
    }

    private Map<WaterQuantity, Known> otherwise(Map<WaterQuantity, Known> water) {
        Map<WaterQuantity, Known> other = new EnumMap<>(WaterQuantity.class);
        water.forEach((quantity, known) -> other.put(
                quantity,
                new Known(
                        Math.max(0, known.value() + mixedOtherwise.getOrDefault(quantity, 0.0) * known.standardError()),
                        known.standardError())));
        return other;
    }

    /** Inputs count days from a midnight: the twin's day 0 on their clock. */
    double dayZero(Inputs inputs) {
        return inputs.time(START.toInstant());
    }
}
