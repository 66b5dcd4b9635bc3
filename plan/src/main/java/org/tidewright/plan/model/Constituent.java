package org.tidewright.plan.model;

import org.tidewright.seawater.unit.Unit;

/**
 * Parts a dosed salt falls into in water.
 *
 * @source IUPAC standard atomic weights of 2021, abridged: Prohaska et al. 2022, Pure Appl. Chem. 94, 573-600
 */
enum Constituent {
    SODIUM(+1, true, AtomicWeight.SODIUM),
    POTASSIUM(+1, true, AtomicWeight.POTASSIUM),
    CALCIUM(+2, true, AtomicWeight.CALCIUM),
    MAGNESIUM(+2, true, AtomicWeight.MAGNESIUM),
    AMMONIUM(+1, true, AtomicWeight.NITROGEN + 4 * AtomicWeight.HYDROGEN),
    CHLORIDE(-1, true, AtomicWeight.CHLORINE),
    SULFATE(-2, true, AtomicWeight.SULFUR + 4 * AtomicWeight.OXYGEN),
    NITRATE(-1, true, AtomicWeight.NITROGEN + 3 * AtomicWeight.OXYGEN),
    DIHYDROGEN_PHOSPHATE(-1, true, 2 * AtomicWeight.HYDROGEN + AtomicWeight.PHOSPHORUS + 4 * AtomicWeight.OXYGEN),
    ACETATE(-1, true, 2 * AtomicWeight.CARBON + 3 * AtomicWeight.HYDROGEN + 2 * AtomicWeight.OXYGEN),
    BICARBONATE(-1, false, AtomicWeight.HYDROGEN + AtomicWeight.CARBON + 3 * AtomicWeight.OXYGEN),
    CARBONATE(-2, false, AtomicWeight.CARBON + 3 * AtomicWeight.OXYGEN),
    HYDROXIDE(-1, false, AtomicWeight.OXYGEN + AtomicWeight.HYDROGEN),
    HYDROGEN(+1, false, AtomicWeight.HYDROGEN),
    WATER(0, false, 2 * AtomicWeight.HYDROGEN + AtomicWeight.OXYGEN);

    private final int charge;
    private final boolean conservative;
    private final double gramsPerMole;

    Constituent(int charge, boolean conservative, double gramsPerMole) {
        this.charge = charge;
        this.conservative = conservative;
        this.gramsPerMole = gramsPerMole;
    }

    int charge() {
        return charge;
    }

    /** Whether its charge counts in the explicit conservative expression of alkalinity. */
    boolean isConservative() {
        return conservative;
    }

    @Unit("kg/mol")
    double molarMass() {
        return 1e-3 * gramsPerMole;
    }

    /** In g/mol; masses of electrons are below the last digit. */
    private static final class AtomicWeight {
        static final double HYDROGEN = 1.0080;
        static final double CARBON = 12.011;
        static final double NITROGEN = 14.007;
        static final double OXYGEN = 15.999;
        static final double SODIUM = 22.990;
        static final double MAGNESIUM = 24.305;
        static final double PHOSPHORUS = 30.974;
        static final double SULFUR = 32.06;
        static final double CHLORINE = 35.45;
        static final double POTASSIUM = 39.098;
        static final double CALCIUM = 40.078;

        private AtomicWeight() {}
    }
}
