package org.tidewright.twin.law.hydraulic;

/** Refusals that name the value, its unit and the range allowed. NaN fails every one of them. */
final class Require {
    private Require() {}

    static double positive(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refusal(what, value, unit, "greater than 0 and finite");
        }
        return value;
    }

    static double notNegative(String what, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refusal(what, value, unit, "0 or more and finite");
        }
        return value;
    }

    static double finite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refusal(what, value, unit, "finite");
        }
        return value;
    }

    static double within(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw refusal(what, value, unit, "from " + least + " to " + most);
        }
        return value;
    }

    /** The flow of a head that is not above 0: none; but a head that is not a number must not pass as a dry one. */
    static double dry(double head) {
        if (Double.isNaN(head)) {
            throw refusal("head", head, "m", "a number");
        }
        return 0;
    }

    static IllegalArgumentException refusal(String what, double value, String unit, String allowed) {
        return new IllegalArgumentException(what + " is " + value + " " + unit + "; it must be " + allowed);
    }
}
