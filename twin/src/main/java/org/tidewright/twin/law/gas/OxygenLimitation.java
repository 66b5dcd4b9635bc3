package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Respiration that fails as oxygen runs out. */
public final class OxygenLimitation {
    /** Half-saturation of a mixed reef's respiration, 1 to 2 mg/L; from memory. */
    @Unit("mol/m^3")
    public static final double HALF_SATURATION = 0.047;

    /** Oxygen of well-aired seawater, in which resting breath is measured: 6.4 mg/L. */
    @Unit("mol/m^3")
    public static final double AIRED = 0.2;

    private OxygenLimitation() {}

    /**
     * Share of the full respiration left at a concentration.
     *
     * <pre>C / (C + Km)</pre>
     *
     * @param concentration C; nothing is taken up at or below zero
     * @param halfSaturation Km, the concentration at which half is left
     * @return share, 0 to 1
     * @source Michaelis and Menten 1913, Biochem. Z. 49, 333-369
     * @validity an empirical form for a community
     */
    @Unit("1")
    public static double share(@Unit("mol/m^3") double concentration, @Unit("mol/m^3") double halfSaturation) {
        Bounds.within(concentration, "mol/m^3", -1, 100, "concentration");
        Bounds.within(halfSaturation, "mol/m^3", 1e-9, 100, "half-saturation");
        return concentration <= 0 ? 0 : concentration / (concentration + halfSaturation);
    }

    /**
     * Breath at a concentration over that in well-aired water, where it was measured.
     *
     * <pre>C/(C + Km) (O + Km)/O, O = 0.2 mol/m^3</pre>
     *
     * @param concentration C; nothing is taken up at or below zero
     * @return 1 in well-aired water
     * @source as {@link #share}, with {@link #HALF_SATURATION}
     * @validity as {@link #share}
     */
    @Unit("1")
    public static double ofAired(@Unit("mol/m^3") double concentration) {
        return share(concentration, HALF_SATURATION) / share(AIRED, HALF_SATURATION);
    }
}
