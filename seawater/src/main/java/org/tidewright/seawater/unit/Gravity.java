package org.tidewright.seawater.unit;

/** The standard acceleration of free fall. */
public final class Gravity {
    /**
     * g.
     *
     * @source 3rd General Conference on Weights and Measures, 1901: 980.665 cm/s^2, exact by definition
     */
    @Unit("m/s^2")
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
