package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Heat exchanged by radiation at room temperature, written as a film so that it adds to convection. */
public final class Radiation {
    /** Glass and acrylic; from memory. */
    @Unit("1")
    public static final double EMISSIVITY_OF_PANES = 0.90;

    /** Water; from memory. */
    @Unit("1")
    public static final double EMISSIVITY_OF_WATER = 0.95;

    private static final double STEFAN_BOLTZMANN = 5.670374419e-8; // W/(m^2*K^4), CODATA 2018

    private Radiation() {}

    /**
     * Radiative film coefficient between a surface and the surroundings that enclose it.
     *
     * <pre>h_r = eps sigma (Ts^2 + Tr^2) (Ts + Tr)</pre>
     *
     * @param emissivity of the surface, or of the exchange by {@link #betweenPlates}
     * @param surface temperature, ITS-90
     * @param surroundings temperature, ITS-90
     * @return heat flow per area and kelvin of difference
     * @source Stefan-Boltzmann law; the difference of fourth powers factored
     * @validity grey surfaces, the enclosure much larger than the surface
     */
    @Unit("W/(m^2*K)")
    public static double film(
            @Unit("1") double emissivity, @Unit("degC") double surface, @Unit("degC") double surroundings) {
        Bounds.within(emissivity, "1", 0, 1, "emissivity");
        Bounds.within(surface, "degC", -40, 110, "surface temperature");
        Bounds.within(surroundings, "degC", -40, 110, "temperature of the surroundings");
        double a = TemperatureScale.kelvin(surface);
        double b = TemperatureScale.kelvin(surroundings);
        return emissivity * STEFAN_BOLTZMANN * (a * a + b * b) * (a + b);
    }

    /**
     * Emissivity of the exchange between two wide parallel plates, for {@link #film}.
     *
     * <pre>1 / (1/eps1 + 1/eps2 - 1)</pre>
     *
     * @param one emissivity of one plate
     * @param other emissivity of the other
     * @return emissivity of the pair
     * @source textbook: grey parallel plates
     * @validity plates wider than their distance
     */
    @Unit("1")
    public static double betweenPlates(@Unit("1") double one, @Unit("1") double other) {
        Bounds.within(one, "1", 0.01, 1, "emissivity");
        Bounds.within(other, "1", 0.01, 1, "emissivity");
        return 1 / (1 / one + 1 / other - 1);
    }
}
