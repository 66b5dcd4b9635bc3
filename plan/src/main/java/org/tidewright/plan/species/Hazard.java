package org.tidewright.plan.species;

/** What of an animal may hurt people. */
public enum Hazard {
    VENOMOUS_SPINES,
    TAIL_BLADE,
    VENOMOUS_TAIL_BLADE,
    CHEEK_SPINE,
    VENOMOUS_BITE,
    BITES,
    POISON_IF_EATEN,
    PALYTOXIN,
    STINGS,
    BRISTLES,
    CUTS,
    /** It has killed people: never kept, never touched. */
    LETHAL
}
