package org.tidewright.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.DoubleConsumer;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;
import org.tidewright.twin.system.SystemTwin;

/**
 * Times thirty days of the harbour room by each method at each tolerance, after warm-up, and writes a line for each,
 * counted up to a year: method, relative tolerance, evaluations, steps, milliseconds of the processor's time. The course of
 * the same days is written beside it, from which the error is found.
 */
public final class TwinTimes {
    private static final double DAY = 86_400;
    private static final int COURSE = 30;
    private static final double YEARS = COURSE / 365.0;
    private static final int SAMPLES_A_DAY = 4;

    /** Nanoseconds after which the compiler has done its best. */
    private static final double SHORTEST_WARM_UP = 5e9;

    private final SystemTwin twin = SystemTwin.of(ExamplePlan.named("harbour-room"));
    private final Network network = twin.network();
    private final double[] parameters = network.usualParameters();
    private final State start = twin.start(parameters);
    private final Path into;
    private final int rounds;

    private TwinTimes(Path into, int rounds) {
        this.into = into;
        this.rounds = rounds;
    }

    /** Takes the folder for the courses, how many rounds to take the median of, and what to time: METHOD:TOLERANCE. */
    public static void main(String[] arguments) throws IOException {
        TwinTimes times = new TwinTimes(Path.of(arguments[0]), Integer.parseInt(arguments[1]));
        for (int i = 2; i < arguments.length; i++) {
            String[] parts = arguments[i].split(":", 2);
            times.take(Run.Method.valueOf(parts[0]), parts[1]);
        }
    }

    private void take(Run.Method method, String tolerance) throws IOException {
        course(method, tolerance);
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long begun = clock.getCurrentThreadCpuTime();
        Run run;
        do {
            run = run(method, tolerance);
            run.until(COURSE * DAY);
        } while (rounds > 1 && clock.getCurrentThreadCpuTime() - begun < SHORTEST_WARM_UP);
        double[] milliseconds = new double[rounds];
        for (int i = 0; i < rounds; i++) {
            Run timed = run(method, tolerance);
            long from = clock.getCurrentThreadCpuTime();
            timed.until(COURSE * DAY);
            milliseconds[i] = (clock.getCurrentThreadCpuTime() - from) / 1e6;
        }
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s\t%s\t%.0f\t%.0f\t%.3f%n",
                method,
                tolerance,
                run.effort().evaluations() / YEARS,
                run.effort().steps() / YEARS,
                milliseconds[rounds / 2] / YEARS);
    }

    private Run run(Run.Method method, String tolerance) {
        double times = Accuracy.OF_A_YEAR.relative() / Double.parseDouble(tolerance);
        return new Run(network, parameters, start.copy(), Accuracy.OF_A_YEAR.closer(times), method);
    }

    private void course(Run.Method method, String tolerance) throws IOException {
        double[] times = new double[COURSE * SAMPLES_A_DAY];
        Arrays.setAll(times, i -> DAY / SAMPLES_A_DAY * (i + 0.3));
        Path file = into.resolve(method + "_" + tolerance + ".course");
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
            for (Body body : network.bodies()) {
                if (!body.isOutside()) {
                    body.held().forEach(stock -> out.print("\t" + stock + " " + body));
                }
            }
            out.println();
            run(method, tolerance).until(COURSE * DAY, times, (sample, now) -> {
                out.print(now.time());
                stocks(network, now, value -> out.print("\t" + value));
                out.println();
            });
        }
    }

    /** Every stock of every body but the world around, in the order of the network. */
    static void stocks(Network network, View now, DoubleConsumer taker) {
        for (Body body : network.bodies()) {
            if (!body.isOutside()) {
                for (Stock stock : body.held()) {
                    taker.accept(now.stock(body, stock));
                }
            }
        }
    }
}
