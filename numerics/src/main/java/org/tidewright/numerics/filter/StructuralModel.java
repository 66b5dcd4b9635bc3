package org.tidewright.numerics.filter;

import java.util.List;

/**
 * States that wander and drive one another: levels and their slopes, regressors, constants. In continuous time,
 *
 * <pre>dx = (G x + b) dt + Σ s d dW,   one independent white noise W of size s for each direction d</pre>
 *
 * <p>where what drives others is not driven itself, and any state may fall back by itself at a rate on G's diagonal. One state
 * may be driven and drive, as a reaction does whose speed follows what it uses up. So a {@link Stretch} of any length has a
 * closed form.
 *
 * <p>A state that falls back within a time T and is shaken along √(2/T) comes to rest at a variance of s² (Ornstein and
 * Uhlenbeck); one that does not is a walk of variance s² t.
 *
 * <p>Harvey 1989, Forecasting, Structural Time Series Models and the Kalman Filter, sections 9.1 and 9.2.
 */
public final class StructuralModel {
    private static final int NONE = -1;

    /** Where two rates lie as close as this over a time, their closed form would lose more than two digits. */
    private static final double CLOSE = 0.01;

    private final double[][] drive;
    private final List<double[]> directions;
    private final int reacting;

    /**
     * A model.
     *
     * @param drive G: by how much each state (row) moves in a unit of time for each unit of another (column)
     * @param directions d of each noise
     */
    public StructuralModel(double[][] drive, List<double[]> directions) {
        this.drive = drive;
        this.directions = List.copyOf(directions);
        int both = NONE;
        for (int i = 0; i < drive.length; i++) {
            if (drive[i][i] > 0) {
                throw new IllegalArgumentException("state " + i + " drives itself away; it may only fall back");
            }
            boolean driven = isDriven(i);
            if (driven && (drives(i) || drive[i][i] != 0)) {
                if (both != NONE) {
                    throw new IllegalArgumentException(
                            "states " + both + " and " + i + " are driven and drive or fall back; only one may");
                }
                both = i;
            }
        }
        reacting = both;
    }

    private boolean isDriven(int state) {
        for (int j = 0; j < drive.length; j++) {
            if (j != state && drive[state][j] != 0) {
                return true;
            }
        }
        return false;
    }

    private boolean drives(int state) {
        for (int i = 0; i < drive.length; i++) {
            if (i != state && drive[i][state] != 0) {
                return true;
            }
        }
        return false;
    }

    /** How many states it has. */
    public int size() {
        return drive.length;
    }

    /** What a time of some length does. */
    public Stretch stretch(double time) {
        return new Stretch(this, time);
    }

    List<double[]> directions() {
        return directions;
    }

    /** The greatest rate at which anything falls back. */
    double fastest() {
        double fastest = 0;
        for (int i = 0; i < drive.length; i++) {
            fastest = Math.max(fastest, -drive[i][i]);
        }
        return fastest;
    }

    /** What an impulse along a direction has become after a time: exp(G t) d. */
    double[] after(double[] direction, double time) {
        double[] state = new double[direction.length];
        for (int j = 0; j < direction.length; j++) {
            if (direction[j] != 0) {
                spread(direction[j], j, time, state);
            }
        }
        return state;
    }

    /**
     * One column of exp(G t). A state falls back as exp(-a t); what it drives rises by (1 - exp(-a t))/a; the reacting one by
     * (exp(-a t) - exp(-k t))/(k - a); and what that one drives in turn by the integral of this.
     */
    private void spread(double amount, int from, double time, double[] onto) {
        double rate = -drive[from][from];
        onto[from] += amount * Math.exp(-rate * time);
        boolean through = reacting != NONE && from != reacting && drive[reacting][from] != 0;
        double driven = amount * fallen(rate, time);
        for (int i = 0; i < onto.length; i++) {
            if (i != from && i != reacting && drive[i][from] != 0) {
                onto[i] += driven * drive[i][from];
            }
        }
        if (from == reacting || !through) {
            return;
        }
        double back = -drive[reacting][reacting];
        double reached = amount * drive[reacting][from];
        onto[reacting] += reached * Math.exp(-rate * time) * fallen(back - rate, time);
        double passedOn = reached * twiceFallen(rate, back, time);
        for (int i = 0; i < onto.length; i++) {
            if (i != reacting && drive[i][reacting] != 0) {
                onto[i] += passedOn * drive[i][reacting];
            }
        }
    }

    /** ∫ exp(-a t) dt from 0 to a time. */
    private static double fallen(double rate, double time) {
        double x = rate * time;
        return Math.abs(x) < 1e-8 ? time * (1 - x / 2) : -Math.expm1(-x) / rate;
    }

    /** ∫ (exp(-a t) - exp(-k t))/(k - a) dt from 0 to a time. */
    private static double twiceFallen(double rate, double other, double time) {
        double apart = (other - rate) * time;
        if (Math.abs(apart) > CLOSE) {
            return (fallen(rate, time) - fallen(other, time)) / (other - rate);
        }
        return Quadrature.integral(at -> Math.exp(-rate * at) * fallen(other - rate, at), time, Math.max(rate, other));
    }
}
