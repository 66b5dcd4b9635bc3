package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.unit.Unit;

/**
 * Who lays down skeleton, and how much over each area of reef seen from above. The rates are those of the field, over
 * day and night, of the calcification files of Courtney et al. 2024 (with the census budgets of Perry and Lange); the
 * low ones are those of the files of 2021, which for the same corals stand up to three times lower: that is how well
 * they are known. For an aquarium times {@link Calcification#CAPTIVITY_USUAL}, but for coralline algae.
 *
 * @source Courtney et al. 2021 and 2024, calcification rate files for ReefBudget
 */
public enum Calcifier {
    ACROPORA_BRANCHING(8.0, 5.2, Calcification.MAGNESIUM_IN_CORAL),
    POCILLOPORA(10.5, 4.8, Calcification.MAGNESIUM_IN_CORAL),
    STYLOPHORA(7.5, 3.0, Calcification.MAGNESIUM_IN_CORAL),
    MONTIPORA_BRANCHING(9.0, 4.4, Calcification.MAGNESIUM_IN_CORAL),
    MONTIPORA_PLATING(2.9, 2.1, Calcification.MAGNESIUM_IN_CORAL),
    PORITES_MASSIVE(8.5, 6.5, Calcification.MAGNESIUM_IN_CORAL),
    EUPHYLLIA(5.1, 3.1, Calcification.MAGNESIUM_IN_CORAL),
    LOBOPHYLLIA(6.0, 2.9, Calcification.MAGNESIUM_IN_CORAL),
    FAVITES(0.73, 0.24, Calcification.MAGNESIUM_IN_CORAL),

    /** 0.65 kg/m^2 in a year. */
    CORALLINE_ALGAE(0.178, 0.15, Calcification.MAGNESIUM_IN_CORALLINE);

    private final double rate; // mol/(m^2 s)
    private final double lowRate;
    private final double magnesiumShare;

    Calcifier(double milligrams, double lowMilligrams, double magnesiumShare) {
        this.rate = milligrams * Calcification.MILLIGRAM_PER_SQUARE_CENTIMETRE_AND_DAY;
        this.lowRate = lowMilligrams * Calcification.MILLIGRAM_PER_SQUARE_CENTIMETRE_AND_DAY;
        this.magnesiumShare = magnesiumShare;
    }

    /**
     * Calcium carbonate laid down over each area of plan, usual.
     *
     * @source as the type
     */
    @Unit("mol/(m^2*s)")
    public double rate() {
        return rate;
    }

    /**
     * The same, low.
     *
     * @source as the type
     */
    @Unit("mol/(m^2*s)")
    public double lowRate() {
        return lowRate;
    }

    /**
     * Share of the carbonate laid down that is magnesium's, by moles.
     *
     * @source {@link Calcification#MAGNESIUM_IN_CORAL}, {@link Calcification#MAGNESIUM_IN_CORALLINE}
     */
    @Unit("1")
    public double magnesiumShare() {
        return magnesiumShare;
    }
}
