package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Dissociation of hydrogen fluoride, HF = F- + H+, by two publications that differ by a few per cent. */
public final class HydrogenFluoride {
    /** The range of the measurements behind {@link #dissociation}. */
    public static final FittedRange FIT = new FittedRange(5, 35, 0, 42);

    /** The range of the measurements behind {@link #dissociationPerezFraga}. */
    public static final FittedRange FIT_PEREZ_FRAGA = new FittedRange(9, 33, 10, 40);

    private HydrogenFluoride() {}

    /**
     * Dissociation constant on the free scale: the one used here, since its scale is undisputed.
     *
     * <pre>ln KF = 1590.2/T - 12.641 + 1.525 I^0.5 + ln(1 - 0.001005 S)</pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KF per kilogram of seawater
     * @source Dickson and Riley 1979, Mar. Chem. 7, 89-99, doi 10.1016/0304-4203(79)90001-X
     * @validity 5 to 35 degC, S up to 42, from memory: {@link #FIT}
     * @checkvalue S = 35, 25 degC: ln KF = -6.0468 on the free scale, from another code
     */
    @Unit("mol/kg")
    public static double dissociation(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Math.exp(lnK(Conditions.at(temperature, practicalSalinity)));
    }

    /**
     * Dissociation constant as the best-practice handbook has it, on the total scale. (Some programs read the same fit
     * on the free scale, 22 % apart.)
     *
     * <pre>ln KF = 874/T - 9.68 + 0.111 S^0.5</pre>
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return KF per kilogram of seawater
     * @source Perez and Fraga 1987, Mar. Chem. 21, 161-168, doi 10.1016/0304-4203(87)90036-3; Dickson, Sabine and
     *     Christian 2007, ch. 5
     * @validity 9 to 33 degC, S 10 to 40: {@link #FIT_PEREZ_FRAGA}
     * @checkvalue S = 35, 25 degC: ln KF = -6.09 (Dickson, Sabine and Christian 2007, ch. 5)
     */
    @Unit("mol/kg")
    public static double dissociationPerezFraga(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(874 * c.perKelvin - 9.68 + 0.111 * c.rootS);
    }

    static double lnK(Conditions c) {
        return lnKPerWater(c) + Math.log(c.waterShare);
    }

    /** The constant per kilogram of water, as in {@link Bisulfate#lnKPerWater}. */
    static double lnKPerWater(Conditions c) {
        return 1590.2 * c.perKelvin - 12.641 + 1.525 * c.rootIonic;
    }
}
