package org.tidewright.husbandry.dosing;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.numerics.sample.Draws;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.system.SystemTwin;

/**
 * Three keepers of the same tanks: one leaves the dose as it is, one corrects to the target at every test, one follows the
 * advice. The tanks live on the twin, which knows nothing of the advice's own model: corals grow and shrink, the light is
 * changed, kits err and now and then slip.
 */
final class DosePolicyStudy {
    /** How a keeper doses. */
    enum Policy {
        /** As the plan says, whatever the tests show. */
        FIXED("a fixed dose"),
        /** At every test the missing alkalinity is given at once, and the dose moved by what is missing each day. */
        CHASE("corrected to the target at every test"),
        /** What this program says. */
        ADVICE("as advised");

        final String words;

        Policy(String words) {
            this.words = words;
        }
    }

    /**
     * What became of a tank.
     *
     * @param inRange share of the time in range, from the first day on which anybody may act
     * @param settled the same once each had a month to bring the level back
     * @param jumps days on which the level moved by more than half a degree
     * @param moves of the dose
     * @param portions by hand
     */
    record Outcome(double inRange, double settled, int jumps, int moves, int portions) {}

    private static final double DAY = 86_400;
    private static final int DAYS = 150;

    /** Days for bringing back a level that strayed before anybody acted. */
    private static final int BROUGHT_BACK = 30;

    /** A fortnight for all alike, before anybody may act: nobody knows anything on the first day. */
    private static final int BEGIN = 14;

    /** Alkalinity moves by the hour: the range is looked at so many times a day, not only when somebody tests. */
    private static final int LOOKS = 8;

    private static final OffsetDateTime FIRST = OffsetDateTime.of(2026, 1, 5, 0, 0, 0, 0, ZoneOffset.UTC);
    private static final double DEGREE = WaterQuantity.ALKALINITY.units().get(0).toHeld(1);
    private static final String[] METHODS = {
        "syringe_titration", "photometer", "endpoint_titration", "drop_titration_double"
    };

    private final Plan plan = TestPlans.example("harbour-room");
    private final SystemTwin twin = SystemTwin.of(plan);
    private final TargetRange range =
            TargetRange.of(plan, WaterQuantity.ALKALINITY).orElseThrow();
    private final double aim = range.aim(plan);
    private final double strength = 80 / Salt.SODIUM_BICARBONATE.molarMass();
    private final double volume = SystemWater.volume(plan);

    private int looks;
    private int within;
    private int laterLooks;
    private int laterWithin;

    private DosePolicyStudy() {}

    /** All policies on so many tanks. */
    static Map<Policy, List<Outcome>> of(long seed, int tanks) {
        Map<Policy, List<Outcome>> outcomes = new EnumMap<>(Policy.class);
        for (Policy policy : Policy.values()) {
            outcomes.put(
                    policy,
                    IntStream.range(0, tanks)
                            .parallel()
                            .mapToObj(draw -> new DosePolicyStudy().live(new Draws(seed, draw), policy))
                            .toList());
        }
        return outcomes;
    }

    private Outcome live(Draws draws, Policy policy) {
        double[] parameters = twin.network().parameters().stream()
                .mapToDouble(parameter -> parameter.at(draws.normal(parameter.name())))
                .toArray();
        Run run = new Run(twin.network(), parameters, twin.start(parameters), Accuracy.OF_A_YEAR);
        Setting bicarbonate = twin.levers().get("bicarbonate dose").setting();
        Setting calcium = twin.levers().get("calcium dose").setting();
        Setting corals = twin.levers().get("corals").setting();
        // Corals grow by up to a half, or shrink by a fifth, and a third of the keepers change the light on some day.
        double growth = -0.2 + 0.7 * draws.uniform("growth");
        double lightDay = BEGIN + (DAYS - BEGIN) * draws.uniform("light day");
        double light = draws.uniform("light") < 1 / 3.0 ? 0.75 + 0.5 * draws.uniform("light by") : 1;
        RandomGenerator dice = draws.stream("tests");
        TestMethod method = TestMethods.find(WaterQuantity.ALKALINITY, METHODS[(int) (4 * draws.uniform("method"))])
                .orElseThrow();
        double bias = draws.normal("bias") * method.biasError(aim) / 2;
        double cadence = 3 + 4 * draws.uniform("cadence");
        List<Line> lines = new ArrayList<>();
        double dose = bicarbonate.initial();
        double nextTest = 0.33;
        int jumps = 0;
        double before = aim;
        int moves = 0;
        int portions = 0;
        double part = 0;
        int parts = 0;
        for (int day = 0; day < DAYS; day++) {
            run.set(corals, 1 + growth * day / DAYS);
            if (light != 1 && day == (int) lightDay) {
                run.set(twin.levers().get("light bar strength").setting(), light);
            }
            if (day >= nextTest) {
                until(run, (day + 0.33) * DAY);
                nextTest = day + Math.max(1, Math.round(cadence * (0.6 + 0.8 * dice.nextDouble())));
                double truth = run.now().concentration(twin.display(), Stock.ALKALINITY);
                double slip = dice.nextDouble() < 0.02 ? 1.2 * DEGREE : 0;
                double read = truth + bias + slip + dice.nextGaussian() * method.repeatability(truth);
                double written = Math.rint(read / DEGREE * 20) / 20;
                OffsetDateTime at = FIRST.plusMinutes((long) ((day + 0.33) * 1440));
                lines.add(line(
                        at,
                        new Event.Reading(
                                WaterQuantity.ALKALINITY,
                                written,
                                WaterQuantity.ALKALINITY.units().get(0),
                                method.key())));
                Decision decision =
                        day < BEGIN ? Decision.LEAVE : decide(policy, lines, at.toInstant(), dose, written, cadence);
                if (decision.dose() >= 0 && Math.abs(decision.dose() - dose) > 0.5e-6 / DAY) {
                    lines.add(line(
                            at.plusMinutes(5),
                            new Event.LeverMoved("bicarbonate dose", "m^3/s", dose, decision.dose())));
                    dose = decision.dose();
                    run.set(bicarbonate, dose);
                    run.set(calcium, dose);
                    moves++;
                }
                part = decision.lift() / decision.days();
                parts = decision.lift() > 0 ? decision.days() : 0;
            }
            if (parts > 0) {
                OffsetDateTime at =
                        FIRST.plusMinutes((long) ((day + 0.33) * 1440)).plusMinutes(6);
                until(run, (day + 0.34) * DAY);
                give(run, part);
                double given = part * volume / strength;
                lines.add(line(at, new Event.Dose("bicarbonate", Salt.SODIUM_BICARBONATE, 80 * given, given)));
                parts--;
                portions++;
            }
            until(run, (day + 1) * DAY);
            double level = run.now().concentration(twin.display(), Stock.ALKALINITY);
            if (day >= BEGIN) {
                jumps += Math.abs(level - before) > 0.5 * DEGREE ? 1 : 0;
            }
            before = level;
        }
        return new Outcome(within / (double) looks, laterWithin / (double) laterLooks, jumps, moves, portions);
    }

