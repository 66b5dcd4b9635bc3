package org.tidewright.plan.species;

/** Forms of growth of corals that differ in how fast they lay down skeleton, by genus where the rates are known by genus. */
public enum CoralForm {
    BRANCHING_ACROPORA,
    POCILLOPORA,
    STYLOPHORA,
    BRANCHING_MONTIPORA,
    PLATING_MONTIPORA,
    MASSIVE_PORITES,
    EUPHYLLIA,
    LOBOPHYLLIA,
    FAVITES,
    /** Corals that lay down next to no skeleton. */
    SOFT
}
