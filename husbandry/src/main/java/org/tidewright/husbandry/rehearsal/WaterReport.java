package org.tidewright.husbandry.rehearsal;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.twin.rehearsal.WaterMovement;

/**
 * What the water did in the first minutes.
 *
 * @param movement every level and flow in time; null where nothing can fall back
 * @param roomLeft room left in the sump up to its rim along the movement's time, m³; negative: litres on the floor
 * @param room the same at the end, with its doubt
 * @param floorDry whether the floor stays dry in the middle draw
 * @param told what happened, in words
 */
public record WaterReport(
        @Nullable WaterMovement movement,
        double[] roomLeft,
        @Nullable Figure room,
        boolean floorDry,
        Sentence told) {}
