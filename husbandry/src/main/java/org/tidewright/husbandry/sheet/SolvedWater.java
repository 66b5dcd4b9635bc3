package org.tidewright.husbandry.sheet;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.carbonate.CarbonateState;

/**
 * As much of a water as is known, to compute the rest from. Null where it is not known.
 *
 * @param temperature in degC
 * @param practicalSalinity given, or found from the conductivity
 * @param ph on the total scale, given or found
 */
record SolvedWater(
        @Nullable Double temperature,
        @Nullable Double practicalSalinity,
        @Nullable Double ph,
        @Nullable CarbonateState state) {}
