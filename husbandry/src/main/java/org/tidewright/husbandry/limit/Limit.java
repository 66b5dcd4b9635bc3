package org.tidewright.husbandry.limit;

/**
 * A bound on a quantity that must hold.
 *
 * @param words what it marks, {@code "act"} or {@code "harm"}
 * @param value in the coherent unit of the quantity it bounds
 * @param forbiddenBelow whether the forbidden side lies below the value
 * @param source key of the source it stands on
 */
public record Limit(String words, double value, boolean forbiddenBelow, String source) {}
