package org.tidewright.husbandry.arrival;

/**
 * Live mass in whole numbers, for the solver: a grain is a milligram, or more where all masses together are more than a
 * kilogram, a millionth of them at most. What is added is rounded up, what is allowed down.
 *
 * @param size kg
 */
record Grains(double size) {
    private static final double LEAST = 1e-6;
    private static final double ALL = 1e6;

    /** More than anybody weighs. */
    private static final int MOST = 500_000_000;

    /** Decimal fractions are not exact in binary: so near to a whole number it is one. */
    private static final double SLACK = 1e-6;

    static Grains of(double allMass) {
        return new Grains(Math.max(LEAST, Math.pow(10, Math.ceil(Math.log10(Math.max(LEAST, allMass)))) / ALL));
    }

    int up(double mass) {
        return (int) Math.ceil(mass / size - SLACK);
    }

    int down(double mass) {
        return (int) Math.min(MOST, Math.floor(mass / size + SLACK));
    }

    double mass(int grains) {
        return grains * size;
    }
}
