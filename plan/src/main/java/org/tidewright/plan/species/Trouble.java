package org.tidewright.plan.species;

/** Whom an animal goes for. */
public enum Trouble {
    OWN_KIND,
    OWN_GENUS,
    OWN_FAMILY,
    OWN_GROUP,
    LIKE_SHAPE,
    LIKE_FOOD,
    NEWCOMERS,
    SMALL_FISH,
    SLOW_FISH,
    SHRIMP,
    ALL
}
