package org.tidewright.husbandry.advice;

/**
 * A number to be told, with what it measures and how sure it is.
 *
 * @param value in the coherent unit of its measure; infinite for "never"
 */
public record Figure(Measure measure, double value, Doubt doubt) {
    private static final Doubt NONE = new Doubt.None();

    public static Figure exact(Measure measure, double value) {
        return new Figure(measure, value, NONE);
    }

    /** With one standard error. */
    public static Figure about(Measure measure, double value, double standardError) {
        return new Figure(measure, value, new Doubt.StandardError(standardError));
    }

    /** With the 5th and 95th of 100 draws. */
    public static Figure between(Measure measure, double value, double low, double high) {
        return new Figure(measure, value, new Doubt.Range(low, high));
    }
}
