package org.tidewright.twin.law.gas;

import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Oxygen that corals, sand and rock use in the dark, by what each scales with. */
public final class ReefRespiration {
    /** Temperature the usual rates below are taken to hold at; none of their sources says. */
    @Unit("degC")
    public static final double REFERENCE_TEMPERATURE = 26;

    /**
     * Stony coral in the dark, 0.6 umol/(cm^2 h); 0.3 to 1.5, from memory. The rate per area of tissue does not change
     * with the colony's size (Carlot et al. 2022).
     */
    @Unit("mol/(m^2*s)")
    public static final double CORAL = 0.6e-6 * 1e4 / 3600;

    /** Sand bed, 40 mmol/(m^2 d); 20 to 80, from memory. */
    @Unit("mol/(m^2*s)")
    public static final double SAND = 40e-3 / 86_400;

    /** Established rock, 0.6 mg/(kg h); 0.3 to 1.5, from memory. */
    @Unit("mol/(kg*s)")
    public static final double ROCK = 0.6e-6 / MolarMass.OXYGEN / 3600;

    /**
     * Share of the breath of rock and sand that lives off the light that falls on them; the rest burns what fish and keeper
     * bring, and the twin follows that as decay and nitrification. Measurements tell only the sum. At most about all:
     * sunlit reef sands make over a day 1.0 to 1.1 times what their whole community burns (Johnstone, Koop and Larkum 1990, Mar. Ecol.
     * Prog. Ser. 66, 273). At least about a tenth: bacteria breathe up to 88 % in bare sand (Hubas et al. 2006, Mar. Ecol.
     * Prog. Ser. 316, 53). A lamp of 100 to 200 umol/(m^2 s) for nine hours lets algae make half of what a tropical day
     * does (tanh(I/I_k), I_k 150). Half is an estimate from these three.
     */
    @Unit("1")
    public static final double LIGHT_SHARE_USUAL = 0.5;

    /** The same, low; an estimate. */
    @Unit("1")
    public static final double LIGHT_SHARE_LOW = 0.2;

    /** The same, high; an estimate. */
    @Unit("1")
    public static final double LIGHT_SHARE_HIGH = 0.9;

    private ReefRespiration() {}

    /**
     * Uptake of stony coral in the dark.
     *
     * <pre>R = CORAL X 2^((T - 26 degC) / 10 K)</pre>
     *
     * @param tissue X, area of living tissue
     * @param temperature ITS-90
     * @return amount per time
     * @source {@link #CORAL} times its extent; Q10 by common practice
     * @validity 20 to 30 degC; the usual rate holds within a factor of two to three
     */
    @Unit("mol/s")
    public static double ofCoral(@Unit("m^2") double tissue, @Unit("degC") double temperature) {
        Bounds.within(tissue, "m^2", 0, 1e6, "area of living tissue");
        return CORAL * tissue * warmth(temperature);
    }

    /**
     * Uptake of a sand bed in the dark.
     *
     * <pre>R = SAND X 2^((T - 26 degC) / 10 K)</pre>
     *
     * @param bed X, area of the bed
     * @param temperature ITS-90
     * @return amount per time
     * @source {@link #SAND} times its extent; Q10 by common practice
     * @validity 20 to 30 degC; the usual rate holds within a factor of two
     */
    @Unit("mol/s")
    public static double ofSand(@Unit("m^2") double bed, @Unit("degC") double temperature) {
        Bounds.within(bed, "m^2", 0, 1e6, "area of the bed");
        return SAND * bed * warmth(temperature);
    }

    /**
     * Uptake of established rock in the dark.
     *
     * <pre>R = ROCK X 2^((T - 26 degC) / 10 K)</pre>
     *
     * @param mass X, dry mass of the rock
     * @param temperature ITS-90
     * @return amount per time
     * @source {@link #ROCK} times its extent; Q10 by common practice
     * @validity 20 to 30 degC; the usual rate holds within a factor of two to three
     */
    @Unit("mol/s")
    public static double ofRock(@Unit("kg") double mass, @Unit("degC") double temperature) {
        Bounds.within(mass, "kg", 0, 1e6, "dry mass of the rock");
        return ROCK * mass * warmth(temperature);
    }

    private static double warmth(double temperature) {
        return Q10.factor(Q10.COMMUNITY, temperature, REFERENCE_TEMPERATURE);
    }
}
