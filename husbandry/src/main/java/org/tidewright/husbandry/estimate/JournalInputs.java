package org.tidewright.husbandry.estimate;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.law.carbonate.Calcification;

/** Reads a plan and a journal for what bears on the water. */
final class JournalInputs {
    private static final double DAY = 86_400;

    /** Lamps without a start shine around this time of day, as the twin has it. */
    private static final double MID_LIGHT = 14 / 24.0;

    /** Share of coral in what is built where the plan names no coralline algae; example 2.10 of the handbook. */
    private static final double CORAL_SHARE = 0.9;

    /**
     * Saturation of aragonite, less one, rises by 2.1 to 2.9 % for each per cent of alkalinity between 7 and 9 dKH, at 420 to
     * 1000 µatm of carbon dioxide (the handbook, table 4.2).
     */
    private static final double SATURATION_TO_ALKALINITY = 2.5;

    /** Calcification follows that as it does in the twin, with an exponent between its two sources. */
    private static final double RESPONSE = SATURATION_TO_ALKALINITY * Calcification.EXPONENT_USUAL;

    /** Days in which there are some water changes, made or planned. */
    private static final double SOME_CHANGES = 60;

    private JournalInputs() {}

    static Inputs of(Plan plan, List<Line> lines, Span span) {
        // What was done before the span still tells how doses stood when it began.
        List<Line> standing = lines.stream()
                .filter(line -> !line.struck() && instant(line).isBefore(span.to()))
                .toList();
        List<Line> within =
                standing.stream().filter(line -> contains(span, instant(line))).toList();
        ZoneOffset clock = within.isEmpty() ? ZoneOffset.UTC : last(within).at().getOffset();
        Instant first = within.isEmpty() ? span.from() : instant(within.get(0));
        Instant origin = midnight(first, clock);
        JournalTime time = at -> Duration.between(origin, at.toInstant()).toMillis() / (1e3 * DAY);
        double until = within.isEmpty()
                ? time.of(first.atOffset(clock))
                : time.of(last(within).at());
        double volume = SystemWater.volume(plan);

        List<String> notes = new ArrayList<>();
        List<Solution> solutions = new KnownDoses(plan, volume, time, notes).of(standing);
        List<Renewal> renewals = KnownRenewals.of(plan, volume, standing, time, until);
        return new Inputs(
                origin,
                until,
                readings(within, time, notes),
                checks(standing),
                solutions,
                renewals,
                upsets(within, solutions, time),
                calcifying(plan),
                Expectations.of(plan, solutions, renewals, Math.max(SOME_CHANGES, until)),
                RESPONSE,
                magnesiumShare(plan.inhabitants()),
                notes);
    }

    /** Days since the origin. */
    @FunctionalInterface
    interface JournalTime {
        double of(OffsetDateTime at);
    }

    private static boolean contains(Span span, Instant at) {
        return !at.isBefore(span.from()) && at.isBefore(span.to());
    }

    private static Instant instant(Line line) {
        return line.at().toInstant();
    }

    private static Line last(List<Line> lines) {
        return lines.get(lines.size() - 1);
    }

    private static Instant midnight(Instant at, ZoneOffset clock) {
        return at.atOffset(clock).truncatedTo(ChronoUnit.DAYS).toInstant();
    }

    private static List<Inputs.Reading> readings(List<Line> lines, JournalTime time, List<String> notes) {
        List<Inputs.Reading> readings = new ArrayList<>();
        for (Line line : lines) {
            if (line.event() instanceof Event.Reading reading) {
                TestMethod method = method(reading.quantity(), reading.method(), notes);
                readings.add(new Inputs.Reading(line.id(), time.of(line.at()), reading.value(), method));
            }
        }
        return readings;
    }

    private static TestMethod method(WaterQuantity quantity, @Nullable String key, List<String> notes) {
        Optional<TestMethod> named = key == null ? Optional.empty() : TestMethods.find(quantity, key);
        if (key != null && named.isEmpty()) {
            note(
                    notes,
                    "Readings of " + quantity.words() + " by “" + key
                            + "” are counted as by the coarsest of its methods: no method is called so.");
        }
        return named.orElseGet(() -> coarsest(quantity));
    }

    private static TestMethod coarsest(WaterQuantity quantity) {
        double usual = Priors.of(quantity).usualLevel().value();
        return TestMethods.of(quantity).stream()
                .max(Comparator.comparingDouble(method -> method.standardError(usual)))
                .orElseThrow();
    }

    private static List<Inputs.Check> checks(List<Line> lines) {
        List<Inputs.Check> checks = new ArrayList<>();
        for (Line line : lines) {
            if (line.event() instanceof Event.MethodChecked check) {
                TestMethods.find(check.quantity(), check.method())
                        .ifPresent(method -> checks.add(new Inputs.Check(
                                method,
                                check.unit().toHeld(check.shown()),
                                new Known(
                                        check.unit().toHeld(check.standard()),
                                        check.unit().errorToHeld(check.standard(), check.standardError())))));
            }
        }
        return checks;
    }

    /** Animals that came or went, and levers of light, food and filters: what doses is known, and so are water changes. */
    private static List<Inputs.Upset> upsets(List<Line> lines, List<Solution> solutions, JournalTime time) {
        List<Inputs.Upset> upsets = new ArrayList<>();
        for (Line line : lines) {
            if (line.event() instanceof Event.AnimalMoved moved) {
                upsets.add(new Inputs.Upset(time.of(line.at()), moved.animal()));
            } else if (line.event() instanceof Event.LeverMoved moved
                    && solutions.stream().noneMatch(solution -> solution.lever().equals(moved.lever()))
                    && !moved.lever().equals(KnownRenewals.LEVER)) {
                upsets.add(new Inputs.Upset(time.of(line.at()), moved.lever()));
            }
        }
        return upsets;
    }

    /** Corals build faster in the light: the hours of the longest lamp over the display. */
    private static DayShape calcifying(Plan plan) {
        return plan.lights().stream()
                .filter(light -> light.over().equals(Names.DISPLAY))
                .max(Comparator.comparingDouble(light -> light.daily().in("s")))
                .map(JournalInputs::lit)
                .orElse(DayShape.EVEN);
    }

    private static DayShape lit(Light light) {
        double lasts = light.daily().in("s") / DAY;
        double from = light.starts() == null
                ? (MID_LIGHT - lasts / 2 + 1) % 1
                : light.starts().toSecondOfDay() / DAY;
        return DayShape.window(from, lasts, Calcification.LIGHT_RATIO_USUAL);
    }

    private static double magnesiumShare(@Nullable Inhabitants inhabitants) {
        boolean coralline = inhabitants == null || inhabitants.corallineArea() != null;
        double coral = coralline ? CORAL_SHARE : 1;
        return coral * Calcification.MAGNESIUM_IN_CORAL + (1 - coral) * Calcification.MAGNESIUM_IN_CORALLINE;
    }

    private static void note(List<String> notes, String note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }
}
