package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/**
 * First and second dissociation constants of carbonic acid in seawater, by three publications. At S = 35 and 25 degC
 * they lie within 0.01 of each other in log K1 and 0.05 in log K2, which moves a carbon dioxide computed from alkalinity
 * and inorganic carbon by up to 8 % and its pH by 0.03.
 */
public enum CarbonicAcid {
    /**
     * The set the best-practice handbook recommends: real seawater, total scale.
     *
     * <pre>
     * pK1 = 3633.86/T - 61.2172 + 9.67770 ln T - 0.011555 S + 0.0001152 S^2
     * pK2 = 471.78/T + 25.9290 - 3.16967 ln T - 0.01781 S + 0.0001122 S^2
     * </pre>
     *
     * Lueker, Dickson and Keeling 2000, Mar. Chem. 70, 105-119, doi 10.1016/S0304-4203(00)00022-0. At S = 35, 25 degC:
     * log K1 = -5.8472, log K2 = -8.9660 (Dickson, Sabine and Christian 2007, ch. 5).
     */
    LUEKER_2000(new FittedRange(2, 35, 19, 43), "Lueker et al. 2000") {
        @Override
        double lnK1(Conditions c) {
            double pk = 3633.86 * c.perKelvin - 61.2172 + 9.67770 * c.lnKelvin + c.s * (-0.011555 + c.s * 0.0001152);
            return -LN_10 * pk;
        }

        @Override
        double lnK2(Conditions c) {
            double pk = 471.78 * c.perKelvin + 25.9290 - 3.16967 * c.lnKelvin + c.s * (-0.01781 + c.s * 0.0001122);
            return -LN_10 * pk;
        }
    },

    /**
     * Artificial seawater, total scale.
     *
     * <pre>
     * ln K1 = 2.83655 - 2307.1266/T - 1.5529413 ln T + (-0.20760841 - 4.0484/T) S^0.5
     *         + 0.08468345 S - 0.00654208 S^1.5 + ln(1 - 0.001005 S)
     * ln K2 = -9.226508 - 3351.6106/T - 0.2005743 ln T + (-0.106901773 - 23.9722/T) S^0.5
     *         + 0.1130822 S - 0.00846934 S^1.5 + ln(1 - 0.001005 S)
     * </pre>
     *
     * Roy et al. 1993, Mar. Chem. 44, 249-267, doi 10.1016/0304-4203(93)90207-5. At S = 35, 25 degC: ln K1 = -13.4847,
     * ln K2 = -20.5504 (handbook of 1994, from memory).
     */
    ROY_1993(new FittedRange(0, 45, 5, 45), "Roy et al. 1993") {
        @Override
        double lnK1(Conditions c) {
            return 2.83655
                    - 2307.1266 * c.perKelvin
                    - 1.5529413 * c.lnKelvin
                    + c.rootS * (-0.20760841 - 4.0484 * c.perKelvin)
                    + c.s * (0.08468345 - 0.00654208 * c.rootS)
                    + Math.log(c.waterShare);
        }

        @Override
        double lnK2(Conditions c) {
            return -9.226508
                    - 3351.6106 * c.perKelvin
                    - 0.2005743 * c.lnKelvin
                    + c.rootS * (-0.106901773 - 23.9722 * c.perKelvin)
                    + c.s * (0.1130822 - 0.00846934 * c.rootS)
                    + Math.log(c.waterShare);
        }
    },

    /**
     * For brackish and warm water too; the seawater scale of the source is converted exactly to the total scale.
     *
     * <pre>
     * pK1 = -126.34048 + 6320.813/T + 19.568224 ln T
     *       + 13.4038 S^0.5 + 0.03206 S - 5.242e-5 S^2 - (530.659 S^0.5 + 5.8210 S)/T - 2.0664 S^0.5 ln T
     * pK2 = -90.18333 + 5143.692/T + 14.613358 ln T
     *       + 21.3728 S^0.5 + 0.1218 S - 3.688e-4 S^2 - (788.289 S^0.5 + 19.189 S)/T - 3.374 S^0.5 ln T
     * </pre>
     *
     * Millero 2010, Mar. Freshwater Res. 61, 139-142, doi 10.1071/MF09254, tables 2 and 3.
     */
    MILLERO_2010(new FittedRange(0, 50, 1, 50), "Millero 2010") {
        @Override
        double lnK1(Conditions c) {
            double pk = -126.34048
                    + 6320.813 * c.perKelvin
                    + 19.568224 * c.lnKelvin
                    + c.rootS * (13.4038 - 530.659 * c.perKelvin - 2.0664 * c.lnKelvin)
                    + c.s * (0.03206 - 5.8210 * c.perKelvin - 5.242e-5 * c.s);
            return -LN_10 * pk;
        }

        @Override
        double lnK2(Conditions c) {
            double pk = -90.18333
                    + 5143.692 * c.perKelvin
                    + 14.613358 * c.lnKelvin
                    + c.rootS * (21.3728 - 788.289 * c.perKelvin - 3.374 * c.lnKelvin)
                    + c.s * (0.1218 - 19.189 * c.perKelvin - 3.688e-4 * c.s);
            return -LN_10 * pk;
        }

        @Override
        boolean onSeawaterScale() {
            return true;
        }
    };

    private static final double LN_10 = Math.log(10);

    private final FittedRange fit;
    private final String citation;

    CarbonicAcid(FittedRange fit, String citation) {
        this.fit = fit;
        this.citation = citation;
    }

    /** ln K1 in mol/kg of seawater, on the scale of the source. */
    abstract double lnK1(Conditions c);

    /** ln K2 in mol/kg of seawater, on the scale of the source. */
    abstract double lnK2(Conditions c);

    boolean onSeawaterScale() {
        return false;
    }

    /** The range of the measurements behind the set, in its authors' words. */
    public FittedRange fit() {
        return fit;
    }

    /** Authors and year. */
    public String citation() {
        return citation;
    }

    /**
     * K1 = [H+][HCO3-] / [CO2*] on the total scale.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     */
    @Unit("mol/kg")
    public double first(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnK1(c)) * toTotalScale(c);
    }

    /**
     * K2 = [H+][CO3--] / [HCO3-] on the total scale.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     */
    @Unit("mol/kg")
    public double second(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return Math.exp(lnK2(c)) * toTotalScale(c);
    }

    private double toTotalScale(Conditions c) {
        return onSeawaterScale() ? PhScale.SEAWATER.toTotal(c) : 1;
    }
}
