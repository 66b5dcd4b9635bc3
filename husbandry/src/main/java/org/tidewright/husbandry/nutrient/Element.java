package org.tidewright.husbandry.nutrient;

import org.tidewright.twin.contract.Balance;

/** A nutrient that is neither made nor lost, only moved. */
public enum Element {
    NITROGEN("nitrogen", Balance.NITROGEN, 14.0067e-3),
    PHOSPHORUS("phosphorus", Balance.PHOSPHORUS, 30.973762e-3);

    private final String words;
    private final Balance balance;
    private final double molarMass;

    /** Molar mass in kg/mol, IUPAC 2021. */
    Element(String words, Balance balance, double molarMass) {
        this.words = words;
        this.balance = balance;
        this.molarMass = molarMass;
    }

    public String words() {
        return words;
    }

    Balance balance() {
        return balance;
    }

    double molarMass() {
        return molarMass;
    }
}
