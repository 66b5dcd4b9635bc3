package org.tidewright.husbandry.advice;

/** How sure a number is. */
public sealed interface Doubt {
    /** Exact, or known far better than it is told. */
    record None() implements Doubt {}

    /** One standard error, in the unit of the number; told as ±. */
    record StandardError(double size) implements Doubt {}

    /** From the 5th to the 95th of 100 draws, for doubts that are not alike on both sides; told in brackets. */
    record Range(double low, double high) implements Doubt {}
}
