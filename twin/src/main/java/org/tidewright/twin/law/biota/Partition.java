package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Where one element of the offered food goes, as shares that add up to one.
 *
 * @param retained built into the body
 * @param excreted lost through gills and urine, or breathed out, once digested
 * @param faeces dropped undigested
 * @param uneaten left in the water
 */
public record Partition(
        @Unit("1") double retained,
        @Unit("1") double excreted,
        @Unit("1") double faeces,
        @Unit("1") double uneaten) {
    private static final double ROUNDING = 1e-12;

    public Partition {
        Bounds.within(retained, "1", 0, 1, "share retained");
        Bounds.within(excreted, "1", 0, 1, "share excreted");
        Bounds.within(faeces, "1", 0, 1, "share of faeces");
        Bounds.within(uneaten, "1", 0, 1, "share uneaten");
        double sum = retained + excreted + faeces + uneaten;
        if (Math.abs(sum - 1) > ROUNDING) {
            throw new IllegalArgumentException("the shares add up to " + sum + ", not 1");
        }
    }

    /**
     * The partition of an animal between two others, such as a fish that still grows a little.
     *
     * @param other the other end
     * @param share from 0, this partition, to 1, the other
     * @source linear between both
     */
    public Partition towards(Partition other, @Unit("1") double share) {
        Bounds.within(share, "1", 0, 1, "share of the other");
        return new Partition(
                retained + share * (other.retained - retained),
                excreted + share * (other.excreted - excreted),
                faeces + share * (other.faeces - faeces),
                uneaten + share * (other.uneaten - uneaten));
    }

    /**
     * Share that is swallowed.
     *
     * <pre>1 - uneaten</pre>
     *
     * @source mass balance
     */
    @Unit("1")
    public double eaten() {
        return retained + excreted + faeces;
    }

    /**
     * Share of what is swallowed that crosses the gut's wall.
     *
     * <pre>(retained + excreted) / eaten</pre>
     *
     * @return the share, 0 where nothing is eaten
     * @source definition of the assimilation efficiency
     */
    @Unit("1")
    public double assimilation() {
        double eaten = eaten();
        return eaten > 0 ? (retained + excreted) / eaten : 0;
    }
}
