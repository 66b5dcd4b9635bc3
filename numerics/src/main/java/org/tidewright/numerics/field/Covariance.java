package org.tidewright.numerics.field;

/** How far what is found at one place tells of another: the covariance of the two values before anything is known. */
@FunctionalInterface
public interface Covariance {
    double of(double[] here, double[] there);

    /** The same unknown amount everywhere. */
    static Covariance offset(double deviation) {
        return (here, there) -> deviation * deviation;
    }

    /** An unknown slope along one axis, nothing at its middle. */
    static Covariance slope(double deviation, int axis, double middle) {
        return (here, there) -> deviation * deviation * (here[axis] - middle) * (there[axis] - middle);
    }

    /**
     * A field whose values forget each other within a length, smooth enough to have a slope everywhere: Matérn's of order 3/2,
     *
     * <pre>s^2 (1 + a) e^(-a), a = sqrt(3) distance / length</pre>
     *
     * (Rasmussen and Williams 2006, Gaussian Processes for Machine Learning, eq. 4.17).
     */
    static Covariance rough(double deviation, double length) {
        return (here, there) -> {
            double square = 0;
            for (int i = 0; i < here.length; i++) {
                square += (here[i] - there[i]) * (here[i] - there[i]);
            }
            double apart = Math.sqrt(3 * square) / length;
            return deviation * deviation * (1 + apart) * Math.exp(-apart);
        };
    }

    /** Of the sum of two fields that know nothing of each other. */
    default Covariance plus(Covariance other) {
        return (here, there) -> of(here, there) + other.of(here, there);
    }
}
