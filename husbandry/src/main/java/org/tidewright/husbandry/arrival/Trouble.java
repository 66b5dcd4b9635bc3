package org.tidewright.husbandry.arrival;

/**
 * Two wishes that trouble each other, whoever begins: the bolder one comes later, if it is bolder by two or more.
 *
 * @param one id of a wish
 * @param other id of another
 */
public record Trouble(String one, String other) {
    /** By so much bolder and the order is a must; by less it is a preference. Common practice gives no number: ours. */
    static final int BOLDER = 2;
}
