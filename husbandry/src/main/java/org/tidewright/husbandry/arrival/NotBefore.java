package org.tidewright.husbandry.arrival;

import java.time.LocalDate;

/**
 * A day before which something cannot be.
 *
 * @param reason why, in words
 */
public record NotBefore(LocalDate day, String reason) {}
