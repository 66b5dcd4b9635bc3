package org.tidewright.plan.text;

import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.tidewright.plan.model.Plan;

/** A plan together with the text it was read from, whose comments and unit spellings it keeps. */
public final class PlanDocument {
    private final Plan plan;
    private final String text;
    private final MappingNode tree;

    PlanDocument(Plan plan, String text, MappingNode tree) {
        this.plan = plan;
        this.text = text;
        this.tree = tree;
    }

    public Plan plan() {
        return plan;
    }

    /** The text as it was read. */
    public String text() {
        return text;
    }

    /** This document with another plan in it: comments stay with the keys that remain. */
    public String textWith(Plan changed) {
        return RecordWriter.write(changed, tree);
    }
}
