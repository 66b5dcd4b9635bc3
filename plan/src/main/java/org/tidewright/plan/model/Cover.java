package org.tidewright.plan.model;

/** What lies over the water. */
public enum Cover {
    /** Nothing: air moves freely, and fish may jump. */
    OPEN,
    /** A net or mesh: air moves freely, and fish stay in. */
    NET,
    /** One pane that lets hardly any air through. */
    LID;

    /** Whether air moves freely over the water. */
    public boolean letsAirPass() {
        return this != LID;
    }
}
