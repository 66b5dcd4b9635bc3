package org.tidewright.twin.ensemble;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.tidewright.numerics.sample.StratifiedDraws;
import org.tidewright.twin.contract.Parameter;

/**
 * Draws of a list of parameters, and what became of each. The same seed gives the same draws on any number of cores; a
 * parameter's draws follow from its name, so that one more parameter does not shift the others.
 */
public final class Ensemble {
    private final List<Parameter> parameters;
    private final StratifiedDraws draws;

    public Ensemble(List<Parameter> parameters, int count, long seed) {
        this.parameters = List.copyOf(parameters);
        this.draws = new StratifiedDraws(seed, count);
    }

    /** What becomes of every draw, in the order of the draws. Uses all cores. */
    public <T> List<T> map(Function<double[], T> run) {
        return IntStream.range(0, draws.count())
                .parallel()
                .mapToObj(draw -> run.apply(values(draw)))
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
