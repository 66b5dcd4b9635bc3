package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What a pH counts as hydrogen ion. At S = 35 and 25 degC the same water reads 8.05 on the total, 8.04 on the seawater,
 * 8.16 on the free and about 8.19 on the NBS scale: a pH without its scale is uncertain by 0.15.
 */
public enum PhScale {
    /** Free hydrogen ion and bisulfate; the scale of today's constants. Dickson, Sabine and Christian 2007, ch. 2. */
    TOTAL {
        @Override
        double toTotal(Conditions c) {
            return 1;
        }
    },

    /** Free hydrogen ion alone: [H+]T = [H+]F (1 + ST/KS). */
    FREE {
        @Override
        double toTotal(Conditions c) {
            return 1 + sulfateOverItsConstant(c);
        }
    },

    /** Free hydrogen ion, bisulfate and hydrogen fluoride: [H+]SWS = [H+]F (1 + ST/KS + FT/KF). */
    SEAWATER {
        @Override
        double toTotal(Conditions c) {
            double total = 1 + sulfateOverItsConstant(c);
            return total / (total + fluorideOverItsConstant(c));
        }
    },

    /**
     * Activity after dilute buffers of the US National Bureau of Standards, as the buffers of the trade are. A constant
     * of the electrode, f_H, stands between: one published value is used, a real probe differs from it by its junction
     * potential, 0.01 to 0.05 (from memory).
     *
     * <pre>a_H = f_H [H+]SWS,  f_H = 1.2948 - 0.002036 T + (0.0004607 - 0.000001475 T) S^2</pre>
     *
     * Takahashi et al. 1982, GEOSECS Pacific Expedition 3, ch. 3.
     */
    NBS {
        @Override
        double toTotal(Conditions c) {
            return SEAWATER.toTotal(c) / electrodeFactor(c);
        }
    };

    /** What a hydrogen ion concentration (or a constant) on this scale is multiplied by to stand on the total one. */
    abstract double toTotal(Conditions c);

    /**
     * The same acidity on another scale.
     *
     * @param ph on this scale
     * @param target the scale wanted
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78; sulfate and fluoride are taken in their proportion to it
     */
    @Unit("1")
    public double convert(
            @Unit("1") double ph,
            PhScale target,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity) {
        Bounds.within(ph, "1", -2, 16, "pH");
        Conditions c = Conditions.at(temperature, practicalSalinity);
        return ph + Math.log10(target.toTotal(c) / toTotal(c));
    }

    static double electrodeFactor(Conditions c) {
        return 1.2948 - 0.002036 * c.kelvin + (0.0004607 - 0.000001475 * c.kelvin) * c.s * c.s;
    }

    private static double sulfateOverItsConstant(Conditions c) {
        return TotalConcentrations.sulfate(c.s) / Math.exp(Bisulfate.lnK(c));
    }

    private static double fluorideOverItsConstant(Conditions c) {
        return TotalConcentrations.fluoride(c.s) / Math.exp(HydrogenFluoride.lnK(c));
    }
}
