package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.unit.Unit;

/**
 * A crest that water falls over freely. Every implementation is immutable, its {@link #flow} strictly increasing with
 * head, allocation-free and cheap enough for the innermost loop.
 *
 * <p>The published formulas were measured with heads of several centimetres. A film of 5-20 mm over an aquarium
 * overflow lies below their range: viscosity and surface tension matter, and {@link #relativeError} says how far to
 * trust the number.
 */
public interface Weir {
    /**
     * Head below which a film over a crest may be taken as standing still, held by surface tension.
     *
     * @source from memory: films stop at about 1-2 mm
     */
    @Unit("m")
    double FILM_HEAD = 0.001;

    /**
     * Flow over the crest; none when the water stands at or below it.
     *
     * @param head water level over the crest, upstream, where the surface is still flat
     */
    @Unit("m^3/s")
    double flow(@Unit("m") double head);

    /** Head over the crest that passes a flow: the inverse of {@link #flow}. */
    @Unit("m")
    double head(@Unit("m^3/s") double flow);

    /** Whether the source of the formula claims to cover this head. Outside it the number is an extrapolation. */
    boolean withinStatedRange(@Unit("m") double head);

    /** Half width of the band to put on the flow at aquarium heads, relative to it. */
    @Unit("1")
    double relativeError();
}
