package org.tidewright.husbandry.rehearsal;

import java.util.List;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.twin.rehearsal.Band;

/**
 * A quantity along the hours of a rehearsal, with the limits it may meet.
 *
 * @param id stable name in snake case, without unit
 * @param time seconds after the event, rising
 * @param band the quantity in the coherent unit of its measure
 */
public record Trace(String id, String title, Measure measure, double[] time, Band band, List<Limit> limits) {}
