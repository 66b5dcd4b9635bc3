package org.tidewright.twin.law.light;

import org.tidewright.seawater.unit.Unit;

/**
 * Who makes oxygen in the light, and how much at most, over each area; at 26 degC. Oxygen made before respiration takes
 * its part. Areas are of living tissue for corals, of rock's own surface for crusts and turf, of floor for macroalgae.
 *
 * @source each entry names its own
 */
public enum Phototroph {
    /**
     * Symbiotic stony coral: 1.8 umol/(cm^2 h), 0.8 to 4; bends at 180 umol/(m^2 s), 80 to 350, lower where it grew in
     * less light (Chalker, Dunlap and Oliver 1983, J. Exp. Mar. Biol. Ecol. 73, 37-56, for the trend). Values from
     * memory: three times the coral's dark respiration.
     */
    STONY_CORAL(8, 18, 40, 80, 180, 350),

    /**
     * Coralline crust: 12.8 to 22.8 mmol/(m^2 h) on a reef, less in the laboratory (Chisholm 2003, Limnol. Oceanogr.
     * 48, 1376-1387); the bend, 60 to 300 umol/(m^2 s), from memory.
     */
    CORALLINE_CRUST(8, 17, 22.8, 60, 150, 300),

    /** Turf on rock: 10 to 50 mmol/(m^2 h), from memory; by area about as much as crust, Klumpp and McKinnon 1992. */
    TURF(10, 22, 50, 120, 250, 500),

    /** A stand of macroalgae: 10 to 60 mmol/(m^2 h) of floor, more the denser it is; from memory. */
    MACROALGAE(10, 25, 60, 80, 180, 350);

    private static final double MILLIMOLE_PER_HOUR = 1e-3 / 3600;

    private final double low;
    private final double usual;
    private final double high;
    private final double lowSaturation;
    private final double usualSaturation;
    private final double highSaturation;

    /** Most oxygen made in mmol/(m^2 h), light saturation in umol/(m^2 s). */
    Phototroph(
            double low,
            double usual,
            double high,
            double lowSaturation,
            double usualSaturation,
            double highSaturation) {
        this.low = low * MILLIMOLE_PER_HOUR;
        this.usual = usual * MILLIMOLE_PER_HOUR;
        this.high = high * MILLIMOLE_PER_HOUR;
        this.lowSaturation = lowSaturation * 1e-6;
        this.usualSaturation = usualSaturation * 1e-6;
        this.highSaturation = highSaturation * 1e-6;
    }

    /**
     * Most oxygen made, usual.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double most() {
        return usual;
    }

    /**
     * The same, low.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double mostLow() {
        return low;
    }

    /**
     * The same, high.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double mostHigh() {
        return high;
    }

    /**
     * Light at which the curve bends over, usual.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double lightSaturation() {
        return usualSaturation;
    }

    /**
     * The same, low.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double lightSaturationLow() {
        return lowSaturation;
    }

    /**
     * The same, high.
     *
     * @source the entry
     */
    @Unit("mol/(m^2*s)")
    public double lightSaturationHigh() {
        return highSaturation;
    }
}
