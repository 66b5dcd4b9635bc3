package org.tidewright.seawater.range;

import org.tidewright.seawater.unit.Unit;

/**
 * Temperatures and salinities a formula was fitted to, in its source's words.
 *
 * @param coldest ITS-90; the difference to older scales is far below the sources' rounding
 * @param hottest ITS-90
 * @param freshest practical salinity
 * @param saltiest practical salinity
 */
public record FittedRange(
        @Unit("degC") double coldest,
        @Unit("degC") double hottest,
        @Unit("1") double freshest,
        @Unit("1") double saltiest) {

    /**
     * Whether the source vouches for the formula at this temperature and salinity.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return false outside the range, and for NaN
     */
    public boolean covers(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return temperature >= coldest
                && temperature <= hottest
                && practicalSalinity >= freshest
                && practicalSalinity <= saltiest;
    }
}
