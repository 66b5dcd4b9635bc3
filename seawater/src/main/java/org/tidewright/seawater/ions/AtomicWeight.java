package org.tidewright.seawater.ions;

/**
 * Atomic weights in g/mol, those of IUPAC 2005 (Wieser 2006, Pure Appl. Chem. 78, 2051-2066) with which the Reference
 * Composition was defined. Today's abridged values differ by at most 2e-4 of themselves (sulfur, 32.06).
 */
final class AtomicWeight {
    static final double HYDROGEN = 1.00794;
    static final double BORON = 10.811;
    static final double CARBON = 12.0107;
    static final double OXYGEN = 15.9994;
    static final double FLUORINE = 18.9984032;
    static final double SODIUM = 22.98976928;
    static final double MAGNESIUM = 24.3050;
    static final double SULFUR = 32.065;
    static final double CHLORINE = 35.453;
    static final double POTASSIUM = 39.0983;
    static final double CALCIUM = 40.078;
    static final double STRONTIUM = 87.62;
    static final double BROMINE = 79.904;

    private AtomicWeight() {}
}
