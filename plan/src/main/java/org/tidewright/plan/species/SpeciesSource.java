package org.tidewright.plan.species;

import org.tidewright.plan.source.Basis;

/**
 * What some facts of the catalogue rest on.
 *
 * @param key by which rows point to it
 * @param citation the publication, or what the practice is
 */
public record SpeciesSource(String key, Basis basis, Confidence confidence, String citation) {
    /** Of what a keeper states in files of their own. */
    public static final SpeciesSource OWN =
            new SpeciesSource("own", Basis.YOUR_PLAN, Confidence.FAIR, "your own species file");

    /** How far a fact may be trusted. */
    public enum Confidence {
        /** Measured, and several agree. */
        HIGH,
        /** Published once, or practice that everybody shares. */
        FAIR,
        /** From memory, from relatives, or a guess. */
        LOW
    }
}
