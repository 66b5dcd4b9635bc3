package org.tidewright.husbandry.rehearsal;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.limit.Limit;

/**
 * When a quantity first meets a limit.
 *
 * @param trace id of the trace
 * @param limit the limit it meets
 * @param after time after the event, with the 5th and 95th of 100 draws; infinite where the middle draw never meets it
 * @param share of the draws that meet it at all
 */
public record Crossing(String trace, Limit limit, Figure after, double share) {}