    /** Lives on, and looks at the range on the way. */
    private void until(Run run, double time) {
        double every = DAY / LOOKS;
        while (run.time() < time) {
            double next = every * (Math.floor(run.time() / every + 1e-6) + 1);
            run.until(Math.min(time, next));
            if (next <= time && next > BEGIN * DAY) {
                int holds = range.holds(run.now().concentration(twin.display(), Stock.ALKALINITY)) ? 1 : 0;
                looks++;
                within += holds;
                if (next > (BEGIN + BROUGHT_BACK) * DAY) {
                    laterLooks++;
                    laterWithin += holds;
                }
            }
        }
    }

    /** What a keeper does after a test: a dose to set, and a lift in daily parts, until the next test. */
    private record Decision(double dose, double lift, int days) {
        static final Decision LEAVE = new Decision(-1, 0, 1);
    }

    private Decision decide(Policy policy, List<Line> lines, Instant now, double dose, double written, double cadence) {
        return switch (policy) {
            case FIXED -> Decision.LEAVE;
            case CHASE -> {
                double missing = aim - written * DEGREE;
                double more = missing / (cadence * DAY) * volume / strength;
                yield new Decision(Math.max(0, dose + more), Math.max(0, missing), 1);
            }
            case ADVICE -> advised(lines, now);
        };
    }

    private Decision advised(List<Line> lines, Instant now) {
        DoseAdvice advice = WaterStudy.of(plan, lines, now, ZoneId.of("UTC"))
                .of(WaterQuantity.ALKALINITY)
                .orElseThrow()
                .decision();
        double perAmount = strength / volume;
        if (advice instanceof DoseAdvice.Move move) {
            return new Decision(move.dose() / perAmount / DAY, 0, 1);
        } else if (advice instanceof DoseAdvice.Correct correct) {
            return new Decision(correct.dose() / perAmount / DAY, Math.max(0, correct.lift()), correct.days());
        }
        return Decision.LEAVE;
    }

    /** Alkalinity by hand, as bicarbonate: over some hours, so that no pulse is a shock. */
    private void give(Run run, double lift) {
        Setting bicarbonate = twin.levers().get("bicarbonate dose").setting();
        double now = run.time();
        double usual = run.now().value(bicarbonate);
        double hours = 6 * 3600.0;
        double extra = lift * volume / strength / hours;
        run.set(bicarbonate, usual + extra);
        until(run, now + hours);
        run.set(bicarbonate, usual);
    }

    private static Line line(OffsetDateTime at, Event event) {
        return new Line(UUID.randomUUID(), 1, at, event, "", false, at.toInstant());
    }

    /** Prints the table: seed and number of tanks as arguments. */
    public static void main(String[] arguments) {
        long seed = arguments.length > 0 ? Long.parseLong(arguments[0]) : 1;
        int tanks = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 40;
        System.out.println(
                "| dosing | time in range | after a month | days with a jump | moves of the dose | portions by hand |");
        System.out.println("|---|---:|---:|---:|---:|---:|");
        of(seed, tanks)
                .forEach((policy, outcomes) -> System.out.printf(
                        "| %s | %.0f %% | %.0f %% | %.1f | %.1f | %.1f |%n",
                        policy.words,
                        100 * mean(outcomes, Outcome::inRange),
                        100 * mean(outcomes, Outcome::settled),
                        mean(outcomes, Outcome::jumps),
                        mean(outcomes, Outcome::moves),
                        mean(outcomes, Outcome::portions)));
    }

    static double mean(List<Outcome> outcomes, ToDoubleFunction<Outcome> of) {
        return outcomes.stream().mapToDouble(of).average().orElse(Double.NaN);
    }
}
