package org.tidewright.husbandry.estimate;

import java.util.Arrays;
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
    private static final double TOLERANCE = 0.02;

    /** Sizes may well differ from what is usual by half a standard error. */
    private static final double REACH = 0.5;

    private static final int MOST_RUNS = 30;
    private static final double STEP = 0.05;

    private final Timeline timeline;
    private final Evidence evidence;
    private final List<WaterStates.Noise> noises;

    private NoiseFit(Timeline timeline, Evidence evidence) {
        this.timeline = timeline;
        this.evidence = evidence;
        noises = timeline.model().noises();
    }

    /** From some sizes on; the timeline is left with the noise that was found. */
    static double[] sizes(Timeline timeline, Evidence evidence, double[] from) {
        NoiseFit fit = new NoiseFit(timeline, evidence);
        double[] reach = new double[from.length];
        Arrays.fill(reach, REACH);
        QuasiNewton.Least least = QuasiNewton.minimise(fit::unlikely, fit.place(from), reach, TOLERANCE, MOST_RUNS);
        double[] sizes = fit.sizes(least.place());
        timeline.shake(sizes);
        return sizes;
    }

    /**
     * Standard errors of the natural logarithms of sizes that were found, from how the slope along each changes with it.
     */
    static double[] errors(Timeline timeline, Evidence evidence, double[] found) {
        NoiseFit fit = new NoiseFit(timeline, evidence);
        double[] place = fit.place(found);
        double[] here = new double[place.length];
        fit.unlikely(place, here);
        double[] errors = new double[place.length];
        double[] there = new double[place.length];
        for (int i = 0; i < errors.length; i++) {
            double[] beside = place.clone();
            beside[i] += STEP;
            fit.unlikely(beside, there);
            double curvature = (there[i] - here[i]) / STEP;
            double known = Math.max(fit.weight(i, found[i]), curvature);
            errors[i] = fit.noises.get(i).prior().below() / Math.sqrt(known);
        }
        return errors;
    }

    /** Natural logarithms of sizes over what is usual, in standard errors of the prior towards less. */
    private double[] place(double[] sizes) {
        double[] place = new double[sizes.length];
        for (int i = 0; i < place.length; i++) {
            Priors.Walk prior = noises.get(i).prior();
            place[i] = Math.log(sizes[i] / prior.usual()) / prior.below();
        }
        return place;
    }

    private double[] sizes(double[] place) {
        double[] sizes = new double[place.length];
        for (int i = 0; i < sizes.length; i++) {
            Priors.Walk prior = noises.get(i).prior();
            sizes[i] = prior.usual() * Math.exp(place[i] * prior.below());
        }
        return sizes;
    }

    /** Minus the logarithm of the density of readings and sizes together. */
    private double unlikely(double[] place, double[] slopes) {
        double[] sizes = sizes(place);
        timeline.shake(sizes);
        Reckoning reckoning = Reckoning.passing(timeline, evidence);
        double value = -reckoning.logLikelihood();
        for (int i = 0; i < place.length; i++) {
            double weight = weight(i, sizes[i]);
            value += weight * place[i] * place[i] / 2;
            slopes[i] = weight * place[i];
        }
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void arriving(int stop, Hindsight later) {
                for (int i = 0; i < slopes.length; i++) {
                    slopes[i] -= noises.get(i).prior().below()
                            * timeline.stops().get(stop).stretch().slope(i, sizes[i], later);
                }
            }
        });
        return value;
    }

    /** Curvature of the prior. */
    private double weight(int noise, double size) {
        Priors.Walk prior = noises.get(noise).prior();
        return Math.pow(prior.below() / prior.spread(size), 2);
    }
}
