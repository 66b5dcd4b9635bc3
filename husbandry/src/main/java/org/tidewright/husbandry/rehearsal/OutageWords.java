package org.tidewright.husbandry.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Backup;
import org.tidewright.twin.rehearsal.FirstTime;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.tank.PowerSupplies;

/** Tells what temperature and oxygen did. */
final class OutageWords {
    private static final String ACT = "act";

    private OutageWords() {}

    /** What comes first, and what the other quantity does. */
    static Sentence lead(OutageOrder order, List<Crossing> crossings) {
        Optional<Crossing> first = crossings.stream()
                .filter(crossing -> crossing.limit().words().equals(ACT))
                .filter(crossing -> Double.isFinite(crossing.after().value()))
                .findFirst();
        Sentence weather = weather(order);
        if (first.isEmpty()) {
            return Sentence.of(
                    weather,
                    "temperature and oxygen stay within their limits for ",
                    Figure.exact(Measure.DURATION, order.hours() * 3600),
                    ".");
        }
        Sentence lead = Sentence.of(weather, opening(first.get()), reached(first.get(), crossings));
        return other(first.get(), crossings).map(lead::then).orElse(lead);
    }

    private static Sentence weather(OutageOrder order) {
        double[] outdoors = order.outdoors().temperature();
        Figure coldest = Figure.exact(
                Measure.TEMPERATURE, DoubleStream.of(outdoors).min().orElseThrow());
        Figure warmest = Figure.exact(
                Measure.TEMPERATURE, DoubleStream.of(outdoors).max().orElseThrow());
        return order.outdoors().isConstant()
                ? Sentence.of("With ", coldest, " outdoors, ")
                : Sentence.of("With ", coldest, " to ", warmest, " outdoors, ");
    }

    private static String opening(Crossing first) {
        if (first.trace().equals(OutageRehearsal.DISPLAY_OXYGEN)) {
            return "air is what runs short: oxygen falls to ";
        }
        return first.limit().forbiddenBelow()
                ? "the cold comes first: the display falls to "
                : "the heat comes first: the display rises to ";
    }

    /** {@code 3.4 mg/L, where you must act, after about 5 h (3–9) and to 2.0 mg/L, where animals come to harm, after …} */
    private static Sentence reached(Crossing act, List<Crossing> crossings) {
        List<Object> words = new ArrayList<>();
        words.add(value(act));
        words.add(", where you must act, after about ");
        words.add(act.after());
        crossings.stream()
                .filter(crossing -> crossing.trace().equals(act.trace())
                        && crossing.limit().forbiddenBelow() == act.limit().forbiddenBelow()
                        && !crossing.limit().words().equals(ACT))
                .findFirst()
                .ifPresent(harm -> {
                    if (Double.isFinite(harm.after().value())) {
                        words.add(", and to ");
                        words.add(value(harm));
                        words.add(", where animals come to harm, after ");
                        words.add(harm.after());
                    }
                });
        words.add(".");
        return Sentence.of(words.toArray());
    }

    private static Optional<Sentence> other(Crossing first, List<Crossing> crossings) {
        return crossings.stream()
                .filter(crossing -> !crossing.trace().equals(first.trace())
                        && crossing.limit().words().equals(ACT)
                        && Double.isFinite(crossing.after().value()))
                .findFirst()
                .map(crossing -> Sentence.of(
                        crossing.trace().equals(OutageRehearsal.DISPLAY_OXYGEN)
                                ? "Oxygen falls to "
                                : crossing.limit().forbiddenBelow() ? "The display cools to " : "The display warms to ",
                        value(crossing),
                        " after ",
                        crossing.after(),
                        "."));
    }

    private static Sentence.Part value(Crossing crossing) {
        Measure measure =
                crossing.trace().equals(OutageRehearsal.DISPLAY_OXYGEN) ? Measure.CONCENTRATION : Measure.TEMPERATURE;
        return Sentence.figure(
                Figure.exact(measure, crossing.limit().value()),
                crossing.limit().source());
    }

    /** A first time as a figure. */
    static Figure after(FirstTime time) {
        return Figure.between(Measure.DURATION, time.middle(), time.low(), time.high());
    }

    /**
     * When the battery is empty and what it bought.
     *
     * @param without limits of oxygen were there no battery
     */
    static List<Sentence> battery(FirstTime empty, List<Crossing> with, List<Crossing> without) {
        List<Sentence> remarks = new ArrayList<>();
        Figure lasts = after(empty);
        remarks.add(
                !empty.happens()
                        ? Sentence.of("The battery outlasts the outage.")
                        : Sentence.of("The battery is empty after about ", lasts, "."));
        for (Crossing plain : without) {
            if (!plain.limit().words().equals(ACT)
                    || Double.isInfinite(plain.after().value())) {
                continue;
            }
            Crossing backed = with.stream()
                    .filter(crossing -> crossing.trace().equals(plain.trace())
                            && crossing.limit().equals(plain.limit()))
                    .findFirst()
                    .orElseThrow();
            remarks.add(Sentence.of(
                    "Without it oxygen would fall to ",
                    value(plain),
                    " after ",
                    plain.after(),
                    "; with it, ",
                    Double.isInfinite(backed.after().value())
                            ? Sentence.of("not within the rehearsal.")
                            : Sentence.of("after ", backed.after(), ".")));
        }
        return remarks;
    }

    static Sentence generator(Backup.Generator generator, PowerSupplies supplies) {
        Figure start = Figure.exact(Measure.DURATION, generator.startedAfter().in("s"));
        Figure lasts = Figure.exact(Measure.DURATION, supplies.generatorRunTime());
        Figure load = Figure.exact(Measure.POWER, supplies.generatorLoad());
        return Sentence.of(
                "The generator is started after ",
                start,
                " and carries up to ",
                load,
                "; its fuel lasts about ",
                lasts,
                ".");
    }
}
