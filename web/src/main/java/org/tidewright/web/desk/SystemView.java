package org.tidewright.web.desk;

import org.tidewright.plan.model.Plan;

/** A system's plan, the text it was read from and the number of its revision. */
public record SystemView(SystemEntry entry, Plan plan, String text) {}
