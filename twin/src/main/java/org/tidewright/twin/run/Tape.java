package org.tidewright.twin.run;

import java.util.Arrays;

/** Who wrote what into the slopes of one evaluation: the cause, the place in the state, the rate. Reused. */
final class Tape {
    private int[] causes = new int[256];
    private int[] places = new int[256];
    private double[] rates = new double[256];
    private int cause;
    private int length;

    void rewind() {
        length = 0;
    }

    /** Whose the notes are from now on. */
    void by(int newCause) {
        cause = newCause;
    }

    void note(int place, double rate) {
        if (length == rates.length) {
            causes = Arrays.copyOf(causes, 2 * length);
            places = Arrays.copyOf(places, 2 * length);
            rates = Arrays.copyOf(rates, 2 * length);
        }
        causes[length] = cause;
        places[length] = place;
        rates[length] = rate;
        length++;
    }

    /** Adds every note, times a weight, to the sum of its cause and place. */
    void addTo(double[][] sums, double weight) {
        for (int i = 0; i < length; i++) {
            sums[causes[i]][places[i]] += weight * rates[i];
        }
    }
}
