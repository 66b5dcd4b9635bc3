package org.tidewright.plan.model;

/** The units a keeper reads in. */
public enum UnitSystem {
    METRIC,
    US
}
