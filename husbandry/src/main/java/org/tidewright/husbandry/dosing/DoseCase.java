package org.tidewright.husbandry.dosing;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.seawater.unit.Unit;

/**
 * What a decision about a dose rests on. Levels are those over the day: what is held in its range is the whole day, not the
 * hour at which somebody tests.
 *
 * @param now the level
 * @param next the level when it will next be tested, all doses left as they stand
 * @param missing what is missing a day to hold the aim, all doses left as they stand
 * @param movable what the dose that would be moved brings a day
 * @param most of it that may be dosed; infinite where nothing bounds it
 * @param step finest change of that dose that can be set
 * @param settling of the last move; null where there is none, or its effect is told already
 */
public record DoseCase(
        Known now,
        Known next,
        Known missing,
        @Unit("*") double movable,
        @Unit("*") double most,
        @Unit("*") double step,
        @Nullable Settling settling) {}
