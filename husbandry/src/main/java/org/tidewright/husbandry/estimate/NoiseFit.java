package org.tidewright.husbandry.estimate;

import java.util.List;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.optimum.QuasiNewton;

/**
 * Learns from a journal how much its levels and uses wander: the sizes of noise under which its readings, and the sizes
 * themselves by their log-normal priors, are most likely together.
 *
 * <p>The slope of the likelihood is exact and comes with one way back (Koopman and Shephard 1992, Biometrika 79, 823-826), so
 * that a fit takes some ten runs of the filter whatever the number of sizes.
 */
final class NoiseFit {
    /** Gain in log likelihood that is not worth another run. */
    private static final double TOLERANCE = 0.01;

    private static final int MOST_RUNS = 30;
    private static final double STEP = 0.05;

    private final Timeline timeline;
    private final Evidence evidence;
    private final List<WaterModel.Noise> noises;

    /**
     * What was found.
     *
     * @param sizes of each noise of the model
     * @param errors of their natural logarithms, one standard error
     * @param runs of the filter it took
     * @param settled whether it came to rest within the runs it was allowed
     */
    record Found(double[] sizes, double[] errors, int runs, boolean settled) {}

    private NoiseFit(Timeline timeline, Evidence evidence) {
        this.timeline = timeline;
        this.evidence = evidence;
        noises = timeline.model().noises();
    }

    /** From some sizes on; the timeline is left with the noise that was found. */
    static double[] sizes(Timeline timeline, Evidence evidence, double[] from) {
        NoiseFit fit = new NoiseFit(timeline, evidence);
        double[] sizes = fit.sizes(fit.fit(from).place());
        timeline.shake(sizes);
        return sizes;
    }

    /** The same with its errors. */
    static Found found(Timeline timeline, Evidence evidence, double[] from) {
        NoiseFit fit = new NoiseFit(timeline, evidence);
        QuasiNewton.Least least = fit.fit(from);
        double[] errors = fit.errors(least);
        double[] sizes = fit.sizes(least.place());
        timeline.shake(sizes);
        return new Found(sizes, errors, least.evaluations() + errors.length, least.settled());
    }

    /** As many standard errors of its prior above what is usual. */
    static double[] usual(WaterModel model, double errorsAbove) {
        return model.noises().stream()
                .mapToDouble(noise -> noise.prior().usual()
                        * Math.exp(errorsAbove * noise.prior().spread()))
                .toArray();
    }

    private QuasiNewton.Least fit(double[] from) {
        double[] start = new double[from.length];
        double[] reach = new double[from.length];
        for (int i = 0; i < start.length; i++) {
            WaterModel.Noise noise = noises.get(i);
            start[i] = Math.log(from[i] / noise.prior().usual()) / noise.prior().spread();
            reach[i] = 0.5;
        }
        return QuasiNewton.minimise(this::unlikely, start, reach, TOLERANCE, MOST_RUNS);
    }

    /** Sizes from their distances to what is usual, in standard errors of the prior. */
    private double[] sizes(double[] place) {
        double[] sizes = new double[place.length];
        for (int i = 0; i < sizes.length; i++) {
            Priors.Walk prior = noises.get(i).prior();
            sizes[i] = prior.usual() * Math.exp(place[i] * prior.spread());
        }
        return sizes;
    }

    /** Minus the logarithm of the density of readings and sizes together. */
    private double unlikely(double[] place, double[] slopes) {
        double[] sizes = sizes(place);
        timeline.shake(sizes);
        Reckoning reckoning = Reckoning.of(timeline, evidence);
        double value = -reckoning.logLikelihood();
        for (int i = 0; i < place.length; i++) {
            value += place[i] * place[i] / 2;
            slopes[i] = place[i];
        }
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void arriving(int stop, Hindsight later) {
                for (int i = 0; i < slopes.length; i++) {
                    slopes[i] -= noises.get(i).prior().spread()
                            * timeline.stops().get(stop).stretch().slope(i, sizes[i], later);
                }
            }
        });
        return value;
    }

    /** From the curvature along each size alone, by a step along the slopes. */
    private double[] errors(QuasiNewton.Least least) {
        int size = least.place().length;
        double[] errors = new double[size];
        double[] slopes = new double[size];
        for (int i = 0; i < size; i++) {
            double[] beside = least.place().clone();
            beside[i] += STEP;
            unlikely(beside, slopes);
            double curvature = (slopes[i] - least.slopes()[i]) / STEP;
            errors[i] = noises.get(i).prior().spread() / Math.sqrt(Math.max(1, curvature));
        }
        return errors;
    }
}
