package org.tidewright.twin.ensemble;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.tidewright.numerics.sample.StratifiedDraws;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Parameter;

/**
 * Draws of a list of parameters, and what became of each. The same seed gives the same draws on any number of cores; a
 * parameter's draws follow from its name, so that one more parameter does not shift the others.
 */
public final class Ensemble {
    private final List<Parameter> parameters;
    private final StratifiedDraws draws;

    /** Watches an ensemble at work, from several threads. */
    public interface Progress {
        /** Nobody watches. */
        Progress UNWATCHED = new Progress() {
            @Override
            public void done(int draws, int ofAll) {}

            @Override
            public boolean isCancelled() {
                return false;
            }
        };

        /** Called after each draw. */
        void done(int draws, int ofAll);

        /** Asked before each draw; once true, no further draw begins. */
        boolean isCancelled();
    }

    public Ensemble(List<Parameter> parameters, int count, long seed) {
        this.parameters = List.copyOf(parameters);
        this.draws = new StratifiedDraws(seed, count);
    }

    /** What becomes of every draw, in the order of the draws. Uses all cores. */
    public <T> List<T> map(Function<double[], T> run) {
        return map(run, Progress.UNWATCHED);
    }

    /**
     * The same, watched.
     *
     * @throws CancellationException once it is cancelled
     */
    public <T> List<T> map(@Unit("*") Function<double[], T> run, Progress progress) {
        return each(draws.count(), draw -> run.apply(values(draw)), progress);
    }

    /**
     * What becomes of draws that were made before, by their number, in their order. Uses all cores.
     *
     * @throws CancellationException once it is cancelled
     */
    public static <T> List<T> each(int count, IntFunction<T> run, Progress progress) {
        AtomicInteger done = new AtomicInteger();
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(draw -> {
                    if (progress.isCancelled()) {
                        throw new CancellationException("cancelled after " + done.get() + " of " + count + " draws");
                    }
                    T result = run.apply(draw);
                    progress.done(done.incrementAndGet(), count);
                    return result;
                })
                .toList();
    }

    /** The parameters' values in one draw. */
    double[] values(int draw) {
        double[] values = new double[parameters.size()];
        for (Parameter parameter : parameters) {
            values[parameter.index()] = parameter.at(draws.normal(parameter.name(), draw));
        }
        return values;
    }
}
