package org.tidewright.numerics.filter;

/**
 * A measurement that was learnt from.
 *
 * @param measurement itself
 * @param innovation how far it stood from what was to be expected
 * @param gain by how much each state moved for each unit of that
 */
public record Lesson(Measurement measurement, Innovation innovation, double[] gain) {}
