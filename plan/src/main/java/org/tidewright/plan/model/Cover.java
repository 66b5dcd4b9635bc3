package org.tidewright.plan.model;

/** What lies over the water. */
public enum Cover {
    /** Nothing, or a net: air moves freely. */
    OPEN,
    /** One pane that lets hardly any air through. */
    LID
}
