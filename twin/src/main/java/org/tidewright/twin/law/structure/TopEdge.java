package org.tidewright.twin.law.structure;

/** What holds the upper edge of a pane. */
public enum TopEdge {
    /** Nothing: a rimless tank, or a brace that is cracked, unglued or cut out. */
    FREE,
    /** A brace that does not give. */
    HELD
}
