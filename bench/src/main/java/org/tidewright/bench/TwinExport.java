package org.tidewright.bench;

import static java.util.Objects.requireNonNull;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.MacroalgaeGrowth;
import org.tidewright.twin.mechanism.biota.Macroalgae;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;

/**
 * Writes the harbour room's twin as plain text for a program that has the same equations in another language: every number
 * that is this plan's, what happens when, where it starts, and the course of our own run. One line for each, its parts
 * parted by tabs; {@code bench/peers/twin/plan.c} reads it.
 */
public final class TwinExport {
    private static final double DAY = 86_400;
    private static final double HOUR = 3600;
    private static final int DAYS = 10;

    /** So close that the minutes after the mains are back, when all moves fast, are right between the steps too. */
    private static final Accuracy CLOSE = new Accuracy(1e-10, 1e-13, 1e-10, 1e-11, 7200, 1e-7);

    private static final String RESERVOIR = "reservoir";
    private static final String HELD = "held by the ";

    private final PrintWriter out;
    private final Scenario scenario;
    private final Plan plan;
    private final SystemTwin twin;
    private final Network network;
    private final State start;

    private TwinExport(Scenario scenario, PrintWriter out) {
        this.out = out;
        this.scenario = scenario;
        plan = scenario.plan();
        twin = SystemTwin.of(plan);
        network = twin.network();
        start = scenario.start(network, twin.start(network.usualParameters()));
    }

    /** Takes the name of a {@link Scenario} and writes to standard output. */
    public static void main(String[] arguments) throws IllegalAccessException {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        new TwinExport(Scenario.named(arguments[0]), out).write();
        out.flush();
    }

    private void write() throws IllegalAccessException {
        out.println("number\tdensity\t" + network.density());
        out.println("number\tspecificHeat\t" + network.specificHeat());
        for (Parameter parameter : network.parameters()) {
            out.println("parameter\t" + parameter.name() + "\t" + parameter.usual());
        }
        for (Setting setting : network.settings()) {
            out.println("setting\t" + setting.name() + "\t" + setting.initial());
        }
        stocks();
        View now = viewOf(start);
        MechanismFields fields = new MechanismFields(out, now);
        for (Mechanism mechanism : network.mechanisms()) {
            fields.write(mechanism);
        }
        for (Routine routine : network.routines()) {
            event(routine, now);
        }
        for (Scenario.Turn turn : scenario.turns()) {
            out.println("event\t" + turn.setting() + "\t" + turn.time() + "\t" + Double.POSITIVE_INFINITY);
            out.println("set\t" + turn.setting() + "\t" + turn.value());
        }
        course();
    }

    private View viewOf(State state) {
        return runOf(state).now();
    }

    private Run runOf(State state) {
        return new Run(network, network.usualParameters(), state, Accuracy.OF_A_YEAR);
    }

    private Setting setting(String name) {
        return network.settings().stream()
                .filter(setting -> setting.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private void stocks() {
        for (Body body : network.bodies()) {
            if (!body.isOutside()) {
                out.println("body\t" + body + "\t" + body.solidHeatCapacity());
                if (body.shape() instanceof Shape.Upright shape) {
                    out.println(
                            "shape\t" + body + "\t" + shape.area() + "\t" + shape.solids() + "\t" + shape.solidsTop());
                }
                for (Stock stock : body.held()) {
                    out.println("stock\t" + stock + "\t" + body + "\t" + start.get(body, stock) + "\t"
                            + absolute(body, stock));
                }
            }
        }
    }

    /** The absolute tolerance of {@link Accuracy#OF_A_YEAR}; an accuracy so many times closer divides it. */
    private double absolute(Body body, Stock stock) {
        Accuracy year = Accuracy.OF_A_YEAR;
        double filled = start.get(body, Stock.WATER);
        double water = Math.max(filled, 1e-3);
        return switch (stock) {
            case WATER -> body.shape() == Shape.none() ? Math.min(year.volume(), 1e-7) : year.volume();
            case SALT -> 1e-3;
            case HEAT ->
                year.temperature() * (network.density() * network.specificHeat() * water + body.solidHeatCapacity());
            case OXYGEN -> year.oxygen() * water;
            default -> stock.grain() * (filled > 0 ? filled : 0.1);
        };
    }

    /**
     * Meals, harvests, refills, new media and washed filters answer to the state, doses to the mains; all others are told
     * by the amounts they bring and the shares they take.
     */
    private void event(Routine routine, View now) {
        var times = RoutineTimes.of(routine, now);
        for (RoutineTimes.Time time : times) {
            out.println("event\t" + routine.name() + "\t" + time.first() + "\t" + time.period());
            deed(routine, now);
        }
    }

    private void deed(Routine routine, View now) {
        if (routine.name().startsWith("harvest in the ")) {
            String bed = routine.name().substring("harvest in the ".length());
            out.println("leave\talgae in the " + bed + "\t" + leftStanding());
        } else if (routine.name().endsWith(": medium changed")) {
            out.println("empty\tmedium of the " + routine.name().replace(": medium changed", ""));
        } else if (isFilter(routine)) {
            out.println("empty\t" + HELD + routine.name().replace(" changed", ""));
        } else if (routine.name().equals("reservoir refilled")) {
            State dry = start.copy();
            Body reservoir = network.body(RESERVOIR);
            reservoir.held().forEach(stock -> dry.set(reservoir, stock, 0));
            View empty = viewOf(dry);
            DeedRecord filling = new DeedRecord(empty);
            routine.deed().happen(empty, filling);
            out.println("fill\t" + RESERVOIR + "\t" + start.get(reservoir, Stock.WATER));
            filling.write(out);
        } else {
            DeedRecord record = new DeedRecord(now);
            routine.deed().happen(now, record);
            record.write(out);
            View unlit = runOf(start).set(setting("power"), 0).now();
            DeedRecord dark = new DeedRecord(unlit);
            routine.deed().happen(unlit, dark);
            if (dark.isEmpty() && !record.isEmpty()) {
                out.println("powered");
            }
        }
    }

    private boolean isFilter(Routine routine) {
        return network.bodies().stream().anyMatch(body -> (body.name() + " changed").equals(HELD + routine.name()));
    }

    private double leftStanding() {
        Algae algae = requireNonNull(requireNonNull(plan.refugium()).algae());
        return Macroalgae.nitrogenOf(requireNonNull(algae.leftStanding()).in("kg") * MacroalgaeGrowth.DRY.usual());
    }

    /** Each hour of ten days, at a minute when nothing happens; the stocks in the order of their lines above. */
    private void course() {
        State state = start.copy();
        Run run = new Run(network, network.usualParameters(), state, CLOSE);
        scenario.turns().forEach(turn -> run.setAt(turn.time(), setting(turn.setting()), turn.value()));
        double[] times = new double[24 * DAYS];
        Arrays.setAll(times, hour -> HOUR * (hour + 0.4));
        run.until(DAYS * DAY, times, (sample, now) -> {
            out.print("sample\t" + now.time() + "\t"
                    + now.solution(twin.display()).ph() + "\t" + twin.roomAir().carbonDioxide(now));
            TwinTimes.stocks(network, now, value -> out.print("\t" + value));
            out.println();
        });
    }
}
